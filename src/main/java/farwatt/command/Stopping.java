package farwatt.command;

import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;

/**
 * Long work at the command line: how far it is, and an orderly end on Ctrl-C or when its time is over. To be closed
 * when the work has ended, however it did.
 */
final class Stopping implements AutoCloseable {
    private static final long PATIENCE = 2;
    private static final int WIDTH = 70;

    private final Output output;
    private final Cancel cancel = new Cancel();
    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupted, "stop");
    private boolean told;

    private Stopping(Output output) {
        this.output = output;
    }

    /** Watches over work from now on. */
    static Stopping begin(Output output) {
        Stopping stopping = new Stopping(output);
        Runtime.getRuntime().addShutdownHook(stopping.hook);
        return stopping;
    }

    Cancel cancel() {
        return cancel;
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

    /** Asks the work to stop after so many seconds. */
    void limit(double seconds) {
        if (seconds == Double.POSITIVE_INFINITY) {
            return;
        }
        Thread timer = new Thread(
                () -> {
                    try {
                        if (!ended.await((long) (seconds * 1e3), TimeUnit.MILLISECONDS)) {
                            cancel.ask();
                        }
                    } catch (InterruptedException e) {
                        throw new CancellationException(String.valueOf(e.getMessage()));
                    }
                },
                "limit");
        timer.setDaemon(true);
        timer.start();
    }

    /** One line that is written over, where somebody watches. */
    Progress progress() {
        return progress((share, what) -> what);
    }

    /** The same with other words. */
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
