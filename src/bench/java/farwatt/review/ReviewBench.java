package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import java.util.Optional;
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
 * A review over five corners of a plan with 1,000 devices in which much is wrong. Wanted: 50 ms at most, warm.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ReviewBench {
    private static final long SEED = 7;
    private static final int DEVICES = 1000;

    private Plan plan = Plan.EMPTY;
    private Calculation calc = Calculation.of(plan);
    private int turn;

    /** All five corners are solved once; without them there is nothing to compare. */
    @Setup
    public void solve() {
        plan = RandomPlans.of(SEED, DEVICES);
        calc = Calculation.of(plan);
        Review review = Reviewer.review(calc);
        if (review.corners().size() != Corner.values().length
                || review.findings().size() < DEVICES) {
            throw new IllegalStateException("a plan too good to measure");
        }
    }

    /** The review of solved corners. */
    @Benchmark
    public Review review() {
        return Reviewer.review(calc);
    }

    /** One cell changed, every corner brought up to date, reviewed. */
    @Benchmark
    public Review edit() {
        Cell draw = Cell.text(1 + turn++ % 10 + " W");
        calc.apply(new Change.SetCell(Table.DEVICES, "cam 500", "draw", Optional.of(draw)));
        return Reviewer.review(calc);
    }

    /** From the plan as typed. */
    @Benchmark
    public Review whole() {
        return Reviewer.review(Calculation.of(plan));
    }
}
