package farwatt.command;

import farwatt.engine.Corner;
import farwatt.plan.Plan;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Vary;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.Option;

/** What every verb that calculates a plan many times has: threads, a limit of time, a way to stop. */
abstract class StudyVerb extends PlanVerb {
    @Option(names = "--threads", paramLabel = "N", description = "How many threads work; all unless said.")
    private int threads;

    @Option(names = "--seconds", paramLabel = "N", description = "Stops after so long, with exit code 3.")
    private double seconds = Double.POSITIVE_INFINITY;

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
        try (Underway underway = new Underway(output())) {
            limit(underway);
            study(
                    ground,
                    new Effort(working, underway.progress((share, what) -> what), underway.cancel(), System::nanoTime));
        }
        return Exit.DONE;
    }

    private void limit(Underway underway) {
        if (seconds == Double.POSITIVE_INFINITY) {
            return;
        }
        Thread timer = new Thread(
                () -> {
                    try {
                        if (!underway.endsWithin((long) (seconds * 1e3))) {
                            underway.cancel().ask();
                        }
                    } catch (InterruptedException e) {
                        throw new CancellationException(String.valueOf(e.getMessage()));
                    }
                },
                "limit");
        timer.setDaemon(true);
        timer.start();
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
