package farwatt.command;

import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;

/** Work that may take long: tells whoever looks on how far it is, and stops when asked to by Ctrl-C. */
final class Underway implements AutoCloseable {
    private static final long PATIENCE = 2;
    private static final int WIDTH = 70;

    private final Output output;
    private final Cancel cancel = new Cancel();
    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupted, "stop");
    private boolean told;

    Underway(Output output) {
        this.output = output;
        Runtime.getRuntime().addShutdownHook(hook);
    }

    Cancel cancel() {
        return cancel;
    }

    /** What is told is a line that is written over; nothing where nobody looks on. */
    Progress progress(BiFunction<Double, String, String> line) {
        if (!Output.isWatched()) {
            return Progress.SILENT;
        }
        return (share, what) -> {
            told = true;
            String text = line.apply(share, what);
            String shown = text.length() > WIDTH ? text.substring(0, WIDTH) : text;
            output.errors().print("\r" + shown + " ".repeat(WIDTH - shown.length()));
        };
    }

    /** True if it ended before so many milliseconds were over. */
    boolean endsWithin(long milliseconds) throws InterruptedException {
        return ended.await(milliseconds, TimeUnit.MILLISECONDS);
    }

    /** On Ctrl-C: asks the work to stop, lets it say so, and leaves with the code for stopped. */
    private void interrupted() {
        cancel.ask();
        try {
            if (ended.await(PATIENCE, TimeUnit.SECONDS)) {
                clear();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        output.flush();
        Runtime.getRuntime().halt(Exit.STOPPED);
    }

    private void clear() {
        if (told) {
            told = false;
            output.errors().print("\r" + " ".repeat(WIDTH) + "\r");
        }
    }

    @Override
    public void close() {
        ended.countDown();
        clear();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is on its way out already; the hook then does the leaving
            return;
        }
    }
}
