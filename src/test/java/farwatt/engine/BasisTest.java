package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Table;
import farwatt.report.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ways in which a run's resistance is known. */
class BasisTest {
    private static final double COPPER = 0.00393;
    private static final double CLAD = 0.0040;

    /** One run at the air of one zone, carrying next to nothing; with a factor on it to see the loop alone. */
    private static Draft at(String celsius, String... cells) {
        return Draft.cold()
                .zone("air", "ambient", celsius + " degC")
                .source("feed", "type", "4", "zone", "air")
                .device("cam", "draw", "1 W", "class", "3", "zone", "air")
                .run("cable", "feed", "cam", cells);
    }

    private static double loop(String celsius, String... cells) {
        Answers answers = at(celsius, cells).solved();
        answers.clean();
        assertEquals(Double.parseDouble(celsius), answers.number("cable", "wire_temp"), 1e-12);
        return answers.number("cable", "loop");
    }

    @ParameterizedTest
    @CsvSource({"22, 5.402, 5.561", "23, 6.812, 7.012", "24, 8.590, 8.842", "26, 13.658, 14.060", "28, 21.717, 22.356"})
    void gaugeSaysOhmsOfAHundredMetres(String gauge, double solid, double stranded) {
        String awg = gauge + " AWG";
        assertEquals(solid, loop("20", "length", "100 m", "gauge", awg, "joints", "0", "pairs", "2"), 0.0005);
        String[] cords = {"length", "50 m", "cord_length", "50 m", "cord_gauge", awg, "joints", "0", "metal", "copper"};
        assertEquals(stranded, 2 * loop("20", cords), 0.0005);
        // cords are copper whatever the cable is
        double copper = loop("20", cords);
        cords[cords.length - 1] = "clad";
        assertEquals(copper, loop("20", cords));
    }

    @Test
    void cableCordAndJointsAddUpAndFourPairsHalveThem() {
        String[] two = {"length", "100 m", "cord_length", "10 m", "joints", "4", "pairs", "2"};
        String[] four = {"length", "100 m", "cord_length", "10 m", "joints", "4", "pairs", "4"};
        assertEquals(8.735, loop("20", two), 0.0005);
        assertEquals(4.368, loop("20", four), 0.0005);
        assertEquals(loop("20", two) / 2, loop("20", four), 1e-15);
        assertEquals(9.581, loop("45", two), 0.0005);
        // joints do not warm
        double cold = loop("20", two) - 4 * 0.03;
        assertEquals(cold * (1 + COPPER * 25) + 4 * 0.03, loop("45", two), 1e-12);
    }

    @Test
    void jointsCountTwoWhereNothingIsTyped() {
        assertEquals(loop("20", "length", "10 m", "joints", "0") + 2 * 0.03, loop("20", "length", "10 m"), 1e-15);
    }

    @Test
    void cladIsWorseAndWarmsByItsOwnFigure() {
        String[] clad = {"length", "80 m", "metal", "clad", "joints", "0"};
        double copper = loop("20", "length", "80 m", "joints", "0");
        assertEquals(1.55 * copper, loop("20", clad), 1e-12);
        assertEquals(1.55 * copper * (1 + CLAD * 40), loop("60", clad), 1e-12);
    }

    @Test
    void theCategorysCeiling() {
        assertEquals(9.38, loop("20", "basis", "limit", "length", "100 m", "joints", "0"), 1e-12);
        String[] cords = {"basis", "limit", "length", "100 m", "cord_length", "10 m", "gauge", "28 AWG", "joints", "3"};
        assertEquals(0.9 * 9.38 + 1.4 + 0.09, loop("20", cords), 1e-12);
        assertEquals((0.9 * 9.38 + 1.4) * (1 + COPPER * 20) + 0.09, loop("40", cords), 1e-12);
        String[] clad = {"basis", "limit", "length", "100 m", "metal", "clad", "joints", "0"};
        assertEquals(9.38 * (1 + CLAD * 20), loop("40", clad), 1e-12);
    }

    @Test
    void aDataSheetsOhmsGetNoLayFactorAndCordsGoByTheirGauge() {
        String[] cells = {
            "basis",
            "datasheet",
            "conductor_ohms",
            "66.6 ohm/km",
            "length",
            "50 m",
            "cord_length",
            "10 m",
            "joints",
            "0"
        };
        double cords = loop("20", "length", "10 m", "cord_length", "10 m", "joints", "0");
        assertEquals(40 * 0.0666 + cords, loop("20", cells), 1e-12);
        assertEquals((40 * 0.0666 + cords) * (1 + COPPER * 30), loop("50", cells), 1e-12);
        Fault fault = at("20", "basis", "datasheet", "length", "50 m").solved().fault("cable", "loop");
        assertEquals(new Place("runs", "cable", "conductor_ohms"), fault.origin());
        assertEquals(Fault.Kind.EMPTY, fault.kind());
    }

    @Test
    void aMeasuredLoopIsWholeAndWarmsWhole() {
        String[] cells = {"basis", "measured", "measured_loop", "7 ohm", "joints", "4", "pairs", "4"};
        assertEquals(7, loop("20", cells), 1e-12);
        assertEquals(7 * (1 + COPPER * 25), loop("45", cells), 1e-12);
        String[] warm = {"basis", "measured", "measured_loop", "7 ohm", "measured_at", "35 degC", "metal", "clad"};
        assertEquals(7, loop("35", warm), 1e-12);
        assertEquals(7 / (1 + CLAD * 15) * (1 + CLAD * -40), loop("-20", warm), 1e-12);
        Fault fault = at("20", "basis", "measured").solved().fault("cam", "volts");
        assertEquals(new Place("runs", "cable", "measured_loop"), fault.origin());
    }

    @Test
    void aTestersReadingOverOnePairIsMoreThanTheCurrentSees() {
        assertEquals(8.5, loop("20", "basis", "pair", "pair_loop", "17 ohm", "pairs", "2"), 1e-12);
        assertEquals(4.25, loop("20", "basis", "pair", "pair_loop", "17 ohm", "pairs", "4"), 1e-12);
        assertEquals(
                8.5 / (1 + COPPER * 10) * (1 + COPPER * 30),
                loop("50", "basis", "pair", "pair_loop", "17 ohm", "measured_at", "30 degC", "joints", "4"),
                1e-12);
    }

    @Test
    void replacedPracticeStandsInPlaceOfOurs() {
        Answers answers = at("20", "length", "100 m", "metal", "clad", "joints", "2")
                .practice("lay_solid", "1.1")
                .practice("clad_ratio", "1.7")
                .practice("joint_ohms", "0.05 ohm")
                .solved();
        answers.clean();
        double straight = loop("20", "length", "100 m", "joints", "0") / 1.02;
        assertEquals(straight * 1.1 * 1.7 + 0.1, answers.number("cable", "loop"), 1e-12);
    }

    @Test
    void cordsLongerThanTheRunAreAMistakeOfThatRunAlone() {
        Answers answers = at("20", "length", "10 m", "cord_length", "11 m")
                .device("other", "draw", "1 W")
                .run("fine", "feed", "other", "length", "10 m", "cord_length", "10 m")
                .solved();
        Fault fault = answers.fault("cable", "loop");
        assertEquals(new Place("runs", "cable", "cord_length"), fault.origin());
        assertTrue(fault.text().contains("cable"), fault.text());
        assertEquals(fault.origin(), answers.fault("cam", "volts").origin());
        assertTrue(answers.number("other", "volts") > 49);
    }

    @Test
    void aRunWithoutLengthLacksIt() {
        Fault fault = at("20").solved().fault("cable", "amps");
        assertEquals(Fault.Kind.EMPTY, fault.kind());
        assertEquals(new Place("runs", "cable", "length"), fault.origin());
    }

    /** 7.0 ohm a hundred metres of one conductor: neither the pair's 14 nor half a conductor's 3.5. */
    @Test
    void aConductorsOhmsAreWhatTwoPairsMakeOfThem() {
        for (String pairs : new String[] {"2", "4"}) {
            Answers answers = Draft.cold()
                    .source("till feed", "type", "3", "volts", "50 V")
                    .device("shop till", "draw", pairs.equals("2") ? "16.6425 W" : "17.07125 W", "class", "4")
                    .run(
                            "till cable",
                            "till feed",
                            "shop till",
                            "basis",
                            "datasheet",
                            "conductor_ohms",
                            "70 ohm/km",
                            "length",
                            "100 m",
                            "joints",
                            "0",
                            "pairs",
                            pairs)
                    .solved();
            answers.clean();
            double halves = pairs.equals("2") ? 1 : 0.5;
            assertEquals(7.0 * halves, answers.number("till cable", "loop"), 1e-12);
            assertEquals(0.35, answers.number("till cable", "amps"), 1e-12);
            assertEquals(2.45 * halves, answers.number("till cable", "drop"), 1e-11);
            assertEquals(0.8575 * halves, answers.number("till cable", "loss"), 1e-11);
            double worst = pairs.equals("2") ? 0.5 : 0.2675;
            assertEquals(0.35 * worst, answers.number("till cable", "amps_per_wire"), 1e-12);
        }
    }

    @Test
    void anOwnUnbalanceChangesTheWorstConductor() {
        Answers answers = at("20", "length", "10 m", "pairs", "4")
                .practice("pair_unbalance", "10 %")
                .solved();
        double amps = answers.number("cable", "amps");
        assertEquals(amps * 0.275, answers.number("cable", "amps_per_wire"), 1e-15);
    }

    @Test
    void everyBasisMayStandInOneTableWithExpressions() {
        Answers answers = at("20", "length", "reel - 20 m", "basis", "if survey then \"limit\" else \"wire\"")
                .value("reel", "120 m")
                .value("survey", "yes")
                .solved();
        answers.clean();
        assertEquals("limit", answers.words("cable", "basis"));
        assertEquals(9.38 + 0.06, answers.number("cable", "loop"), 1e-12);
        assertEquals(100, answers.calculation().value(Table.RUNS, 0, "length").inside());
    }
}
