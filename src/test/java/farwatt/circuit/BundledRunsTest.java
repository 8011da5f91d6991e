package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Runs that warm each other. Equal runs in a bundle are as warm as one run that warms itself as much as all. */
class BundledRunsTest {

    private static final int RUNS = 3;
    private static final double RTH = 8;

    @Test
    void equalRunsAreLikeOneThatWarmsItselfAsMuchAsAll() {
        for (double watts = 10; watts < 100; watts += 10) {
            same(watts, 1e-12);
        }
    }

    @Test
    void thisHoldsUpToTheCommonCliffToo() {
        double low = 50;
        double high = 125;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            if (alone(middle).status[0] == FlatState.OK) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertTrue(low < 115, low + " W is not a cliff moved by heat");
        same(low * (1 - 1e-3), 1e-11);
        same(low * (1 - 1e-6), 1e-9);
        assertEquals(FlatState.RUNAWAY, together(low * (1 + 1e-6)).status[0]);
    }

    @Test
    void compensationKeepsWhatAPlainSumWouldLose() {
        Sketch sketch = new Sketch();
        Sketch.Row feed = sketch.source(1);
        sketch.load(feed, 0x1p60);
        for (int k = 0; k < 64; k++) {
            sketch.load(feed, 16);
        }
        assertEquals(0x1p60 + 1024, sketch.solve().nodeSent[0]);
    }

    private static void same(double watts, double relative) {
        FlatState one = alone(watts);
        FlatState all = together(watts);
        for (int i = 1; i <= RUNS; i++) {
            assertEquals(one.amps[1], all.amps[i], relative * one.amps[1], watts + " W");
            assertEquals(one.temp[1], all.temp[i], 20 * relative * one.temp[1], watts + " W");
        }
    }

    private static FlatState alone(double watts) {
        Sketch sketch = new Sketch();
        sketch.load(sketch.source(50), watts).cable(5).heat(RUNS * RTH, 100);
        return sketch.solve();
    }

    private static FlatState together(double watts) {
        Sketch sketch = new Sketch();
        Sketch.Row feed = sketch.source(50);
        for (int k = 0; k < RUNS; k++) {
            sketch.load(feed, watts).cable(5).heat(RTH, 100).in(0);
        }
        return sketch.solve();
    }
}
