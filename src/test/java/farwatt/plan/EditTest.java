package farwatt.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EditTest {
    private static final Plan PLAN = Plan.EMPTY
            .and(
                    Table.RUNS,
                    Row.of("trunk").with("from", "feed").with("length", "60 m").with("note", "wet"))
            .and(Table.RUNS, Row.of("spur").with("length", "5 m"));

    @Test
    void everyInverseGivesBackThePlanBeforeOrderIncluded() {
        for (long seed = 1; seed <= 300; seed++) {
            RandomPlans random = new RandomPlans(seed);
            Plan plan = random.plan();
            Deque<Change> inverses = new ArrayDeque<>();
            List<Plan> before = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                before.add(plan);
                Edit edit = Edit.apply(plan, random.change(plan));
                inverses.push(edit.inverse());
                plan = edit.plan();
            }
            for (int i = before.size() - 1; i >= 0; i--) {
                plan = Edit.apply(plan, inverses.pop()).plan();
                assertEquals(before.get(i), plan, "seed " + seed + ", step " + i);
                assertEquals(order(before.get(i)), order(plan), "seed " + seed + ", step " + i);
            }
        }
    }

    @Test
    void aBatchIsTheSameAsItsChangesOneByOne() {
        for (long seed = 1; seed <= 300; seed++) {
            RandomPlans random = new RandomPlans(seed);
            Plan start = random.plan();
            Plan now = start;
            List<Change> changes = new ArrayList<>();
            for (int i = 0; i < 15; i++) {
                Change change = random.change(now);
                changes.add(change);
                now = Edit.apply(now, change).plan();
            }
            Edit batch = Edit.apply(start, new Change.Batch("all", changes));
            assertEquals(now, batch.plan(), "seed " + seed);
            assertEquals(order(now), order(batch.plan()), "seed " + seed);
            assertEquals(start, Edit.apply(batch.plan(), batch.inverse()).plan(), "seed " + seed);
        }
    }

    @Test
    void aRowThatIsReplacedByOneOfAnotherNameIsFoundUnderItInTheSameBatch() {
        Plan plan = Edit.apply(
                        PLAN,
                        new Change.Batch(
                                "rename and fill",
                                List.of(
                                        new Change.SetCell(Table.RUNS, "trunk", "note", Optional.empty()),
                                        new Change.ReplaceRow(Table.RUNS, 0, Row.of("long trunk")),
                                        new Change.SetCell(
                                                Table.RUNS, "long trunk", "note", Optional.of(Cell.text("dry"))))))
                .plan();
        assertEquals("dry", plan.rows(Table.RUNS).at(0).text("note"));
    }

    private static List<String> order(Plan plan) {
        return new ArrayList<>(plan.rest().keySet());
    }

    @Test
    void emptyingACellAndUndoingKeepsThePlaceOfTheCell() {
        Edit edit = Edit.apply(PLAN, new Change.SetCell(Table.RUNS, "TRUNK", "length", Optional.empty()));
        assertEquals(List.of("from", "note"), edit.plan().rows(Table.RUNS).at(0).names());
        Plan back = Edit.apply(edit.plan(), edit.inverse()).plan();
        assertEquals(
                List.of("from", "length", "note"), back.rows(Table.RUNS).at(0).names());
    }

    @Test
    void takingAKeptPartAndUndoingKeepsItsPlace() {
        Plan plan = Edit.apply(
                        Edit.apply(PLAN, new Change.SetRest("studies", Optional.of("[]")))
                                .plan(),
                        new Change.SetRest("mappings", Optional.of("[1]")))
                .plan();
        Edit edit = Edit.apply(plan, new Change.SetRest("studies", Optional.empty()));
        assertEquals(List.of("mappings"), order(edit.plan()));
        assertEquals(
                List.of("studies", "mappings"),
                order(Edit.apply(edit.plan(), edit.inverse()).plan()));
    }

    @Test
    void aPlanIsLeftAloneByWhatIsDoneToIt() {
        Plan copy = PLAN;
        Edit.apply(PLAN, new Change.DropRow(Table.RUNS, 0, "trunk"));
        assertEquals(2, copy.rows(Table.RUNS).size());
    }

    @Test
    void aRowThatIsNotThereIsABugOfTheCaller() {
        List<Change> wrong = List.of(
                new Change.SetCell(Table.RUNS, "nowhere", "length", Optional.empty()),
                new Change.DropRow(Table.RUNS, 0, "spur"),
                new Change.DropRow(Table.RUNS, 2, "spur"),
                new Change.DropRow(Table.RUNS, -1, "spur"),
                new Change.ReplaceRow(Table.RUNS, 2, Row.of("x")),
                new Change.AddRow(Table.RUNS, 3, Row.of("x")));
        for (Change change : wrong) {
            assertThrows(IllegalArgumentException.class, () -> Edit.apply(PLAN, change), change.toString());
        }
    }
}
