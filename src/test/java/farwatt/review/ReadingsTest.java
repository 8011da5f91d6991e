package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.plan.Table;
import org.junit.jupiter.api.Test;

/** What readings at hand-over say, band by band. */
class ReadingsTest {
    private static final String SITE = "source feed | type = 4 | volts = 53 V\ndevice dome | class = 4\n"
            + "run line | from = feed | to = dome | length = 80 m | joints = 4 | pairs = %s | seen_volts_near = 53 V"
            + " | seen_volts_far = %s V | %s | seen_temp = 40 degC";

    private static Calculation seen(String pairs, double far, String current) {
        return Sketch.calc(String.format(java.util.Locale.ROOT, SITE, pairs, far, current));
    }

    private static double at(Calculation calc, String name) {
        return calc.figures(Table.RUNS, name).at(0);
    }

    private static String says(Calculation calc) {
        return calc.value(Table.RUNS, 0, "seen_verdict").words();
    }

    @Test
    void aGoodRunReadsAsExpected() {
        Calculation calc = seen("2", 48, "seen_amps = 0.6 A");
        assertEquals(8.333, at(calc, "seen_loop"), 5e-4);
        assertEquals(7.532, at(calc, "seen_loop") / at(calc, "seen_ratio"), 5e-4);
        assertEquals(1.106, at(calc, "seen_ratio"), 5e-4);
        assertEquals(Math.sqrt(2 * 0.05 * 0.05 + 0.02 * 0.02 + 0.08 * 0.08), at(calc, "seen_spread"), 1e-12);
        assertEquals("As expected.", says(calc));
    }

    @Test
    void wattsAtThePortGiveTheCurrent() {
        Calculation calc = seen("2", 48, "seen_watts = 31.8 W");
        assertEquals(8.333, at(calc, "seen_loop"), 5e-4);
    }

    @Test
    void cladCableOfTheSameRecordStandsOut() {
        // 80 m of clad 24 AWG at 40 °C: 8.59e-2 · 1.55 · (1 + 0.0040 · 20) a metre, and four joints
        Calculation clad = Sketch.calc("plan | heat_margin = 0\nzone roof | ambient = 40 degC\n"
                + "source feed | type = 4 | volts = 53 V\ndevice dome | class = 4\n"
                + "run line | from = feed | to = dome | length = 80 m | joints = 4 | metal = clad | zone = roof");
        double loop = at(clad, "loop");
        Calculation calc = seen("2", 53 - 0.6 * loop, "seen_amps = 0.6 A");
        assertEquals(1.543, at(calc, "seen_ratio"), 5e-4);
        assertEquals(
                "Much more than expected: copper-clad aluminium or two gauges thinner; resistance alone cannot tell which.",
                says(calc));
    }

    @Test
    void everyBandHasItsWords() {
        Object[][] bands = {
            {"2", 0.6, "Far less"},
            {"2", 0.7, "Less than"},
            {"2", 1.0, "As expected"},
            {"2", 1.4, "More than"},
            {"2", 1.6, "Much more"},
            {"2", 2.0, "Far more"},
            {"4", 2.0, "Twice"},
            {"4", 1.77, "Far more"},
            {"4", 2.3, "Far more"}
        };
        for (Object[] band : bands) {
            double amps = 1.2;
            double expected = 7.532 / (band[0].equals("4") ? 2 : 1);
            double far = 53 - amps * expected * (double) band[1];
            Calculation calc = seen((String) band[0], far, "seen_amps = " + amps + " A");
            assertEquals(band[2], says(calc).substring(0, ((String) band[2]).length()), band[0] + " " + band[1]);
        }
    }

    @Test
    void justOffIsReadAgainWhereReadingsAreSharp() {
        Calculation calc = Sketch.calc(String.format(java.util.Locale.ROOT, SITE, "2", 44.0, "seen_amps = 1 A")
                + "\npractice seen_model_error | is = 2 % | why = one drum of known cable");
        assertEquals("A little off: read again.", says(calc));
    }

    @Test
    void tooSmallADropOrTooMuchDoubtIsNoJudgement() {
        assertEquals(
                "No judgement: 1.9 V stay in the run by the readings and 2 V are needed. Read again under more load.",
                says(seen("2", 51.1, "seen_amps = 0.25 A")));
        Calculation unsure = Sketch.calc(String.format(java.util.Locale.ROOT, SITE, "2", 50.9, "seen_amps = 0.25 A")
                + "\npractice seen_volts_error | is = 0.5 V | why = an old meter");
        assertEquals(
                "No judgement: the readings leave 34.67 % of uncertainty and 25 % is the most. Read again under more load.",
                says(unsure));
    }

    @Test
    void withoutATemperatureTheCornersWireCounts() {
        String plan = "plan | heat_margin = 0\nzone roof | ambient = 20 degC | hottest = 40 degC\n"
                + SITE.replace(" | seen_temp = 40 degC", " | zone = roof").replace("feed | type", "feed | type");
        Calculation calc = Sketch.calc(String.format(java.util.Locale.ROOT, plan, "2", 48.0, "seen_amps = 0.6 A"));
        calc.look(Corner.HOT);
        assertEquals(1.106, at(calc, "seen_ratio"), 5e-4);
        calc.look(Corner.MOST);
        assertEquals(1.192, at(calc, "seen_ratio"), 5e-4);
    }

    @Test
    void noCurrentAndNoReadingAreSaidSo() {
        Calculation none = seen("2", 48, "seen_amps = 0 A");
        assertEquals(
                "No current was read over line, so there is no resistance to work out. Read again under load.",
                none.fault(at(none, "seen_verdict")).text());
        Calculation empty = seen("2", 48, "note = nothing read");
        assertEquals(
                farwatt.engine.Fault.Kind.EMPTY,
                empty.fault(at(empty, "seen_loop")).kind());
    }
}
