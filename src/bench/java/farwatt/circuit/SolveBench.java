package farwatt.circuit;

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
 * One solve of a landing-sized network with another temperature each time, beside a loop written for exactly this
 * network. Wanted: well under 800 ns, at most 1.3 times the loop, 0 bytes a solve ({@code -prof gc}).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SolveBench {

    private final FlatNetwork network = Landing.network();
    private final FlatState state = new FlatState(Landing.ROWS);
    private final FlatState plainState = new FlatState(Landing.ROWS);
    private final Solver solver = new Solver();
    private int turn;

    /** Both must give the same figures, or there is nothing to compare. */
    @Setup
    public void agree() {
        for (int k = 0; k < 64; k++) {
            Landing.warm(network, k);
            solver.solve(network, state);
            PlainLoop.solve(network, plainState);
            same(state.nodeSent[0], plainState.nodeSent[0]);
            same(state.available[1], plainState.available[1]);
            same(state.temp[1], plainState.temp[1]);
            same(state.voltsFar[Landing.ROWS - 1], plainState.voltsFar[Landing.ROWS - 1]);
        }
    }

    private static void same(double a, double b) {
        if (!(Math.abs(a - b) <= 1e-11 * Math.abs(a))) {
            throw new IllegalStateException(a + " is not " + b);
        }
    }

    /** The solver. */
    @Benchmark
    public double solve() {
        Landing.warm(network, turn++);
        solver.solve(network, state);
        return state.reserve[1];
    }

    /** The loop written by hand. */
    @Benchmark
    public double plainLoop() {
        Landing.warm(network, turn++);
        PlainLoop.solve(network, plainState);
        return plainState.reserve[1];
    }
}
