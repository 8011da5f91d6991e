package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.review.Reviewer;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Scenarios side by side: the engine's own figures, what differs marked, rows of one side alone shown as missing. */
class ScenarioTableTest {
    private static ScenarioTable.Side side(String id, Plan plan) {
        Calculation calc = Calculation.of(plan);
        return new ScenarioTable.Side(id, calc, Reviewer.review(calc));
    }

    private static List<Entry> line(Schedule table, String of, String what) {
        for (int i = 0; i < table.lines().size(); i++) {
            List<Entry> entries = table.lines().at(i);
            if (entries.get(0).equals(Entry.words(of)) && entries.get(1).equals(Entry.words(what))) {
                return entries;
            }
        }
        throw new AssertionError(of + " " + what);
    }

    @Test
    void figuresStandSideBySideAndDifferencesAreMarked() {
        Plan plan = Landing.plan();
        Rows runs = plan.rows(Table.RUNS);
        Plan thicker = plan.with(Table.RUNS, runs.with(0, runs.at(0).with("gauge", "22 AWG")));
        Plan more = plan.and(Table.SOURCES, Row.of("second feed"));
        Schedule table =
                ScenarioTable.of(List.of(side("base", plan), side("thicker trunk", thicker), side("more", more)));
        assertEquals("thicker trunk", table.columns().get(4).heading());
        List<Entry> lost = line(table, "plan", "lost");
        assertEquals(
                Figure.of(Calculation.of(thicker).value(Table.PLAN, 0, "lost")).content(),
                lost.get(4).content());
        assertEquals(Tone.POOR, lost.get(4).tone());
        assertEquals(Tone.PLAIN, lost.get(3).tone());
        assertEquals(Entry.words("yes"), lost.get(6));
        List<Entry> second = line(table, "second feed", "sent");
        assertEquals(Entry.words("–"), second.get(3));
        assertTrue(second.get(5).content() instanceof Entry.Amount, second.toString());
        assertEquals(Entry.NONE, line(table, "devices", "without power").get(6));
    }
}
