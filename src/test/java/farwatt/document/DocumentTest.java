package farwatt.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.RandomPlans;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class DocumentTest {
    private static final Change ADD = new Change.AddRow(Table.RUNS, 0, Row.of("trunk"));

    private static Change length(String text) {
        return new Change.SetCell(Table.RUNS, "trunk", "length", Optional.of(Cell.text(text)));
    }

    @Test
    void undoAndRedoGoBackAndForth() {
        Document document = new Document(Plan.EMPTY);
        document.apply(ADD);
        document.apply(length("60 m"));
        Plan done = document.plan();
        assertEquals(Optional.of("Set length of trunk"), document.undoLabel());
        assertEquals(Optional.empty(), document.redoLabel());
        document.undo();
        assertEquals(Optional.of("Add trunk"), document.undoLabel());
        assertEquals(Optional.of("Set length of trunk"), document.redoLabel());
        document.undo();
        document.undo();
        assertEquals(Plan.EMPTY, document.plan());
        assertEquals(Optional.empty(), document.undoLabel());
        document.redo();
        document.redo();
        document.redo();
        assertEquals(done, document.plan());
    }

    @Test
    void aSavedPlanThatWasLeftForAnotherIsNeverShownAsSaved() {
        Document document = new Document(Plan.EMPTY);
        assertTrue(document.isSaved());
        document.apply(ADD);
        document.apply(length("60 m"));
        assertFalse(document.isSaved());
        document.markSaved();
        document.undo();
        assertFalse(document.isSaved());
        document.redo();
        assertTrue(document.isSaved(), "back at what was saved");
        document.undo();
        document.apply(length("70 m"));
        assertFalse(document.isSaved(), "as many changes, but other ones");
        document.undo();
        document.redo();
        document.undo();
        document.undo();
        assertFalse(document.isSaved());
        document.markSaved();
        assertTrue(document.isSaved());
    }

    @Test
    void aRecoveredPlanIsNotSavedHoweverItIsReached() {
        Document document = new Document(Plan.EMPTY);
        document.markUnsaved();
        assertFalse(document.isSaved());
        document.apply(ADD);
        document.undo();
        assertFalse(document.isSaved());
    }

    @Test
    void isSavedMeansThePlanThatWasSaved() {
        for (long seed = 1; seed <= 200; seed++) {
            RandomPlans plans = new RandomPlans(seed);
            Random random = new Random(seed);
            Document document = new Document(plans.plan());
            Plan saved = document.plan();
            Plan start = document.plan();
            List<Change> told = new ArrayList<>();
            document.watch((before, done, after) -> told.add(done));
            for (int i = 0; i < 40; i++) {
                switch (random.nextInt(5)) {
                    case 0, 1 -> document.apply(plans.change(document.plan()));
                    case 2 -> document.undo();
                    case 3 -> document.redo();
                    default -> {
                        document.markSaved();
                        saved = document.plan();
                    }
                }
                if (document.isSaved()) {
                    assertEquals(saved, document.plan(), "seed " + seed + ", step " + i);
                }
            }
            Plan replayed = start;
            for (Change change : told) {
                replayed = Edit.apply(replayed, change).plan();
            }
            assertEquals(document.plan(), replayed, "watchers can follow, seed " + seed);
        }
    }

    @Test
    void undoingEverythingGivesTheFirstPlan() {
        for (long seed = 1; seed <= 100; seed++) {
            RandomPlans plans = new RandomPlans(seed);
            Document document = new Document(plans.plan());
            Plan first = document.plan();
            for (int i = 0; i < 30; i++) {
                document.apply(plans.change(document.plan()));
            }
            Plan last = document.plan();
            for (int i = 0; i < 30; i++) {
                document.undo();
            }
            assertEquals(first, document.plan(), "seed " + seed);
            for (int i = 0; i < 30; i++) {
                document.redo();
            }
            assertEquals(last, document.plan(), "seed " + seed);
        }
    }

    @Test
    void aNewChangeEndsWhatCouldBeRedone() {
        Document document = new Document(Plan.EMPTY);
        document.apply(ADD);
        document.undo();
        document.apply(new Change.AddRow(Table.RUNS, 0, Row.of("spur")));
        assertEquals(Optional.empty(), document.redoLabel());
    }

    @Test
    void aChangeThatCannotBeMadeLeavesEverythingAsItWas() {
        Document document = new Document(Plan.EMPTY);
        document.apply(ADD);
        document.undo();
        List<Change> told = new ArrayList<>();
        document.watch((before, done, after) -> told.add(done));
        Change.Batch half = new Change.Batch("two", List.of(ADD, new Change.DropRow(Table.RUNS, 7, "x")));
        assertThrows(IllegalArgumentException.class, () -> document.apply(half));
        assertEquals(Plan.EMPTY, document.plan());
        assertEquals(Optional.of("Add trunk"), document.redoLabel());
        assertEquals(List.of(), told);
    }

    @Test
    void severalChangesOfABatchAreOneStep() {
        Document document = new Document(Plan.EMPTY);
        document.apply(new Change.Batch("Paste 1 row", List.of(ADD, length("60 m"))));
        assertEquals(Optional.of("Paste 1 row"), document.undoLabel());
        document.undo();
        assertEquals(Plan.EMPTY, document.plan());
    }

    @Test
    void everyKindOfStepHasAName() {
        Plan plan = Plan.EMPTY.and(Table.RUNS, Row.of("trunk"));
        List<Change> changes = List.of(
                new Change.SetCell(Table.PLAN, "", "slack", Optional.empty()),
                new Change.ReplaceRow(Table.RUNS, 0, Row.of("long trunk")),
                new Change.SetScenarios(List.of()),
                new Change.SetRest("studies", Optional.of("[]")),
                new Change.DropRow(Table.RUNS, 0, "long trunk"));
        Document document = new Document(plan);
        List<String> names = new ArrayList<>();
        for (Change change : changes) {
            document.apply(change);
            names.add(document.undoLabel().orElseThrow());
        }
        assertEquals(
                List.of("Set slack", "Change long trunk", "Change scenarios", "Change studies", "Drop long trunk"),
                names);
    }

    @Test
    void anotherThreadIsTurnedAway() throws InterruptedException {
        Document document = new Document(Plan.EMPTY);
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        Thread other = new Thread(() -> {
            try {
                document.plan();
            } catch (IllegalStateException e) {
                thrown.set(e);
            }
        });
        other.start();
        other.join();
        assertInstanceOf(IllegalStateException.class, thrown.get());
    }
}
