package farwatt.catalogue.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.TokenWording;
import farwatt.catalogue.Wording;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import org.junit.jupiter.api.Test;

class RenameTest {
    private static final Wording WORDING = new TokenWording();

    @Test
    void aNodeIsRenamedWhereverItIsNamed() throws Refusal {
        Plan plan = renamed(Ferry.plan(), Table.SWITCHES, "gate", "east gate");
        assertEquals("east gate", plan.rows(Table.SWITCHES).at(0).id());
        assertEquals("east gate", plan.rows(Table.RUNS).at(0).text("to"));
        assertEquals("east gate", plan.rows(Table.RUNS).at(1).text("from"));
        assertEquals("from gate to cam 1", plan.rows(Table.RUNS).at(1).text("note"), "a text is a text");
        assertEquals(
                "'east gate'.reserve_share >= 20 % and trunk.share < 5 %",
                plan.rows(Table.NEEDS).at(0).text("holds"));
        assertEquals("gate stands", plan.rows(Table.NEEDS).at(0).id());
        Step.Add run = (Step.Add) step(plan, "more", 1);
        assertEquals("east gate", run.row().text("from"));
        assertEquals(new Step.Set("'cam 2'.tag", Cell.text("gate")), step(plan, "more", 2));
    }

    @Test
    void aZoneIsRenamedInCellsAndScenarios() throws Refusal {
        Plan plan = renamed(Ferry.plan(), Table.ZONES, "quay", "pier");
        for (Table table : new Table[] {Table.SOURCES, Table.SWITCHES, Table.DEVICES}) {
            assertEquals("pier", plan.rows(table).at(0).text("zone"));
        }
        assertEquals(new Step.Set("pier.ambient", Cell.text("-10 degC")), step(plan, "winter", 0));
        assertEquals(new Step.Set("'cam 1'.zone", Cell.text("pier")), step(plan, "winter", 2));
        assertEquals("pier", ((Step.Add) step(plan, "more", 0)).row().text("zone"));
    }

    @Test
    void aDeviceIsRenamedInPathsExpressionsAndDrops() throws Refusal {
        Plan plan = renamed(Ferry.plan(), Table.DEVICES, "cam 1", "mast");
        assertEquals(
                "if dark then mast.draw else 0 W", plan.rows(Table.VALUES).at(1).text("is"));
        assertEquals("mast.draw", ((Step.Set) step(plan, "winter", 3)).path());
        assertEquals(new Step.Drop("mast"), step(plan, "more", 3));
        assertEquals("run cam 1", plan.rows(Table.RUNS).at(1).id(), "another row's own name");
    }

    @Test
    void aRunIsRenamedInExpressionsOnly() throws Refusal {
        Plan plan = renamed(Ferry.plan(), Table.RUNS, "trunk", "long trunk");
        assertEquals("'long trunk'.length / 5", plan.rows(Table.RUNS).at(1).text("length"));
        assertEquals(Cell.text("'long trunk'.length * 0.1 W/m"), ((Step.Set) step(plan, "winter", 3)).to());
        assertEquals("trunk.loss", plan.rows(Table.DEVICES).at(0).text("spare"), "a cell that no column has");
    }

    @Test
    void aValueIsRenamedInExpressionsAndBarePaths() throws Refusal {
        Plan plan = renamed(Ferry.plan(), Table.VALUES, "dark", "night");
        assertEquals("night", plan.rows(Table.VALUES).at(0).id());
        assertEquals(
                "if night then 'cam 1'.draw else 0 W",
                plan.rows(Table.VALUES).at(1).text("is"));
        assertEquals(new Step.Set("night", Cell.text("yes")), step(plan, "winter", 1));
    }

    @Test
    void anOwnColumnIsRenamedInCellsPathsAndExpressions() throws Refusal {
        Plan tagged = Edit.apply(
                        Ferry.plan(),
                        new Change.SetCell(Table.DEVICES, "cam 1", "tag", java.util.Optional.of(Cell.text("A7"))))
                .plan();
        Plan plan = renamed(tagged, Table.COLUMNS, "tag", "asset");
        assertEquals("A7", plan.rows(Table.DEVICES).at(0).text("asset"));
        assertEquals("", plan.rows(Table.DEVICES).at(0).text("tag"));
        assertEquals("'cam 2'.asset", ((Step.Set) step(plan, "more", 2)).path());
    }

    @Test
    void renamingIsOneStepThatCanBeUndone() throws Refusal {
        Plan plan = Ferry.plan();
        Change.Batch change = Rename.of(plan, Table.ZONES, 0, "pier", WORDING);
        assertEquals("Rename quay to pier", change.label());
        Edit edit = Edit.apply(plan, change);
        assertEquals(plan, Edit.apply(edit.plan(), edit.inverse()).plan());
    }

    @Test
    void onlyTheCaseMayChange() throws Refusal {
        Plan plan = renamed(Ferry.plan(), Table.SWITCHES, "gate", "GATE");
        assertEquals("GATE", plan.rows(Table.RUNS).at(1).text("from"));
    }

    @Test
    void theSecondOfTwinsLeavesReferencesAlone() throws Refusal {
        Plan twins = Ferry.plan().and(Table.DEVICES, Row.of("CAM 1"));
        Plan plan = Edit.apply(twins, Rename.of(twins, Table.DEVICES, 1, "mast", WORDING))
                .plan();
        assertEquals("mast", plan.rows(Table.DEVICES).at(1).id());
        assertEquals("cam 1", plan.rows(Table.RUNS).at(1).text("to"));
    }

    @Test
    void namesThatCannotBeAreRefused() {
        refused(Table.DEVICES, "cam 1", "Trunk", "cam 1: Trunk is already the name of a row in runs; choose another");
        refused(Table.DEVICES, "cam 1", " ", "cam 1: A name is needed; cam 1 keeps the one it has");
        refused(
                Table.VALUES,
                "dark",
                "night_draw",
                "dark: night_draw is already the name of a row in values; choose another");
        refused(
                Table.VALUES,
                "dark",
                "too dark",
                "dark: too dark cannot be used in expressions; a name is a letter followed by letters, digits and"
                        + " underscores");
    }

    private static void refused(Table table, String id, String to, String sentence) {
        Plan plan = Ferry.plan();
        int place = plan.rows(table).place(id);
        Refusal refusal = assertThrows(Refusal.class, () -> Rename.of(plan, table, place, to, WORDING));
        assertEquals(sentence, refusal.getMessage());
    }

    private static Plan renamed(Plan plan, Table table, String id, String to) throws Refusal {
        int place = plan.rows(table).place(id);
        assertTrue(place >= 0);
        return Edit.apply(plan, Rename.of(plan, table, place, to, WORDING)).plan();
    }

    private static Step step(Plan plan, String scenario, int place) {
        return plan.scenario(scenario).map(Scenario::steps).orElseThrow().get(place);
    }
}
