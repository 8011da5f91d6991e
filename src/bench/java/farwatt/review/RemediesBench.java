package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * From plans as typed to verdicts with remedies. Wanted, warm: a landing whose trunk is too thin 50 ms, a plan of 50
 * landings with 1,000 devices and 50 failing findings 2 s, however they hang together.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class RemediesBench {
    private static final int SITES = 50;
    private static final int DEVICES = 20;

    private Plan landing = Plan.EMPTY;
    private Plan large = Plan.EMPTY;
    private Plan tree = Plan.EMPTY;

    /** Each site has one finding that fails. */
    @Setup
    public void plans() {
        landing = Sketch.plan("plan | reserve_target = 20 %\n" + site(1, 12));
        StringBuilder all = new StringBuilder("plan | reserve_target = 20 %\n");
        for (int i = 1; i <= SITES; i++) {
            all.append(site(i, DEVICES));
        }
        large = Sketch.plan(all.toString());
        String hub = "source hub | type = 4 | volts = 55 V | ports = " + SITES + " | budget = 6000 W\n";
        tree = Sketch.plan(
                hub + all.toString().replaceAll("source feed .*\n", "").replaceAll("= feed \\d+", "= hub"));
        Review review = check(large);
        long mended =
                review.findings().stream().filter(f -> !f.remedies().isEmpty()).count();
        if (review.fails() != SITES
                || mended != SITES
                || check(landing).fails() != 1
                || check(tree).fails() != SITES) {
            throw new IllegalStateException(review.fails() + " fail of " + SITES + ": " + review.verdict());
        }
    }

    private static String site(int number, int devices) {
        StringBuilder text = new StringBuilder();
        text.append("source feed ").append(number).append(" | type = 4 | volts = 55 V | budget = 120 W\n");
        text.append("switch gate ").append(number).append(" | volts = 55 V | uplink_right = extended | ports = 24\n");
        text.append("run trunk ").append(number).append(" | from = feed ").append(number);
        text.append(" | to = gate ").append(number).append(" | length = 95 m\n");
        double draw = 56.0 / devices;
        for (int i = 1; i <= devices; i++) {
            String id = number + "-" + i;
            text.append("device cam ")
                    .append(id)
                    .append(" | class = 2 | draw = ")
                    .append(draw)
                    .append(" W\n");
            text.append("run line ").append(id).append(" | from = gate ").append(number);
            text.append(" | to = cam ").append(id).append(" | length = 30 m\n");
        }
        return text.toString().replace("extended", "extended | grants_by = measured");
    }

    private static Review check(Plan plan) {
        Calculation calc = Calculation.of(plan);
        return Remedies.of(calc, Reviewer.review(calc), Progress.SILENT, new Cancel());
    }

    /** One landing. */
    @Benchmark
    public Review landing() {
        return check(landing);
    }

    /** Fifty of them in one plan. */
    @Benchmark
    public Review large() {
        return check(large);
    }

    /** The same fifty under one source, where nothing can be solved apart. */
    @Benchmark
    public Review tree() {
        return check(tree);
    }
}
