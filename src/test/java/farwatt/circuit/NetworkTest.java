package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random whole networks: energy, the slow falling sweep, sibling order, reuse. */
class NetworkTest {

    private static final long SEED = 4_117;
    private static final int SWEEPS = 3_000_000;

    @Test
    void energyIsKeptInEveryTree() {
        RandomNetworks networks = new RandomNetworks(new Random(SEED));
        Solver solver = new Solver();
        int trees = 0;
        for (int k = 0; k < 600; k++) {
            FlatNetwork in = networks.any().lay();
            FlatState out = new FlatState(in.count);
            solver.solve(in, out);
            for (int root = 0; root < in.count; root = in.end[root]) {
                if (out.status[root] == FlatState.OK) {
                    double sent = out.nodeSent[root];
                    assertEquals(sent, spent(in, out, root), 1e-9 * sent, "seed " + SEED + ", turn " + k);
                    trees++;
                }
            }
        }
        assertTrue(trees >= 300, trees + " trees stood");
    }

    @Test
    void networksOfEveryKindAgreeWithTheFallingSweep() {
        compare(new RandomNetworks(new Random(SEED + 1))::any, 400);
    }

    @Test
    void directTreesAgreeWithTheFallingSweep() {
        compare(new RandomNetworks(new Random(SEED + 2))::direct, 400);
    }

    @Test
    void theOrderOfSiblingsAndTreesDoesNotMatter() {
        Random random = new Random(SEED + 3);
        RandomNetworks networks = new RandomNetworks(random);
        for (int k = 0; k < 300; k++) {
            Sketch sketch = networks.any();
            FlatState before = sketch.solve();
            int[] was = sketch.rows().stream().mapToInt(row -> row.index).toArray();
            var rows = sketch.rows();
            sketch.shuffle(random);
            FlatState after = sketch.solve();
            for (int r = 0; r < was.length; r++) {
                String what = "seed " + (SEED + 3) + ", turn " + k + ", row " + r;
                int then = was[r];
                int now = rows.get(r).index;
                assertEquals(before.status[then], after.status[now], what);
                assertEquals(before.boundBy[then], after.boundBy[now], what);
                near(before.amps[then], after.amps[now], 1e-11, what);
                near(before.temp[then], after.temp[now], 1e-11, what);
                near(before.nodeSent[then], after.nodeSent[now], 1e-11, what);
                near(before.available[then], after.available[now], 1e-9, what);
            }
        }
    }

    @Test
    void aSolverAndStateUsedBeforeGiveTheSameBits() {
        RandomNetworks networks = new RandomNetworks(new Random(SEED + 4));
        Solver used = new Solver();
        FlatState state = new FlatState(2000);
        for (int k = 0; k < 300; k++) {
            FlatNetwork in = networks.any().lay();
            FlatState fresh = new FlatState(in.count);
            new Solver().solve(in, fresh);
            used.solve(in, state);
            States.assertSameBits(fresh, state, in.count, "seed " + (SEED + 4) + ", turn " + k);
        }
    }

    private static void compare(java.util.function.Supplier<Sketch> networks, int turns) {
        Solver solver = new Solver();
        int stood = 0;
        int fell = 0;
        for (int k = 0; k < turns; k++) {
            String what = "seed from " + SEED + ", turn " + k;
            FlatNetwork in = networks.get().lay();
            FlatState out = new FlatState(in.count);
            solver.solve(in, out);
            FallingSweep slow = new FallingSweep(in, SWEEPS);
            boolean all = true;
            for (int i = 0; i < in.count; i++) {
                all &= out.status[i] == FlatState.OK;
            }
            assertEquals(slow.stands, all, what);
            stood += all ? 1 : 0;
            fell += all ? 0 : 1;
            for (int i = 0; i < in.count && all; i++) {
                if (in.parent[i] >= 0) {
                    near(slow.volts[i], out.voltsFar[i], 1e-9, what);
                    near(slow.amps[i], out.amps[i], 1e-9, what);
                    near(20 + slow.above[i], out.temp[i], 1e-9, what);
                    near(slow.ohms(in, i), out.ohms[i], 1e-9, what);
                }
            }
        }
        assertTrue(stood >= 100 && fell >= 40, stood + " stood, " + fell + " fell");
    }

    /** Losses, what devices take, and what switches keep for themselves. */
    private static double spent(FlatNetwork in, FlatState out, int root) {
        double spent = 0;
        for (int i = root + 1; i < in.end[root]; i++) {
            spent += out.loss[i] + out.received[i] - out.nodeSent[i];
            assertEquals(out.received[i], out.nodeReceived[i], 1e-10 * out.nodeReceived[i] + 1e-12);
            assertFalse(Double.isNaN(spent));
        }
        return spent;
    }

    private static void near(double expected, double actual, double relative, String what) {
        if (Double.isNaN(expected) || Double.isInfinite(expected)) {
            assertEquals(expected, actual, what);
        } else {
            assertEquals(expected, actual, relative * (1e-3 + Math.abs(expected)), what);
        }
    }
}
