package farwatt.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BundleHeatTest {

    private static final double COPPER = Conductor.COPPER_PER_KELVIN;

    @ParameterizedTest
    @CsvSource({
        "24, 23, 6.0, open, 0.433, 8, 30, 0.10217, 34.80, 3.748",
        "48, 24, 5.2, conduit, 0.3, 4, 40, 0.030923, 98.69, 3.332",
        "100, 24, 5.2, open, 0.5, 8, 20, 0.17179, 105.75, 19.564"
    })
    void bundlesOfEqualCables(
            int cables,
            int gauge,
            double millimetres,
            String setting,
            double amps,
            int conductors,
            double celsius,
            double watts,
            double perCable,
            double kelvins) {
        double ohms = Conductor.ohmsPerMetre(gauge, Conductor.COPPER_OHM_METRES, 1.02);
        double q = BundleHeat.wattsPerMetre(conductors, amps, ohms);
        double rth = cables * inAir(cables, millimetres / 1000, setting);
        assertEquals(watts, q, 0.5 * lastDigit(watts));
        assertEquals(perCable, rth, 0.005);
        assertEquals(kelvins, rise(q * rth, celsius), 0.0005);
    }

    @ParameterizedTest
    @CsvSource({
        "24, 5.2, 550, 5.6", "24, 5.2, 750, 10.6", "24, 5.2, 850, 13.8", "24, 5.2, 1000, 19.6", "24, 5.2, 1600, 56.9",
        "23, 6.0, 500, 3.4", "23, 6.0, 550, 4.1", "23, 6.0, 750, 7.8", "23, 6.0, 850, 10.1", "23, 6.0, 1000, 14.2",
        "23, 6.0, 1600, 39.8", "23, 7.8, 550, 3.7", "23, 7.8, 750, 6.9", "23, 7.8, 850, 9.0", "23, 7.8, 1000, 12.6",
        "23, 7.8, 1600, 34.9"
    })
    void risesOfTheMeasuredBundlesOfAHundred(int gauge, double millimetres, double milliampsPerPair, double kelvins) {
        double ohms = Conductor.ohmsPerMetre(gauge, Conductor.COPPER_OHM_METRES, 1.02);
        double q = BundleHeat.wattsPerMetre(8, milliampsPerPair / 2000, ohms);
        assertEquals(kelvins, rise(100 * q * inAir(100, millimetres / 1000, "open"), 20), 0.05);
    }

    @Test
    void theSolverFindsTheSameRiseForCablesOutsideTheNetwork() {
        double ohms = Conductor.ohmsPerMetre(24, Conductor.COPPER_OHM_METRES, 1.02);
        double q = BundleHeat.wattsPerMetre(8, 0.5, ohms);
        Sketch sketch = new Sketch();
        Sketch.Row idle = sketch.load(sketch.source(52), 0).cable(4);
        idle.othersRise = 100 * q * inAir(100, 0.0052, "open");
        FlatState state = sketch.solve();
        assertEquals(19.564, state.rise[idle.index], 0.0005);
    }

    @Test
    void aTrayHoldsMoreHeatThanFreeAirAndAConduitMoreThanATray() {
        double open = inAir(24, 0.006, "open");
        double tray = inAir(24, 0.006, "tray");
        double conduit = inAir(24, 0.006, "conduit");
        double within = (1 - 1 / 24.0) / (4 * Math.PI * 0.15);
        assertEquals((open - within) * 10 / 7, tray - within, 1e-12);
        assertEquals((open - within) * 10 / 5 * 6 / 5.8, conduit - within, 1e-12);
    }

    @Test
    void insulationAddsItsLayerAndCoolsAtItsOuterFace() {
        double diameter = BundleHeat.diameter(4 * 0.006 * 0.006, BundleHeat.PACKING);
        double got = BundleHeat.insulated(
                diameter,
                4,
                BundleHeat.INSULATION_THICKNESS,
                BundleHeat.INSULATION_CONDUCTIVITY,
                BundleHeat.OPEN_FILM,
                BundleHeat.CORE_CONDUCTIVITY,
                1.25);
        double outer = 0.0138 + 0.2;
        double expected = Math.log(outer / 0.0138) / (2 * Math.PI * 0.04)
                + 1 / (Math.PI * outer * 10)
                + 0.75 / (4 * Math.PI * 0.15);
        assertEquals(0.0138, diameter, 1e-15);
        assertEquals(1.25 * expected, got, 1e-12);
    }

    @Test
    void withoutInsulationNothingIsLeftOfTheLayer() {
        assertEquals(
                BundleHeat.inAir(0.0138, 4, 10, 0.15, 1), BundleHeat.insulated(0.0138, 4, 0, 0.04, 10, 0.15, 1), 1e-12);
    }

    private static double inAir(int cables, double metres, String setting) {
        double film = switch (setting) {
            case "open" -> BundleHeat.OPEN_FILM;
            case "tray" -> BundleHeat.TRAY_FILM;
            default -> BundleHeat.CONDUIT_FILM;
        };
        double each = setting.equals("conduit") ? Math.min(metres, BundleHeat.CONDUIT_DIAMETER) : metres;
        double diameter = BundleHeat.diameter(cables * each * each, BundleHeat.PACKING);
        return BundleHeat.inAir(diameter, cables, film, BundleHeat.CORE_CONDUCTIVITY, 1);
    }

    /** All cables alike: the closed form of ΔT = w·(1 + α·(T − 20)). */
    private static double rise(double at20, double celsius) {
        return at20 * (1 + COPPER * (celsius - 20)) / (1 - COPPER * at20);
    }

    private static double lastDigit(double printed) {
        return printed > 0.1 ? 1e-5 : 1e-6;
    }
}
