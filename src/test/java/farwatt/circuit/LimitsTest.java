package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a node can hand out, and which limit says so. */
class LimitsTest {

    private static final long SEED = 90_055;

    private Sketch sketch = new Sketch();
    private Sketch.Row feed = sketch.source(50);
    private Sketch.Row edge = sketch.regulated(feed, 48, 4, 0.9);

    @BeforeEach
    void aTrunkOfFiveOhms() {
        sketch = new Sketch();
        feed = sketch.source(50);
        edge = sketch.regulated(feed, 48, 4, 0.9).cable(5);
    }

    @Test
    void aSourceHandsOutItsBudget() {
        feed.budget = 60;
        FlatState state = sketch.solve();
        assertEquals(60.0, state.available[0]);
        assertEquals(FlatState.BUDGET, state.boundBy[0]);
        assertEquals(60 - state.nodeSent[0], state.reserve[0]);
        assertTrue(Double.isNaN(state.receivable[0]) && Double.isNaN(state.mostAmps[0]));
    }

    @Test
    void nothingBindsWhereNothingLimits() {
        edge.cable(0);
        FlatState state = sketch.solve();
        assertEquals(Double.POSITIVE_INFINITY, state.available[edge.index]);
        assertEquals(FlatState.NONE, state.boundBy[0]);
        assertEquals(FlatState.NONE, state.boundBy[edge.index]);
    }

    @Test
    void eachLimitBindsInItsTurn() {
        binds(FlatState.CABLE, 5, 125);
        edge.wireAmps = 4;
        binds(FlatState.WIRE, 4, 120);
        edge.floor = 35;
        binds(FlatState.FLOOR, 3, 105);
        edge.portWatts = 100;
        binds(FlatState.PORT, 2, 80);
        edge.right = 70;
        binds(FlatState.RIGHT, 2, 80);
        edge.budget = 20;
        binds(FlatState.BUDGET, 2, 80);
        assertEquals(20.0, sketch.solve().available[edge.index]);
    }

    private void binds(byte bound, double amps, double watts) {
        FlatState state = sketch.solve();
        assertEquals(bound, state.boundBy[edge.index]);
        assertEquals(amps, state.mostAmps[edge.index], 1e-12);
        assertEquals(watts, state.receivable[edge.index], 1e-11);
        double brought = Math.min(watts, edge.right);
        assertEquals(Math.min(edge.budget, 0.9 * (brought - 4)), state.available[edge.index], 1e-11);
    }

    @Test
    void onATieTheFirstInOrderIsNamed() {
        edge.floor = 25;
        assertEquals(FlatState.CABLE, sketch.solve().boundBy[edge.index]);
        edge.wireAmps = 5;
        assertEquals(FlatState.WIRE, sketch.solve().boundBy[edge.index]);
        edge.budget = 0.9 * (125 - 4);
        assertEquals(FlatState.BUDGET, sketch.solve().boundBy[edge.index]);
        edge.portWatts = 250;
        assertEquals(FlatState.PORT, sketch.solve().boundBy[edge.index]);
        edge.right = 125;
        assertEquals(FlatState.RIGHT, sketch.solve().boundBy[edge.index]);
        edge.right = 125 * (1 + 1e-10);
        assertEquals(FlatState.RIGHT, sketch.solve().boundBy[edge.index]);
        edge.right = 125 * (1 + 1e-7);
        assertEquals(FlatState.PORT, sketch.solve().boundBy[edge.index]);
    }

    @Test
    void otherPortsTakeFromWhatTheNodeHasLeft() {
        feed.budget = 60;
        Sketch.Row other = sketch.load(feed, 20).cable(5);
        FlatState state = sketch.solve();
        double left = 60 - state.sent[other.index];
        assertEquals(left / 50, state.mostAmps[edge.index], 1e-12);
        assertEquals(FlatState.PORT, state.boundBy[edge.index]);
    }

    @Test
    void aNodeThatGivesMoreThanItHasLeavesNothing() {
        feed.budget = 15;
        sketch.load(feed, 20).cable(5);
        FlatState state = sketch.solve();
        assertEquals(0.0, state.mostAmps[edge.index]);
        assertEquals(0.0, state.receivable[edge.index]);
        assertEquals(0.0, state.available[edge.index]);
        assertTrue(state.reserve[0] < 0);
    }

    @Test
    void aFloorAboveThePortsVoltsLeavesNothing() {
        edge.floor = 51;
        FlatState state = sketch.solve();
        assertEquals(0.0, state.available[edge.index]);
        assertEquals(FlatState.FLOOR, state.boundBy[edge.index]);
    }

    @Test
    void aRunWithoutResistanceHasNeitherCableNorFloorTerm() {
        edge.cable(0);
        edge.floor = 51;
        edge.portWatts = 90;
        FlatState state = sketch.solve();
        assertEquals(90.0, state.receivable[edge.index]);
        assertEquals(FlatState.PORT, state.boundBy[edge.index]);
    }

    @Test
    void aDirectSwitchHandsOutWhatItsThroughDropLeaves() {
        Sketch.Row direct = sketch.direct(feed, 3, 2).cable(4);
        sketch.load(direct, 10).cable(2);
        direct.portWatts = 60;
        FlatState state = sketch.solve();
        double volts = state.voltsFar[direct.index];
        double amps = 60 / 50.0;
        double brought = amps * 50 - amps * amps * 4;
        assertEquals((brought - 3) * (volts - 2) / volts, state.available[direct.index], 1e-12);
        assertEquals(state.available[direct.index] - state.nodeSent[direct.index], state.reserve[direct.index]);
    }

    @Test
    void whatASwitchHasBoundsTheNextHop() {
        edge.right = 50;
        Sketch.Row far = sketch.regulated(edge, 48, 2, 0.9).cable(2);
        FlatState state = sketch.solve();
        double has = 0.9 * (50 - 4);
        assertEquals(has / 48, state.mostAmps[far.index], 1e-12);
        assertEquals(FlatState.PORT, state.boundBy[far.index]);
    }

    @Test
    void aCurrentThatWouldOverheatTheWireIsBeyondTheCable() {
        edge.cable(5).heat(250, 100);
        FlatState state = sketch.solve();
        double amps = state.mostAmps[edge.index];
        double kelvins = 250 * amps * amps * 5 * (1 + Conductor.COPPER_PER_KELVIN * 180) / 100;
        assertEquals(180, kelvins, 1e-9);
        assertTrue(amps * 5 < 25);
        assertEquals(FlatState.CABLE, state.boundBy[edge.index]);
    }

    @Test
    void randomTrunksAgreeWithASearchForTheLargestCurrentAllowed() {
        Random random = new Random(SEED);
        int[] seen = new int[7];
        for (int k = 0; k < 2000; k++) {
            aTrunkOfFiveOhms();
            randomTrunk(random);
            FlatState state = sketch.solve();
            if (state.status[0] == FlatState.OK) {
                double amps = largest();
                assertEquals(amps, state.mostAmps[edge.index], 1e-9 * amps, "seed " + SEED + ", turn " + k);
                seen[state.boundBy[edge.index]]++;
            }
        }
        for (byte bound : new byte[] {FlatState.PORT, FlatState.WIRE, FlatState.CABLE, FlatState.FLOOR}) {
            assertTrue(seen[bound] > 50, bound + ": " + seen[bound]);
        }
    }

    private void randomTrunk(Random random) {
        edge.cable(1 + 15 * random.nextDouble()).heat(random.nextInt(4) * 30 * random.nextDouble(), 100);
        edge.cord = random.nextBoolean() ? 0 : random.nextDouble();
        edge.fixed = random.nextBoolean() ? 0 : 3 * random.nextDouble();
        edge.ambient = 60 * random.nextDouble();
        edge.othersRise = 10 * random.nextDouble();
        edge.floor = 50 * random.nextDouble();
        edge.portWatts = 20 + 200 * random.nextDouble();
        edge.wireAmps = random.nextBoolean() ? Double.POSITIVE_INFINITY : 4 * random.nextDouble();
    }

    private double largest() {
        double low = 0;
        double high = Math.min(edge.portWatts / 50, edge.wireAmps);
        if (allowed(high)) {
            return high;
        }
        for (int k = 0; k < 200; k++) {
            double middle = (low + high) / 2;
            if (allowed(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean allowed(double amps) {
        double own = edge.rth * amps * amps * edge.cable / edge.metres;
        double under = 1 - own * edge.alpha - edge.othersRise * edge.alphaOthers;
        double above = (edge.ambient - 20 + edge.othersRise + own) / under;
        double ohms = (edge.cable + edge.cord) * (1 + edge.alpha * above) + edge.fixed;
        return under > 0 && above <= 180 && amps * ohms <= Math.min(25, 50 - edge.floor);
    }
}
