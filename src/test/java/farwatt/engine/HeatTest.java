package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cables that warm themselves and each other (our calibration). */
class HeatTest {
    private static final double ALPHA = 0.00393;

    /** Ohms per metre at 20 °C of one solid conductor (ASTM B258, our lay factor). */
    private static double ohms(double gauge) {
        double diameter = 0.127e-3 * Math.pow(92, (36 - gauge) / 39);
        return 1.7241e-8 * 1.02 / (Math.PI * diameter * diameter / 4);
    }

    /** Rise where q·Rth is the rise at 20 °C and warmth feeds on itself. */
    private static double rise(double atTwenty, double ambient) {
        return atTwenty * (1 + ALPHA * (ambient - 20)) / (1 - ALPHA * atTwenty);
    }

    /** Bundles with figures worked out independently, of cables that are not in the plan. */
    @ParameterizedTest
    @CsvSource({
        "open, 30, 23, 23 AWG, 6.0 mm, 0.433, 8, 0.10217, 34.80",
        "conduit, 40, 47, 24 AWG, 5.2 mm, 0.3, 4, 0.030923, 98.69",
        "open, 20, 99, 24 AWG, 5.2 mm, 0.5, 8, 0.17179, 105.75"
    })
    void aBundleOfOthers(
            String setting,
            double air,
            int others,
            String gauge,
            String diameter,
            double amps,
            double conductors,
            double q,
            double rth) {
        // as many watts in eight conductors as in the loaded ones
        double each = amps * Math.sqrt(conductors / 8);
        Answers answers = new Draft()
                .settings("heat_margin", "1")
                .zone("shaft", "ambient", air + " degC", "setting", setting)
                .row(Table.BUNDLES, "duct", "others", "" + others, "others_amps", each + " A")
                .cell(Table.BUNDLES, "duct", "others_gauge", Cell.text(gauge))
                .cell(Table.BUNDLES, "duct", "others_diameter", Cell.text(diameter))
                .source("feed", "type", "4")
                .device("cam", "draw", "0 W", "zone", "shaft")
                .run("idle", "feed", "cam", "bundle", "duct", "length", "9 m", "cable_diameter", diameter)
                .solved();
        answers.clean();
        double rise = rise(q * rth * others / (others + 1), air);
        assertEquals(rise, answers.number("idle", "rise"), rise * 2e-4);
        assertEquals(air + rise, answers.number("idle", "wire_temp"), rise * 2e-4);
        assertEquals(0, answers.number("idle", "loss"));
    }

    /** The same bundles made of the plan's own runs, each fed the watts that make just this current flow. */
    @ParameterizedTest
    @CsvSource({
        "open, 30, 24, 23, 6.0 mm, 0.433, 8, 0.10217, 3.748",
        "conduit, 40, 48, 24, 5.2 mm, 0.3, 4, 0.030923, 3.332",
        "open, 20, 100, 24, 5.2 mm, 0.5, 8, 0.17179, 19.564"
    })
    void aBundleOfThePlansOwnRuns(
            String setting,
            double air,
            int cables,
            double gauge,
            String diameter,
            double amps,
            int conductors,
            double q,
            double rise) {
        String pairs = conductors == 8 ? "4" : "2";
        double total = amps * conductors / 2;
        double warm = 1 + ALPHA * (air + rise - 20);
        double loop = ohms(gauge) * 10 / (conductors / 4.0) * warm;
        String watts = total * (55 - total * loop) + " W";
        Draft draft = new Draft()
                .settings("heat_margin", "1")
                .zone("shaft", "ambient", air + " degC", "setting", setting)
                .bundle("duct")
                .source("feed", "type", "4", "volts", "55 V");
        for (int k = 1; k <= cables; k++) {
            String[] cells = {
                "zone",
                "shaft",
                "bundle",
                "duct",
                "length",
                "10 m",
                "joints",
                "0",
                "pairs",
                pairs,
                "gauge",
                gauge + " AWG"
            };
            draft.device("cam " + k, "draw", watts, "class", "8")
                    .run("run " + k, "feed", "cam " + k, cells)
                    .cell(Table.RUNS, "run " + k, "cable_diameter", Cell.text(diameter));
        }
        Answers answers = draft.solved();
        for (int k : new int[] {1, cables / 2, cables}) {
            assertEquals(rise, answers.number("run " + k, "rise"), 0.0006);
            assertEquals(total, answers.number("run " + k, "amps"), total * 1e-6);
            assertEquals(q * warm, answers.number("run " + k, "loss") / 10, q * 1e-4);
        }
    }

    private static Draft lone(String margin, String setting, String... cells) {
        return new Draft()
                .settings("heat_margin", margin)
                .zone("shaft", "ambient", "35 degC", "setting", setting)
                .source("feed", "type", "4", "volts", "52 V")
                .device("cam", "draw", "60 W", "class", "8", "zone", "shaft")
                .run("cable", "feed", "cam", cells);
    }

    /** A lone run: film at its surface and nothing else, in closed form. */
    @ParameterizedTest
    @CsvSource({"open, 10, 6.0", "tray, 7, 6.0", "conduit, 5, 5.8"})
    void aLoneRunWarmsItself(String setting, double film, double millimetres) {
        Answers answers = lone("1.25", setting, "length", "90 m", "joints", "0").solved();
        answers.clean();
        double diameter = 1.15 * millimetres / 1000;
        double amps = answers.number("cable", "amps");
        double atTwenty = amps * amps * ohms(24) / 2 * 1.25 / (Math.PI * diameter * film);
        assertEquals(rise(atTwenty, 35), answers.number("cable", "rise"), 1e-9);
        double loop = ohms(24) * 90 / 2 * (1 + ALPHA * (answers.number("cable", "wire_temp") - 20));
        assertEquals(loop, answers.number("cable", "loop"), 1e-11);
        assertEquals(60, answers.number("cable", "received"), 1e-9);
    }

    @Test
    void insulationKeepsHeatIn() {
        for (double thickness : new double[] {0.1, 0.05}) {
            Draft draft = lone("1.25", "insulated", "length", "90 m", "joints", "0");
            if (thickness != 0.1) {
                draft.cell(Table.ZONES, "shaft", "insulation", Cell.text("50 mm"));
            }
            Answers answers = draft.solved();
            double inner = 1.15 * 0.006;
            double outer = inner + 2 * thickness;
            double amps = answers.number("cable", "amps");
            double rth = Math.log(outer / inner) / (2 * Math.PI * 0.04) + 1 / (Math.PI * outer * 10);
            double atTwenty = amps * amps * ohms(24) / 2 * 1.25 * rth;
            assertEquals(rise(atTwenty, 35), answers.number("cable", "rise"), 1e-9);
        }
    }

    @Test
    void marginZeroLeavesHeatOut() {
        Answers answers = lone("0", "insulated", "length", "90 m").solved();
        assertEquals(0, answers.number("cable", "rise"));
        assertEquals(35, answers.number("cable", "wire_temp"));
    }

    @Test
    void designCountsAQuarterMoreHeatThanMeasurement() {
        Answers design = lone("1.25", "open", "length", "90 m").solved();
        Answers unsaid = lone("", "open", "length", "90 m").solved();
        Answers measured = lone("1", "open", "length", "90 m").solved();
        assertEquals(design.number("cable", "rise"), unsaid.number("cable", "rise"));
        double factor = design.number("cable", "rise") / measured.number("cable", "rise");
        assertEquals(1.25, factor, 0.01);
    }

    @Test
    void onlyCablesGiveOffHeatNotCordsAndJoints() {
        Answers whole = lone("1.25", "open", "length", "80 m", "joints", "0").solved();
        Answers longer = lone("1.25", "open", "length", "90 m", "cord_length", "10 m", "joints", "4")
                .solved();
        double squares = Math.pow(longer.number("cable", "amps") / whole.number("cable", "amps"), 2);
        double expected = whole.number("cable", "rise") * squares;
        // a touch more, since warmth feeds on itself
        assertEquals(expected, longer.number("cable", "rise"), expected * 1e-3);
    }

    @Test
    void aMeasuredLoopGivesItsHeatToTheCablesLengthOrNoneWhereThatIsUnsaid() {
        Answers answers = lone(
                        "1.25",
                        "open",
                        "basis",
                        "measured",
                        "measured_loop",
                        "4 ohm",
                        "length",
                        "90 m",
                        "cord_length",
                        "10 m")
                .solved();
        double amps = answers.number("cable", "amps");
        double atTwenty = amps * amps * 4 / 80 * 1.25 / (Math.PI * 1.15 * 0.006 * 10);
        assertEquals(rise(atTwenty, 35), answers.number("cable", "rise"), 1e-9);
        Answers unsaid = lone("1.25", "open", "basis", "measured", "measured_loop", "4 ohm")
                .solved();
        unsaid.clean();
        assertEquals(0, unsaid.number("cable", "rise"));
    }

    @ParameterizedTest
    @CsvSource({"5e, 5.2", "6, 6.0", "6A, 7.6"})
    void aCategoryHasAUsualDiameter(String category, double millimetres) {
        Answers answers =
                lone("1", "open", "length", "90 m", "category", category).solved();
        assertEquals(millimetres / 1000, answers.number("cable", "cable_diameter"), 1e-15);
    }

    /** Two runs of a bundle in zones of their own: each is reckoned in the setting of its own zone. */
    @Test
    void eachRunOfABundleIsReckonedInItsOwnZone() {
        Answers answers = new Draft()
                .settings("heat_margin", "1")
                .zone("shaft", "ambient", "35 degC", "setting", "conduit")
                .zone("hall", "ambient", "20 degC")
                .bundle("duct", "others", "2", "others_amps", "0.2 A", "others_diameter", "5 mm")
                .source("feed", "type", "4")
                .device("a", "draw", "20 W")
                .device("b", "draw", "30 W")
                .run("ra", "feed", "a", "length", "50 m", "zone", "shaft", "bundle", "duct", "joints", "0")
                .run("rb", "feed", "b", "length", "60 m", "zone", "hall", "bundle", "duct", "joints", "0")
                .solved();
        answers.clean();
        double heat = answers.number("ra", "loss") / 50 + answers.number("rb", "loss") / 60;
        double inShaft = heat + 2 * 8 * 0.04 * ohms(24) * (1 + ALPHA * (answers.number("ra", "wire_temp") - 20));
        double inHall = heat + 2 * 8 * 0.04 * ohms(24) * (1 + ALPHA * (answers.number("rb", "wire_temp") - 20));
        double within = (1 - 1 / 4.0) / (4 * Math.PI * 0.15);
        double capped = 1.15 * Math.sqrt(2 * 0.0058 * 0.0058 + 2 * 0.005 * 0.005);
        double free = 1.15 * Math.sqrt(2 * 0.006 * 0.006 + 2 * 0.005 * 0.005);
        assertEquals(inShaft * (1 / (Math.PI * capped * 5) + within), answers.number("ra", "rise"), 1e-9);
        assertEquals(inHall * (1 / (Math.PI * free * 10) + within), answers.number("rb", "rise"), 1e-9);
    }

    @Test
    void treesThatShareABundleWarmEachOther() {
        Draft draft = new Draft().settings("heat_margin", "1.25").bundle("duct");
        for (String k : new String[] {"1", "2"}) {
            draft.source("feed " + k, "type", "4")
                    .device("cam " + k, "draw", "50 W")
                    .run("run " + k, "feed " + k, "cam " + k, "length", "80 m", "bundle", "duct");
        }
        Answers both = draft.solved();
        assertEquals(both.number("run 1", "rise"), both.number("run 2", "rise"), 1e-12);
        Answers alone = draft.cell(Table.DEVICES, "cam 2", "in_use", Cell.NO).solved();
        assertTrue(alone.number("run 1", "rise") < 0.7 * both.number("run 1", "rise"));
    }

    @Test
    void aBundleOutOfUseBundlesNothing() {
        Draft draft =
                lone("1.25", "open", "length", "90 m", "bundle", "duct").bundle("duct", "others", "30", "in_use", "no");
        Answers answers = draft.solved();
        assertEquals(
                lone("1.25", "open", "length", "90 m").solved().number("cable", "rise"),
                answers.number("cable", "rise"));
    }

    @Test
    void aCableThatFeedsNothingYetStillTakesRoomInItsBundle() {
        Draft draft = lone("1.25", "open", "length", "90 m", "bundle", "duct").bundle("duct");
        double alone = draft.solved().number("cable", "rise");
        draft.edge("dead end")
                .device("far cam", "draw", "5 W")
                .run("spare", "dead end", "far cam", "length", "90 m", "bundle", "duct");
        Answers answers = draft.solved();
        assertEquals(Fault.Kind.NOT_FED, answers.fault("spare", "amps").kind());
        double two = answers.number("cable", "rise");
        // twice the cables, as much heat: more surface, but some of it from deeper within
        double surface = 1 / (Math.PI * 1.15 * 0.006 * 10);
        double factor = (surface / Math.sqrt(2) + 0.5 / (4 * Math.PI * 0.15)) / surface;
        assertEquals(alone * factor, two, alone * 2e-3);
    }

    @Test
    void aWireThatFindsNoTemperatureIsARunaway() {
        Answers answers = new Draft()
                .zone("attic", "ambient", "60 degC", "setting", "insulated")
                .bundle("duct", "others", "60", "others_amps", "0.6 A")
                .source("feed", "type", "4")
                .device("cam", "draw", "50 W", "zone", "attic")
                .device("safe", "draw", "5 W")
                .source("other", "type", "4")
                .run("hot run", "feed", "cam", "length", "80 m", "bundle", "duct")
                .run("fine", "other", "safe", "length", "80 m")
                .solved();
        Fault fault = answers.fault("cam", "volts");
        assertEquals(Fault.Kind.RUNAWAY, fault.kind());
        assertTrue(fault.text().contains("hot run"), fault.text());
        assertEquals("hot run", fault.origin().row());
        assertEquals(fault, answers.fault("feed", "sent"));
        assertTrue(answers.number("safe", "volts") > 49);
    }

    @Test
    void ownConstantsOfHeatStandInPlaceOfOurs() {
        Answers answers = lone("1", "open", "length", "90 m", "joints", "0")
                .practice("surface_open", "20 W/m2K")
                .practice("bundle_packing", "1.3")
                .practice("copper_alpha", "0.4 %/K")
                .solved();
        answers.clean();
        double amps = answers.number("cable", "amps");
        double atTwenty = amps * amps * ohms(24) / 2 / (Math.PI * 1.3 * 0.006 * 20);
        double rise = atTwenty * (1 + 0.004 * 15) / (1 - 0.004 * atTwenty);
        assertEquals(rise, answers.number("cable", "rise"), 1e-9);
    }
}
