package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Table;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What was solved before leaves nothing behind that a later solve could stumble over. */
class LeftOversTest {

    private static Change draw(String device, String text) {
        return new Change.SetCell(Table.DEVICES, device, "draw", Optional.of(Cell.text(text)));
    }

    private static void assertAsAtOnce(Calculation calculation, Change... changes) {
        for (Change change : changes) {
            calculation.apply(change);
            Snapshot.of(Calculation.of(calculation.plan())).assertSame(Snapshot.of(calculation), change.toString());
        }
    }

    @Test
    void aSourceThatStandsWhereARunStoodBeforeIsInNoBundle() {
        Draft draft = new Draft()
                .bundle("duct")
                .source("s1", "volts", "55 V")
                .device("a1", "draw", "10 W")
                .device("a2", "draw", "20 W")
                .run("run a1", "s1", "a1", "length", "60 m", "bundle", "duct")
                .run("run a2", "s1", "a2", "length", "60 m", "bundle", "duct")
                .source("s2", "volts", "55 V")
                .device("b1", "draw", "30 W")
                .run("run b1", "s2", "b1", "length", "60 m", "bundle", "duct");
        Calculation calculation = draft.solved().calculation();
        assertAsAtOnce(calculation, draw("a1", "ten"));
        assertTrue(new Answers(calculation).number("run b1", "amps") > 0.5);
    }

    @Test
    void aRunIsWarmedByNoRunOfEarlierSolvesHoweverManyBundlesAreLeftOut() {
        Draft draft = new Draft().source("s", "volts", "55 V");
        for (int k = 1; k <= 4; k++) {
            draft.bundle("b" + k)
                    .device("d" + k, "draw", k < 4 ? "much" : "30 W")
                    .run("run d" + k, "s", "d" + k, "length", "80 m", "bundle", "b" + k);
        }
        Calculation calculation = draft.solved().calculation();
        assertAsAtOnce(calculation, draw("d4", "31 W"), draw("d4", "32 W"), draw("d4", "33 W"), draw("d4", "34 W"));
        assertTrue(new Answers(calculation).number("run d4", "rise") > 0);
    }

    @Test
    void aThickerCableThatLeadsNowhereChangesTheBundleItLiesIn() {
        Draft draft = new Draft()
                .bundle("duct")
                .source("s", "volts", "55 V")
                .device("fed", "draw", "30 W")
                .run("run fed", "s", "fed", "length", "80 m", "bundle", "duct")
                .edge("unfed")
                .device("dead", "draw", "30 W")
                .run("run dead", "unfed", "dead", "length", "80 m", "bundle", "duct");
        Calculation calculation = draft.solved().calculation();
        double before = new Answers(calculation).number("run fed", "rise");
        Optional<Cell> thick = Optional.of(Cell.text("12 mm"));
        assertAsAtOnce(calculation, new Change.SetCell(Table.RUNS, "run dead", "cable_diameter", thick));
        assertTrue(new Answers(calculation).number("run fed", "rise") < before);
    }

    @Test
    void aFeedThatBecomesPassiveBelowAnUnfedSwitchNoLongerGivesAFloor() {
        Draft draft = new Draft()
                .edge("unfed", "type", "3")
                .edge("below")
                .run("run below", "unfed", "below", "length", "10 m");
        Calculation calculation = draft.solved().calculation();
        assertTrue(new Answers(calculation).value("below", "volts_floor").isPresent());
        assertAsAtOnce(
                calculation, new Change.SetCell(Table.SWITCHES, "unfed", "type", Optional.of(Cell.text("passive"))));
        assertEquals(
                Fault.Kind.EMPTY,
                new Answers(calculation).fault("below", "volts_floor").kind());
    }
}
