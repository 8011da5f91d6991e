package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures worked out by hand and by an independent script. */
class WorkedTreeTest {

    /** Ohms per metre of one conductor at a category's ceiling. */
    private static final double CEILING = 0.0938;

    @ParameterizedTest
    @CsvSource({
        "4, 8, 20, 32.160, 40.213, 46.607, 0.8628, 44.866",
        "6, 8, 20, 48.241, 57.320, 43.826, 1.3079, 68.011",
        "3, 12.95, 30, 39.330, 47.840, 45.416, 1.0534, 54.775",
        "4, 12.95, 30, 52.440, 61.787, 43.024, 1.4361, 74.676",
        "2, 25.5, 20, 51.833, 61.142, 43.142, 1.4172, 73.694"
    })
    void devicesBehindOneRegulatedSwitch(
            int devices,
            double watts,
            double metres,
            double sent,
            double received,
            double volts,
            double amps,
            double source) {
        Sketch sketch = new Sketch();
        Sketch.Row feed = sketch.source(52);
        Sketch.Row edge = sketch.regulated(feed, 55, 6, 0.94).cable(6.25);
        for (int k = 0; k < devices; k++) {
            sketch.load(edge, watts).cable(CEILING * metres);
        }
        FlatState state = sketch.solve();
        assertEquals(sent, state.nodeSent[edge.index], 0.0005);
        assertEquals(received, state.nodeReceived[edge.index], 0.0005);
        assertEquals(received, state.received[edge.index], 0.0005);
        assertEquals(volts, state.voltsFar[edge.index], 0.0005);
        assertEquals(amps, state.amps[edge.index], 0.00005);
        assertEquals(source, state.nodeSent[feed.index], 0.0005);
        assertEquals(52.0, state.voltsNear[edge.index]);
        assertEquals(received * 4 * 6.25 / (52 * 52), state.cliffShare[edge.index], 1e-5);
    }

    @Test
    void aPortOfNinetyWattsLeavesFarLessBehindAHundredMetres() {
        Sketch sketch = new Sketch();
        Sketch.Row edge = trunk(sketch, 55, 2);
        FlatState state = sketch.solve();
        assertEquals(4.295, state.ohms[edge.index], 0.0005);
        assertEquals(1.6364, state.mostAmps[edge.index], 0.00005);
        assertEquals(78.5, state.receivable[edge.index], 0.05);
        assertEquals(68.1, state.available[edge.index], 0.05);
        assertEquals(FlatState.PORT, state.boundBy[edge.index]);
    }

    @Test
    void theRightOfTheClassBindsBeforeThePort() {
        Sketch sketch = new Sketch();
        Sketch.Row edge = trunk(sketch, 55, 2);
        edge.right = 71.3;
        FlatState state = sketch.solve();
        assertEquals(61.4, state.available[edge.index], 0.05);
        assertEquals(FlatState.RIGHT, state.boundBy[edge.index]);
        assertEquals(61.382, state.reserve[edge.index], 1e-9);
    }

    @Test
    void aThinLongCableBindsAtHalfTheVolts() {
        Sketch sketch = new Sketch();
        Sketch.Row edge = trunk(sketch, 48, 1);
        edge.cable *= 2.5;
        FlatState state = sketch.solve();
        assertEquals(26.8, state.receivable[edge.index], 0.05);
        assertEquals(48 * 48 / 4 / state.ohms[edge.index], state.receivable[edge.index], 1e-12);
        assertEquals(24, state.mostAmps[edge.index] * state.ohms[edge.index], 1e-12);
        assertEquals(FlatState.CABLE, state.boundBy[edge.index]);
        double byPort = 90 / 48.0;
        assertEquals(14.5, byPort * (48 - byPort * state.ohms[edge.index]), 0.05);
    }

    /** A hundred metres of 24 AWG to a switch that is idle but for its own draw, behind a 90 W port. */
    private static Sketch.Row trunk(Sketch sketch, double volts, int loops) {
        double ohms = 100 * Conductor.ohmsPerMetre(24, Conductor.COPPER_OHM_METRES, 1.02) / loops;
        Sketch.Row edge = sketch.regulated(sketch.source(volts), 55, 6, 0.94).cable(ohms);
        edge.portWatts = 90;
        return edge;
    }
}
