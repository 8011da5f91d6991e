package farwatt.command;

import farwatt.engine.Corner;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Vary;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Option;

/** What every verb that calculates a plan many times has: threads, a limit of time, a way to stop. */
abstract class StudyVerb extends PlanVerb {
    private static final long PATIENCE = 2;

    @Option(names = "--threads", paramLabel = "N", description = "How many threads work; all unless said.")
    private int threads;

    @Option(names = "--seconds", paramLabel = "N", description = "Stops after so long, with exit code 3.")
    private double seconds = Double.POSITIVE_INFINITY;

    private final Cancel cancel = new Cancel();
    private final CountDownLatch ended = new CountDownLatch(1);
    private boolean told;

    /** Does the work on the plan of the scenario that was named. */
    abstract void study(Ground ground, Effort effort) throws Refusal, IOException;

    @Override
    public final Integer call() throws Exception {
        if (allCorners()) {
            throw Refusal.of(CommandCode.ONE_CORNER);
        }
        if (threads < 0 || !(seconds > 0)) {
            throw Refusal.of(CommandCode.BAD_EFFORT);
        }
        Optional<Corner> corner = corner();
        Plan plan = plan();
        sayNotices();
        Ground ground = corner.map(c -> Ground.of(plan, c)).orElseGet(() -> Ground.of(plan));
        int working = threads > 0 ? threads : Runtime.getRuntime().availableProcessors();
        Thread hook = new Thread(this::interrupted, "stop");
        Runtime.getRuntime().addShutdownHook(hook);
        limit();
        try {
            study(ground, new Effort(working, progress(), cancel, System::nanoTime));
        } finally {
            ended.countDown();
            clearProgress();
            unhook(hook);
        }
        return Exit.DONE;
    }

    /** On Ctrl-C: asks the work to stop, lets it say so, and leaves with the code for stopped. */
    private void interrupted() {
        cancel.ask();
        try {
            if (ended.await(PATIENCE, TimeUnit.SECONDS)) {
                clearProgress();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        output().flush();
        Runtime.getRuntime().halt(Exit.STOPPED);
    }

    private static void unhook(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is on its way out already; the hook then does the leaving
            return;
        }
    }

    private void limit() {
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

    private Progress progress() {
        if (System.console() == null) {
            return Progress.SILENT;
        }
        return (share, what) -> {
            told = true;
            output().errors().print("\r" + what + "        ");
        };
    }

    private void clearProgress() {
        if (told) {
            told = false;
            output().errors().print("\r" + " ".repeat(60) + "\r");
        }
    }

    static List<Vary> varies(Ground ground, List<String> texts) throws Refusal {
        List<Vary> all = new ArrayList<>();
        for (String text : texts) {
            all.add(Vary.of(ground, text));
        }
        return all;
    }

    /** Says that a file was written. */
    void written(String file) {
        output().line(Messages.text(CommandCode.STUDY_WRITTEN, file));
    }
}
