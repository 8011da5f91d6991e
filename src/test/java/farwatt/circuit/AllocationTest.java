package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Solves and grants run in loops of a hundred thousand: they must not make rubbish. */
class AllocationTest {

    private static final int SOLVES = 1000;

    /** What the measurement itself may cost: less than one object a solve by far. */
    private static final long NOISE = 2 * SOLVES;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @Test
    void aSolveAllocatesNothing() {
        RandomNetworks networks = new RandomNetworks(new Random(5));
        List<FlatNetwork> all = new ArrayList<>();
        for (int k = 0; k < 20; k++) {
            all.add(networks.any().lay());
        }
        FlatState state = new FlatState(1000);
        Solver solver = new Solver();
        assertNothingMade(turn -> solver.solve(all.get(turn % all.size()), state));
    }

    @Test
    void aRoundOfGrantsAllocatesNothing() {
        Grants grants = new Grants(20);
        grants.count = 20;
        grants.available[0] = 90;
        for (int k = 1; k < 20; k++) {
            grants.first[k] = 19;
            grants.child[k - 1] = k;
            grants.need[k] = 7;
        }
        grants.first[20] = 19;
        assertNothingMade(turn -> grants.grant());
    }

    private void assertNothingMade(java.util.function.IntConsumer once) {
        long made = Long.MAX_VALUE;
        for (int round = 0; round < 5 && made > NOISE; round++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int turn = 0; turn < SOLVES; turn++) {
                once.accept(turn);
            }
            made = threads.getCurrentThreadAllocatedBytes() - before;
        }
        assertTrue(made <= NOISE, made + " bytes in " + SOLVES + " turns");
    }
}
