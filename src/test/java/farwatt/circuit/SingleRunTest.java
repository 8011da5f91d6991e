package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** One run against bisection and the closed form. */
class SingleRunTest {

    private static final long SEED = 20_240_611;

    @Test
    void randomRunsWithHeatAgreeWithBisection() {
        Random random = new Random(SEED);
        int[] seen = new int[3];
        for (int k = 0; k < 3000; k++) {
            Sketch sketch = new Sketch();
            double volts = 40 + 17 * random.nextDouble();
            Sketch.Row row = random(sketch.load(sketch.source(volts), 0), random);
            double peak = peak(row, volts);
            row.draw = at(row, volts, peak) * share(random);
            double amps = bisect(row, volts, peak);
            String what = "seed " + SEED + ", turn " + k;
            FlatState state = sketch.solve();
            seen[state.status[0]]++;
            if (Double.isNaN(amps)) {
                assertTrue(state.status[0] != FlatState.OK, what);
                assertTrue(state.asked[0] == row.draw, what);
                double most = at(row, volts, Math.min(peak, hottest(row)));
                assertEquals(most, state.possible[0], 1e-9 * most, what);
                assertEquals(cold(row, volts), state.status[0] == FlatState.RUNAWAY, what);
            } else {
                assertEquals(FlatState.OK, state.status[0], what);
                double slack = 1e-12 / Math.sqrt(Math.max(1e-12, 1 - row.draw / at(row, volts, peak)));
                assertEquals(amps, state.amps[1], Math.max(1e-11, slack) * amps, what);
                assertEquals(row.draw, state.received[1], 1e-10 * row.draw, what);
                assertEquals(20 + above(row, amps), state.temp[1], 1e-8, what);
            }
        }
        assertTrue(seen[0] > 500 && seen[1] > 200 && seen[2] > 200, seen[0] + ", " + seen[1] + ", " + seen[2]);
    }

    @Test
    void theCliffItselfIsAnOperatingPoint() {
        Sketch sketch = new Sketch();
        Sketch.Row load = sketch.load(sketch.source(50), 125).cable(5);
        FlatState state = sketch.solve();
        assertEquals(FlatState.OK, state.status[0]);
        assertEquals(5.0, state.amps[load.index]);
        assertEquals(25.0, state.voltsFar[load.index]);
        assertEquals(1.0, state.cliffShare[load.index]);

        load.draw = 125 * (1 + 1e-12);
        assertEquals(FlatState.NO_OPERATING_POINT, sketch.solve().status[0]);
        load.draw = 125 * (1 - 1e-12);
        assertEquals(25 * (1 + 1e-6), sketch.solve().voltsFar[load.index], 1e-9);
    }

    @Test
    void theCliffAsRoundedIsStillAnOperatingPoint() {
        Random random = new Random(SEED);
        for (int k = 0; k < 1000; k++) {
            double volts = 40 + 17 * random.nextDouble();
            double ohms = 1 + 10 * random.nextDouble();
            Sketch sketch = new Sketch();
            Sketch.Row load = sketch.load(sketch.source(volts), volts * volts / (4 * ohms))
                    .cable(ohms);
            FlatState state = sketch.solve();
            assertEquals(FlatState.OK, state.status[0], "seed " + SEED + ", turn " + k);
            assertEquals(volts / 2, state.voltsFar[load.index], 1e-6 * volts, "seed " + SEED + ", turn " + k);
        }
    }

    @Test
    void nothingDrawnIsNothingCarried() {
        Sketch sketch = new Sketch();
        Sketch.Row load = sketch.load(sketch.source(50), 0).cable(5).heat(30, 100);
        FlatState state = sketch.solve();
        assertEquals(0.0, state.amps[load.index]);
        assertEquals(0.0, state.sent[load.index]);
        assertEquals(50.0, state.voltsFar[load.index]);
        assertEquals(0.0, state.cliffShare[load.index]);
        assertEquals(0.0, state.nodeSent[0]);
    }

    @Test
    void aRunWithoutResistanceHasNoCliff() {
        Sketch sketch = new Sketch();
        Sketch.Row load = sketch.load(sketch.source(50), 1000);
        FlatState state = sketch.solve();
        assertEquals(20.0, state.amps[load.index]);
        assertEquals(50.0, state.voltsFar[load.index]);
        assertEquals(0.0, state.cliffShare[load.index]);
    }

    @Test
    void onlyTheCableWarmsTheWireButTheCordFeelsIt() {
        Sketch sketch = new Sketch();
        Sketch.Row load = sketch.load(sketch.source(50), 40).cable(4).heat(50, 80);
        load.cord = 0.5;
        load.fixed = 0.12;
        FlatState state = sketch.solve();
        double amps = state.amps[load.index];
        double over = state.rise[load.index];
        double warmed = 1 + Conductor.COPPER_PER_KELVIN * over;
        assertEquals(50 * amps * amps * 4 * warmed / 80, over, 1e-10);
        assertEquals(4.5 * warmed + 0.12, state.ohms[load.index], 1e-12);
    }

    private static Sketch.Row random(Sketch.Row row, Random random) {
        row.metres = 5 + 95 * random.nextDouble();
        row.cable = row.metres * (0.02 + 0.1 * random.nextDouble());
        row.cord = random.nextBoolean() ? 0 : random.nextDouble();
        row.fixed = random.nextBoolean() ? 0 : random.nextDouble();
        row.alpha = 0.0039 + 0.0002 * random.nextDouble();
        row.ambient = -40 + 110 * random.nextDouble();
        row.rth = random.nextInt(5) == 0 ? 0 : 100 * random.nextDouble();
        row.othersRise = random.nextBoolean() ? 0 : 20 * random.nextDouble();
        return row;
    }

    private static double share(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> 1 - Math.pow(10, -6 * random.nextDouble());
            case 1 -> 1 + Math.pow(10, -6 * random.nextDouble());
            case 2 -> 1.5 * random.nextDouble();
            default -> 0.5 * random.nextDouble();
        };
    }

    private static double above(Sketch.Row row, double amps) {
        double own = row.rth * amps * amps * row.cable / row.metres;
        return (row.ambient - 20 + row.othersRise + own) / (1 - own * row.alpha - row.othersRise * row.alphaOthers);
    }

    private static double at(Sketch.Row row, double volts, double amps) {
        double above = above(row, amps);
        double ohms = row.cable * (1 + row.alpha * above) + row.cord * (1 + row.alphaCord * above) + row.fixed;
        return amps * (volts - amps * ohms);
    }

    private static double pole(Sketch.Row row) {
        double left = 1 - row.othersRise * row.alphaOthers;
        return Math.sqrt(left * row.metres / (row.rth * row.cable * row.alpha));
    }

    /** The current that brings most, by thirds. */
    private static double peak(Sketch.Row row, double volts) {
        double low = 0;
        double high = Math.min(volts / row.cable * 2, pole(row) * (1 - 1e-12));
        for (int k = 0; k < 300; k++) {
            double left = low + (high - low) / 3;
            double right = high - (high - low) / 3;
            if (at(row, volts, left) < at(row, volts, right)) {
                low = left;
            } else {
                high = right;
            }
        }
        return (low + high) / 2;
    }

    private static double hottest(Sketch.Row row) {
        double low = 0;
        double high = Math.min(1e6, pole(row) * (1 - 1e-15));
        for (int k = 0; k < 200; k++) {
            double middle = (low + high) / 2;
            if (above(row, middle) < 180) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double bisect(Sketch.Row row, double volts, double peak) {
        double low = 0;
        double high = peak;
        if (at(row, volts, peak) < row.draw) {
            return Double.NaN;
        }
        for (int k = 0; k < 200; k++) {
            double middle = (low + high) / 2;
            if (at(row, volts, middle) < row.draw) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return above(row, low) < 180 ? low : Double.NaN;
    }

    /** Whether the run would stand if it did not warm itself. */
    private static boolean cold(Sketch.Row row, double volts) {
        double above = above(row, 0);
        double ohms = row.cable * (1 + row.alpha * above) + row.cord * (1 + row.alphaCord * above) + row.fixed;
        return row.draw <= volts * volts / (4 * ohms);
    }
}
