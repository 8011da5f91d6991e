package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Chains far longer than a call stack. */
class LongChainTest {

    private static final int HOPS = 10_000;

    @Test
    void tenThousandRegulatedSwitchesInARow() {
        Sketch sketch = new Sketch();
        Sketch.Row node = sketch.source(55);
        Sketch.Row feed = node;
        for (int k = 0; k < HOPS; k++) {
            node = sketch.regulated(node, 55, 1e-4, 1).cable(0.01).heat(1, 1);
        }
        Sketch.Row load = sketch.load(node, 10).cable(0.01);
        FlatState state = sketch.solve();
        assertEquals(FlatState.OK, state.status[0]);
        double lost = 0;
        for (Sketch.Row row : sketch.rows()) {
            lost += row == feed ? 0 : state.loss[row.index];
        }
        assertEquals(10 + HOPS * 1e-4 + lost, state.nodeSent[0], 1e-9 * state.nodeSent[0]);
        assertEquals(HOPS + 1, load.index);
    }

    @Test
    void tenThousandDirectSwitchesInARowAreOneLongWire() {
        Sketch sketch = new Sketch();
        Sketch.Row node = sketch.source(55);
        for (int k = 0; k < HOPS; k++) {
            node = sketch.direct(node, 0, 0).cable(5.0 / HOPS);
        }
        Sketch.Row load = sketch.load(node, 100);
        FlatState state = sketch.solve();
        double volts = (55 + Math.sqrt(55 * 55 - 4 * 5 * 100)) / 2;
        assertEquals(volts, state.voltsFar[load.index], 1e-9);
        assertEquals(100 / volts, state.amps[load.index], 1e-11);
        load.draw = 55 * 55 / 20.0 * (1 + 1e-6);
        assertEquals(FlatState.NO_OPERATING_POINT, sketch.solve().status[0]);
        load.draw = 55 * 55 / 20.0 * (1 - 1e-6);
        assertEquals(27.5 * (1 + 1e-3), sketch.solve().voltsFar[load.index], 1e-6);
    }
}
