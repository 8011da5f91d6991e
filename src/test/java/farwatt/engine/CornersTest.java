package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which draws at which temperatures. */
class CornersTest {

    private static Draft quay() {
        return Draft.cold()
                .zone("quay", "ambient", "24 degC", "hottest", "38 degC", "coldest", "-15 degC", "sun", "10 K")
                .source("feed", "type", "4")
                .device("cam", "draw_typical", "5 W", "draw", "9 W", "draw_start", "20 W", "zone", "quay")
                .run("cable", "feed", "cam", "length", "50 m", "zone", "quay");
    }

    @ParameterizedTest
    @CsvSource({"typical, 5, 34", "most, 9, 34", "hot, 9, 48", "cold, 20, -15", "hotstart, 20, 48"})
    void aCornerTakesItsDrawAndItsAir(String corner, double watts, double celsius) {
        Answers answers = quay().solved(Corner.of(corner).orElseThrow());
        answers.clean();
        assertEquals(watts, answers.number("cam", "watts"));
        assertEquals(watts, answers.number("cable", "received"), 1e-12);
        assertEquals(celsius, answers.number("cable", "wire_temp"), 1e-12);
        assertEquals(9, answers.number("cam", "draw"));
    }

    @ParameterizedTest
    @CsvSource({"typical, 9", "most, 9", "hot, 9", "cold, 9", "hotstart, 9"})
    void oneDrawServesAllCorners(String corner, double watts) {
        Answers answers = Draft.cold()
                .source("feed", "type", "4")
                .device("cam", "draw", "9 W")
                .run("cable", "feed", "cam", "length", "50 m")
                .solved(Corner.of(corner).orElseThrow());
        assertEquals(watts, answers.number("cam", "watts"));
        assertEquals(20, answers.number("cable", "wire_temp"));
    }

    @Test
    void aZoneWithoutExtremesHasNone() {
        Draft draft = Draft.cold()
                .zone("hall", "ambient", "27 degC", "sun", "3 K")
                .source("feed", "type", "4")
                .device("cam", "draw", "9 W")
                .run("cable", "feed", "cam", "length", "50 m", "zone", "hall");
        assertEquals(30, draft.solved(Corner.HOT).number("cable", "wire_temp"));
        assertEquals(27, draft.solved(Corner.COLD).number("cable", "wire_temp"));
        assertEquals(20, Draft.cold().zone("bare").solved().number("bare", "hottest"));
    }

    @Test
    void thePlanSaysWhichCornerIsLookedAt() {
        Answers answers = quay().settings("corner", "cold").solved();
        assertEquals(Corner.COLD, answers.calculation().corner());
        assertEquals(20, answers.number("cam", "watts"));
    }

    @Test
    void cornersDoNotSpoilEachOther() {
        Calculation calculation = Calculation.of(quay().plan());
        for (Corner corner : new Corner[] {Corner.COLD, Corner.MOST, Corner.HOT, Corner.COLD, Corner.TYPICAL}) {
            calculation.look(corner);
            Answers seen = new Answers(calculation);
            Answers fresh = quay().solved(corner);
            for (String name : new String[] {"amps", "loop", "sent", "wire_temp"}) {
                assertEquals(fresh.number("cable", name), seen.number("cable", name), corner + " " + name);
            }
        }
    }

    /** Ends in zones of their own; the run itself names none. */
    private static double reckoned(Corner corner, String near, String far) {
        Draft draft = Draft.cold()
                .zone("office", "ambient", "22 degC", "coldest", "18 degC", "setting", "conduit")
                .zone("quay", "ambient", "20 degC", "hottest", "35 degC", "coldest", "-15 degC", "sun", "1 K")
                .zone("attic", "ambient", "22 degC", "setting", "insulated")
                .source("feed", "type", "4", "zone", near)
                .device("cam", "draw", "9 W", "zone", far)
                .run("cable", "feed", "cam", "length", "50 m");
        return draft.solved(corner).number("cable", "wire_temp");
    }

    @Test
    void aRunWithoutAZoneTakesTheHotterOfItsEnds() {
        assertEquals(22, reckoned(Corner.MOST, "office", "quay"));
        assertEquals(22, reckoned(Corner.MOST, "quay", "office"));
        assertEquals(36, reckoned(Corner.HOT, "office", "quay"));
        assertEquals(18, reckoned(Corner.COLD, "office", "quay"));
        assertEquals(22, reckoned(Corner.COLD, "office", "attic"));
    }

    @Test
    void anEndWithoutAZoneLeavesTheOthersAndNoneIsTwentyDegrees() {
        assertEquals(36, reckoned(Corner.HOT, "", "quay"));
        assertEquals(36, reckoned(Corner.HOT, "quay", ""));
        assertEquals(20, reckoned(Corner.HOT, "", ""));
    }

    @Test
    void onATieTheNearEndsSettingCounts() {
        Draft draft = new Draft()
                .zone("office", "ambient", "22 degC", "setting", "conduit")
                .zone("attic", "ambient", "22 degC", "setting", "insulated")
                .source("feed", "type", "4", "zone", "office")
                .device("cam", "draw", "60 W", "zone", "attic")
                .run("cable", "feed", "cam", "length", "50 m");
        double tie = draft.solved().number("cable", "rise");
        assertEquals(
                draft.cell(Table.RUNS, "cable", "zone", Cell.text("office"))
                        .solved()
                        .number("cable", "rise"),
                tie);
        Draft turned = draft.cell(Table.RUNS, "cable", "zone", Cell.text(""))
                .cell(Table.SOURCES, "feed", "zone", Cell.text("attic"))
                .cell(Table.DEVICES, "cam", "zone", Cell.text("office"));
        assertEquals(
                draft.cell(Table.RUNS, "cable", "zone", Cell.text("attic"))
                        .solved()
                        .number("cable", "rise"),
                turned.solved().number("cable", "rise"));
    }

    @Test
    void theZoneOfARunGoesBeforeItsEnds() {
        Draft draft =
                quay().cell(Table.RUNS, "cable", "zone", Cell.text("cellar")).zone("cellar", "ambient", "12 degC");
        assertEquals(12, draft.solved(Corner.HOT).number("cable", "wire_temp"));
    }

    @Test
    void aZoneOutOfUseCountsAsNone() {
        Draft draft = quay().cell(Table.ZONES, "quay", "in_use", Cell.NO);
        assertEquals(20, draft.solved(Corner.HOT).number("cable", "wire_temp"));
        assertEquals(
                Fault.Kind.NOT_APPLICABLE,
                draft.column(Table.DEVICES, "air", "zone.ambient", "degC")
                        .solved()
                        .fault("cam", "air")
                        .kind());
    }

    @Test
    void anUnreadableAirSpoilsWhatLiesInItAndNothingElse() {
        Draft draft = quay().cell(Table.ZONES, "quay", "hottest", Cell.text("very hot"))
                .device("inside", "draw", "9 W")
                .run("short", "feed", "inside", "length", "5 m");
        Answers hot = draft.solved(Corner.HOT);
        assertEquals("hottest", hot.fault("cable", "amps").origin().name());
        assertEquals(9, hot.number("inside", "watts"));
        assertEquals(9, draft.solved(Corner.MOST).number("cam", "watts"));
        // also where the zone is only that of one end
        draft.cell(Table.RUNS, "cable", "zone", Cell.text(""))
                .zone("office", "ambient", "22 degC")
                .cell(Table.SOURCES, "feed", "zone", Cell.text("office"));
        assertEquals(
                "hottest",
                draft.solved(Corner.HOT).fault("cable", "amps").origin().name());
    }
}
