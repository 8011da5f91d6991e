package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands behind a source: mains, room, battery, data; and sums for the plan as a whole. */
class SourceTest {

    /** A source with so many watts on it; cables of no resistance. */
    private static Draft loaded(String watts, String... cells) {
        return Draft.cold()
                .source("feed", cells)
                .cell(Table.SOURCES, "feed", "type", Cell.text("4"))
                .device("cam", "draw", watts)
                .run("r", "feed", "cam", "basis", "measured", "measured_loop", "0 ohm");
    }

    @Test
    void mainsAndHeatInTheRoom() {
        Answers answers = loaded("44 W", "efficiency_ac", "0.8", "idle", "6 W").solved();
        answers.clean();
        assertEquals(62.5, answers.number("feed", "mains"), 1e-12);
        assertEquals(18.5, answers.number("feed", "room_heat"), 1e-12);
        assertEquals(62.5, answers.ofPlan("mains"), 1e-12);
        Answers usual = loaded("44 W").solved();
        assertEquals(48 / 0.88, usual.number("feed", "mains"), 1e-12);
    }

    /** Watts from the mains made just so that the figures can be followed. */
    private static double minutes(String watts, String battery, String kind, String air) {
        Answers answers = loaded(watts, "idle", "0 W", "efficiency_ac", "1", "battery", battery, "battery_kind", kind)
                .zone("hut", "ambient", air)
                .cell(Table.SOURCES, "feed", "zone", Cell.text("hut"))
                .solved();
        answers.clean();
        return answers.number("feed", "runtime") / 60;
    }

    @Test
    void aLeadBatteryInTheColdCarriesAThirdOfABareDivision() {
        assertEquals(42.2, minutes("102 W", "216 Wh", "lead-acid", "10 degC"), 0.05);
    }

    @ParameterizedTest
    @CsvSource({
        // hours wanted, rate there, air, share there
        "0.25, 0.45, 25, 1",
        "1, 0.6, 25, 1",
        "5, 0.85, 30, 1",
        "20, 1, 25, 1",
        "40, 1, 25, 1",
        "0.1, 0.45, 25, 1",
        "1, 0.6, -9, 0.58",
        "1, 0.6, -20, 0.58",
        "1, 0.6, -1, 0.73",
        "1, 0.6, 4, 0.8",
        "1, 0.6, 7, 0.835",
        "1, 0.6, 18, 0.95",
        "1, 0.6, 21.5, 0.975"
    })
    void rateAndColdAreStraightBetweenTheirPoints(double hours, double rate, String air, double share) {
        double wattHours = 50 * hours / (rate * share * 0.8 * 0.85);
        assertEquals(hours * 60, minutes("50 W", wattHours + " Wh", "lead-acid", air + " degC"), 1e-6);
    }

    @Test
    void lithiumMindsNeitherRateNorCold() {
        double expected = 100 * 0.95 * 0.8 * 0.85 / 50 * 60;
        assertEquals(expected, minutes("50 W", "100 Wh", "lithium", "-20 degC"), 1e-9);
    }

    @Test
    void noBatteryHasNoRuntime() {
        assertEquals(
                "battery",
                loaded("5 W").solved().fault("feed", "runtime").origin().name());
    }

    @ParameterizedTest
    @CsvSource({"lead-acid", "lithium"})
    void aBatteryThatCarriesNothingHasNoRuntimeEither(String kind) {
        Fault fault = loaded("0 W", "idle", "0 W", "battery", "100 Wh", "battery_kind", kind)
                .solved()
                .fault("feed", "runtime");
        assertEquals(Fault.Kind.NOT_APPLICABLE, fault.kind());
        assertTrue(fault.text().contains("feed"), fault.text());
    }

    @Test
    void theBatteryIsAsColdAsItsZoneInTheCorner() {
        Draft draft = loaded("50 W", "battery", "100 Wh", "zone", "hut")
                .zone("hut", "ambient", "25 degC", "coldest", "-9 degC");
        double warm = draft.solved(Corner.MOST).number("feed", "runtime");
        assertTrue(draft.solved(Corner.COLD).number("feed", "runtime") < 0.6 * warm);
    }

    @Test
    void dataAddsUpOnTheWayToTheSource() {
        Answers answers = Draft.cold()
                .source("feed", "type", "4")
                .edge("gate")
                .edge("pole")
                .device("a", "draw", "1 W", "bitrate", "16 Mb/s")
                .device("b", "draw", "1 W", "bitrate", "4 Mb/s")
                .device("c", "draw", "1 W", "bitrate", "2 Mb/s")
                .run("r1", "feed", "gate", "length", "9 m")
                .run("r2", "gate", "pole", "length", "9 m")
                .run("r3", "pole", "a", "length", "9 m")
                .run("r4", "pole", "b", "length", "9 m")
                .run("r5", "gate", "c", "length", "9 m")
                .solved();
        answers.clean();
        assertEquals(26e6, answers.number("pole", "traffic"), 1e-6);
        assertEquals(28.6e6, answers.number("gate", "traffic"), 1e-6);
        assertEquals(28.6e6, answers.number("feed", "traffic"), 1e-6);
        assertEquals(2, answers.number("pole", "hop"));
        assertEquals(1, answers.number("gate", "hop"));
        assertEquals(2, answers.number("gate", "ports_used"));
        assertEquals(1, answers.number("feed", "ports_used"));
    }

    @Test
    void thePlanAddsUpLengthsAndPrices() {
        Answers answers = Draft.cold()
                .settings("heat_margin", "0", "slack", "20 %")
                .source("feed", "type", "4", "price", "100 EUR")
                .edge("gate", "price", "250.50 EUR")
                .device("a", "draw", "1 W", "price", "80 EUR")
                .device("b", "draw", "1 W")
                .device("spare", "draw", "1 W", "price", "1000 EUR", "in_use", "no")
                .run("r1", "feed", "gate", "length", "50 m", "price_per_length", "2 EUR/m")
                .run("r2", "gate", "a", "length", "10 m")
                .run("r3", "gate", "b", "length", "30 m", "price_per_length", "1 EUR/m", "in_use", "no")
                .run("r4", "gate", "b", "length", "20 m", "price_per_length", "1 EUR/m")
                .solved();
        assertEquals(80, answers.ofPlan("cable_length"));
        assertEquals(100 + 250.5 + 80 + 120 + 24, answers.ofPlan("cost"), 1e-9);
        assertEquals(
                "574.5 EUR", answers.calculation().value(Table.PLAN, 0, "cost").text());
    }

    @ParameterizedTest
    @CsvSource({
        "24, 20, no, 20, 78",
        "24, 10, no, 60, 75.0",
        "24, 10, yes, 60, 83.3",
        "24, 0, no, 20, 100",
        "26, 10, no, 60, 72.5",
        "28, 10, no, 60, 68.75"
    })
    void dataReachesAsFarAsItsCordsAndWarmthAllow(
            String gauge, String cord, String screened, String air, double reach) {
        Answers answers = loaded("5 W")
                .zone("shaft", "ambient", air + " degC")
                .row(Table.RUNS, "way", "from", "feed", "to", "far", "length", "90 m", "zone", "shaft")
                .device("far", "draw", "5 W")
                .cell(Table.RUNS, "way", "cord_length", Cell.text(cord + " m"))
                .cell(Table.RUNS, "way", "cord_gauge", Cell.text(gauge + " AWG"))
                .cell(Table.RUNS, "way", "screened", Cell.text(screened))
                .solved();
        answers.clean();
        assertEquals(reach, answers.number("way", "reach"), 0.05);
    }

    @Test
    void whatIsCountedLaterSaysSo() {
        Fault fault = loaded("5 W")
                .solved()
                .calculation()
                .value(Table.PLAN, 0, "fails")
                .fault()
                .orElseThrow();
        assertEquals(Fault.Kind.NOT_APPLICABLE, fault.kind());
    }

    @Test
    void anEmptyPlanHasSumsOfNothing() {
        Answers answers = new Draft().solved();
        answers.clean();
        assertEquals(0, answers.ofPlan("sent"));
        assertEquals(0, answers.ofPlan("lost"));
        assertEquals(0, answers.ofPlan("cost"));
        assertEquals(0, answers.ofPlan("cable_length"));
        for (String name : new String[] {"least_headroom", "least_reserve_share"}) {
            assertTrue(answers.calculation().value(Table.PLAN, 0, name).fault().isPresent(), name);
        }
        Sound.check(answers.calculation());
    }
}
