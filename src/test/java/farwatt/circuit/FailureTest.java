package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Trees that have no answer, and why. */
class FailureTest {

    private final Sketch sketch = new Sketch();

    @Test
    void tooManyWattsAreNoOperatingPointWithTheMostPossible() {
        Sketch.Row feed = sketch.source(50);
        Sketch.Row heavy = sketch.load(feed, 126).cable(5);
        Sketch.Row light = sketch.load(feed, 5).cable(1);
        FlatState state = sketch.solve();
        assertEquals(FlatState.NO_OPERATING_POINT, state.status[0]);
        assertEquals(FlatState.NO_OPERATING_POINT, state.status[light.index]);
        assertEquals(heavy.index, state.culprit[0]);
        assertEquals(126.0, state.asked[0]);
        assertEquals(125.0, state.possible[0], 1e-12);
        assertTrue(Double.isNaN(state.amps[light.index]));
        assertTrue(Double.isNaN(state.nodeSent[0]));
        assertTrue(Double.isNaN(state.available[0]));
        assertEquals(FlatState.NONE, state.boundBy[0]);
    }

    @Test
    void heatThatTakesAwayTheAnswerIsRunaway() {
        sketch.load(sketch.source(50), 124).cable(5).heat(20, 100);
        FlatState state = sketch.solve();
        assertEquals(FlatState.RUNAWAY, state.status[0]);
        assertTrue(state.possible[0] < 124, "" + state.possible[0]);
        assertTrue(state.possible[0] > 90, "" + state.possible[0]);
    }

    @Test
    void aWireThatSettlesAboveTwoHundredDegreesIsRunaway() {
        Sketch.Row hot = sketch.load(sketch.source(400), 400).cable(1).heat(12_000, 100);
        assertEquals(FlatState.RUNAWAY, sketch.solve().status[0]);
        hot.rth = 9_000;
        FlatState state = sketch.solve();
        assertEquals(FlatState.OK, state.status[0]);
        assertTrue(state.temp[hot.index] > 150 && state.temp[hot.index] < 200, "" + state.temp[hot.index]);
    }

    @Test
    void neighboursThatOverheatAnIdleWireAreRunaway() {
        Sketch.Row idle = sketch.load(sketch.source(50), 0).cable(5);
        idle.othersRise = 120;
        assertEquals(FlatState.RUNAWAY, sketch.solve().status[0]);
        idle.othersRise = 300;
        FlatState state = sketch.solve();
        assertEquals(FlatState.RUNAWAY, state.status[0]);
        assertEquals(0.0, state.possible[0]);
        idle.othersRise = 20;
        assertEquals(FlatState.OK, sketch.solve().status[0]);
    }

    @Test
    void aDirectTreeFailsByWattsOrByHeat() {
        Sketch.Row direct = sketch.direct(sketch.source(50), 0, 0).cable(3);
        Sketch.Row load = sketch.load(direct, 124).cable(2);
        assertEquals(FlatState.OK, sketch.solve().status[0]);
        direct.heat(20, 100);
        load.heat(20, 100);
        FlatState warm = sketch.solve();
        assertEquals(FlatState.RUNAWAY, warm.status[0]);
        assertTrue(Double.isNaN(warm.asked[0]) && Double.isNaN(warm.possible[0]));
        load.draw = 126;
        assertEquals(FlatState.NO_OPERATING_POINT, sketch.solve().status[0]);
    }

    @Test
    void aDirectTreeWithAWireAboveTwoHundredDegreesIsRunaway() {
        Sketch.Row direct = sketch.direct(sketch.source(400), 0, 0);
        Sketch.Row hot = sketch.load(direct, 400).cable(1).heat(12_000, 100);
        FlatState state = sketch.solve();
        assertEquals(FlatState.RUNAWAY, state.status[0]);
        assertEquals(hot.index, state.culprit[0]);
        hot.othersRise = 300;
        assertEquals(FlatState.RUNAWAY, sketch.solve().status[0]);
    }

    @Test
    void throughDropsThatEatAllVoltsAreNoOperatingPoint() {
        Sketch.Row direct = sketch.direct(sketch.source(50), 1, 30).cable(1);
        Sketch.Row next = sketch.direct(direct, 1, 30).cable(1);
        Sketch.Row load = sketch.load(next, 0).cable(1);
        FlatState state = sketch.solve();
        assertEquals(FlatState.NO_OPERATING_POINT, state.status[0]);
        assertEquals(load.index, state.culprit[0]);
    }

    @Test
    void voltsThatFallAwayUnderLoadAreNoOperatingPoint() {
        Sketch.Row direct = sketch.direct(sketch.source(50), 0, 26).cable(10);
        sketch.load(direct, 20).cable(1);
        assertEquals(FlatState.NO_OPERATING_POINT, sketch.solve().status[0]);
    }

    @Test
    void aFailureBehindARegulatedSwitchTakesTheWholeTreeAndNoOther() {
        Sketch.Row bad = sketch.source(50);
        Sketch.Row edge = sketch.regulated(bad, 48, 4, 0.9).cable(1);
        Sketch.Row heavy = sketch.load(edge, 500).cable(5);
        Sketch.Row good = sketch.source(50);
        Sketch.Row light = sketch.load(good, 5).cable(1);
        FlatState state = sketch.solve();
        assertEquals(FlatState.NO_OPERATING_POINT, state.status[bad.index]);
        assertEquals(heavy.index, state.culprit[bad.index]);
        assertEquals(FlatState.OK, state.status[good.index]);
        assertEquals(5, state.received[light.index], 1e-12);
    }

    @Test
    void aFailedTreeDoesNotWarmItsNeighbours() {
        Sketch.Row light =
                sketch.load(sketch.source(50), 30).cable(5).heat(30, 100).in(0);
        Sketch.Row second =
                sketch.load(sketch.source(50), 30).cable(5).heat(30, 100).in(0);
        double[] pair = {sketch.solve().temp[light.index], sketch.solve().temp[second.index]};
        Sketch.Row bad = sketch.source(50);
        sketch.load(bad, 200).cable(5).heat(30, 100).in(0);
        FlatState state = sketch.solve();
        assertEquals(FlatState.NO_OPERATING_POINT, state.status[bad.index]);
        assertEquals(FlatState.OK, state.status[light.index]);
        assertEquals(pair[0], state.temp[light.index]);
        assertEquals(pair[1], state.temp[second.index]);
    }

    @Test
    void aNeighbourWhoseHeatTakesAwayTheAnswerIsRunaway() {
        Sketch.Row alone =
                sketch.load(sketch.source(50), 115).cable(5).heat(2, 100).in(0);
        FlatState by = sketch.solve();
        assertEquals(FlatState.OK, by.status[0]);
        assertTrue(by.temp[alone.index] < 40);
        Sketch.Row strong = sketch.source(50);
        Sketch.Row warm = sketch.load(strong, 60).cable(5).heat(20, 100).in(0);
        warm.draw = 80;
        alone.heat(30, 100);
        alone.draw = 110;
        FlatState state = sketch.solve();
        assertEquals(FlatState.RUNAWAY, state.status[0]);
        assertEquals(FlatState.OK, state.status[strong.index]);
        assertEquals(80, state.received[warm.index], 1e-9);
    }

    @Test
    void twoAlikeThatRunAwayTogetherBothFail() {
        Sketch.Row first = sketch.source(50);
        Sketch.Row second = sketch.source(50);
        sketch.load(first, 100).cable(5).heat(40, 100).in(0);
        sketch.load(second, 100).cable(5).heat(40, 100).in(0);
        FlatState state = sketch.solve();
        assertEquals(FlatState.RUNAWAY, state.status[first.index]);
        assertEquals(FlatState.RUNAWAY, state.status[second.index]);
        sketch.roots.remove(1);
        assertEquals(FlatState.OK, sketch.solve().status[0]);
    }

    @Test
    void aStateTooSmallIsAMistakeOfTheCaller() {
        sketch.load(sketch.source(50), 5);
        FlatNetwork network = sketch.lay();
        FlatState small = new FlatState(1);
        Solver solver = new Solver();
        assertThrows(IllegalArgumentException.class, () -> solver.solve(network, small));
        assertFalse(small.capacity() >= network.capacity());
    }
}
