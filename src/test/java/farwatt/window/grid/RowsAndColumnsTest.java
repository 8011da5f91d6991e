package farwatt.window.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RowsAndColumnsTest {
    private final PlainSheet sheet = Landing.sheet();
    private final Parts parts = Parts.of(sheet, new Landing.Pocket());
    private final GridModel model = parts.model();

    private List<String> seen() {
        List<String> ids = new ArrayList<>();
        for (int row = 0; row < model.rowCount(); row++) {
            ids.add(model.id(row));
        }
        return ids;
    }

    private Column column(String key) {
        return model.columns().get(model.columnSet().indexOf(key));
    }

    @Test
    void aRowIsAddedBelowTheChosenOneAndTheCursorGoesThere() {
        model.show(Table.DEVICES);
        model.pick(0, 2);
        parts.rows().insert();
        assertEquals(List.of("cam 1", "device 1", "cam 2", "cam 3"), sheet.ids(Table.DEVICES));
        assertEquals(Range.at(1, 0), model.range());
    }

    @Test
    void addedValuesGetNamesThatExpressionsCanUse() {
        model.show(Table.VALUES);
        parts.rows().insert();
        parts.rows().insert();
        assertEquals(List.of("dark", "value_1", "value_2"), sheet.ids(Table.VALUES));
        model.pick(0, 0);
        parts.rows().duplicate();
        assertEquals(List.of("dark", "dark_2", "value_1", "value_2"), sheet.ids(Table.VALUES));
    }

    @Test
    void devicesAreDuplicatedWithTheirRunsInOneStep() {
        model.show(Table.DEVICES);
        model.range(new Range(1, 0, 0, 0));
        parts.rows().duplicate();
        assertEquals(List.of("cam 1", "cam 4", "cam 2", "cam 5", "cam 3"), sheet.ids(Table.DEVICES));
        assertEquals(
                "cam 4",
                sheet.plan().rows(Table.RUNS).row("run cam 4").orElseThrow().text("to"));
        sheet.document.undo();
        assertEquals(Landing.plan(), sheet.plan());
    }

    @Test
    void removingANodeTakesItsRunsAndSaysWhatStillNamesIt() {
        sheet.document.apply(
                new Change.SetCell(Table.VALUES, "dark", "is", Optional.of(Cell.text("'cam 1'.draw > 3 W"))));
        model.show(Table.DEVICES);
        model.range(new Range(1, 0, 0, 0));
        parts.rows().remove();
        assertEquals(List.of("cam 3"), sheet.ids(Table.DEVICES));
        assertEquals(List.of("trunk", "run cam 3"), sheet.ids(Table.RUNS));
        assertTrue(sheet.said.get(0).text().contains("run cam 1"));
        assertTrue(sheet.said.get(1).text().contains("dark"));
        assertEquals(1, sheet.steps.size());
    }

    @Test
    void sortingGoesUpDownAndBackAndThePlanKeepsItsOrder() {
        Plan before = sheet.plan();
        model.show(Table.DEVICES);
        parts.columns().sort(column("draw"));
        assertEquals(List.of("cam 3", "cam 2", "cam 1"), seen());
        parts.columns().sort(column("draw"));
        assertEquals(List.of("cam 1", "cam 2", "cam 3"), seen());
        parts.columns().sort(column("draw"));
        assertTrue(model.order().by().isEmpty());
        assertEquals(before, sheet.plan());
    }

    @Test
    void whatHasNoValueStandsLastWhicheverWayRowsAreSorted() {
        sheet.document.apply(new Change.AddRow(Table.DEVICES, 0, Row.of("sign")));
        model.show(Table.DEVICES);
        parts.columns().sort(column("zone"));
        assertEquals("sign", seen().get(3));
        parts.columns().sort(column("zone"));
        assertEquals("sign", seen().get(3));
    }

    @Test
    void theCursorStaysOnItsRowWhenSorted() {
        model.show(Table.DEVICES);
        model.pick(0, 1);
        parts.columns().sort(column("draw"));
        assertEquals("cam 1", model.id(model.range().row()));
    }

    @Test
    void rowsDoNotJumpAwayWhileValuesChangeAndNewOnesStandWhereThePlanHasThem() {
        model.show(Table.DEVICES);
        parts.columns().sort(column("draw"));
        sheet.document.apply(new Change.SetCell(Table.DEVICES, "cam 3", "draw", Optional.of(Cell.text("50 W"))));
        assertEquals(List.of("cam 3", "cam 2", "cam 1"), seen());
        sheet.document.apply(new Change.AddRow(Table.DEVICES, 3, Row.of("sign")));
        assertEquals(List.of("cam 3", "sign", "cam 2", "cam 1"), seen());
        sheet.document.apply(new Change.DropRow(Table.DEVICES, 1, "cam 2"));
        assertEquals(List.of("cam 3", "sign", "cam 1"), seen());
    }

    @Test
    void theFilterLetsRowsThroughThatHoldTheTextOrFail() {
        sheet.verdicts = Map.of("cam 2", Level.FAIL);
        model.show(Table.DEVICES);
        parts.columns().filter("CAM 3", RowOrder.Only.ALL);
        assertEquals(List.of("cam 3"), seen());
        parts.columns().filter("", RowOrder.Only.FAILING);
        assertEquals(List.of("cam 2"), seen());
        parts.columns().filter("", RowOrder.Only.ALL);
        assertEquals(3, model.rowCount());
        assertEquals(1, model.shown().failing(Table.DEVICES));
    }

    @Test
    void anAddedRowIsSeenThoughTheFilterWouldNotLetItThrough() {
        model.show(Table.DEVICES);
        parts.columns().filter("cam", RowOrder.Only.ALL);
        parts.rows().insert();
        assertTrue(seen().contains("device 1"));
    }

    @Test
    void pointingAtAFilteredRowTakesTheFilterAway() {
        model.show(Table.DEVICES);
        parts.columns().filter("cam 1", RowOrder.Only.ALL);
        model.point(Table.DEVICES, "cam 3", "draw");
        assertEquals("cam 3", model.id(model.range().row()));
        assertEquals("draw", model.columns().get(model.range().column()).key());
    }

    @Test
    void heldColumnsStandFirstAndHiddenOnesAreGoneUntilAskedFor() {
        model.show(Table.DEVICES);
        int all = model.columns().size();
        assertEquals(1, model.columnSet().held());
        parts.columns().toggleHeld(column("draw"));
        assertEquals("draw", model.columns().get(1).key());
        assertEquals(2, model.columnSet().held());
        parts.columns().toggleSeen(column("zone"));
        assertEquals(-1, model.columnSet().indexOf("zone"));
        assertEquals(all - 1, model.columns().size());
        parts.columns().seeAll();
        assertEquals(all, model.columns().size());
    }

    @Test
    void eachTableKeepsItsCursorAndItsColumns() {
        model.show(Table.DEVICES);
        model.pick(2, 3);
        model.show(Table.RUNS);
        parts.columns().toggleSeen(column("from"));
        model.show(Table.DEVICES);
        assertEquals(Range.at(2, 3), model.range());
        assertTrue(model.columnSet().isSeen("from"));
    }

    @Test
    void theSheetIsToldWhichRowsAreChosen() {
        model.show(Table.DEVICES);
        model.range(new Range(2, 0, 1, 0));
        assertEquals(List.of("cam 3", "cam 2"), sheet.pointed);
    }

    @Test
    void findGoesRoundAndReplaceIsOneStep() throws Refusal {
        model.show(Table.DEVICES);
        parts.search().wanted("QUAY");
        assertEquals(3, parts.search().count());
        assertTrue(parts.search().next(1));
        assertTrue(parts.search().next(-1));
        assertEquals("cam 3", model.id(model.range().row()));
        parts.search().wanted("ua");
        assertEquals(3, parts.search().replaceAll("UA"));
        assertEquals("qUAy", sheet.plan().rows(Table.DEVICES).at(1).text("zone"));
        assertEquals(1, sheet.steps.size());
        parts.search().wanted("nowhere");
        assertFalse(parts.search().next(1));
    }

    @Test
    void replacingInIdsRenamesWhatNamesThem() throws Refusal {
        model.show(Table.DEVICES);
        parts.search().wanted("cam ");
        parts.search().replaceAll("eye ");
        assertEquals(List.of("eye 1", "eye 2", "eye 3"), sheet.ids(Table.DEVICES));
        assertEquals("eye 2", sheet.plan().rows(Table.RUNS).at(2).text("to"));
        assertEquals(1, sheet.steps.size());
    }

    @Test
    void anOwnColumnSaysWhatIsWrongWithItBeforeItIsMade() {
        model.show(Table.RUNS);
        OwnColumn form = new OwnColumn(model, Optional.empty());
        form.fill("loss share", "quantity", "%", "loss / sent");
        assertTrue(form.notice().isPresent());
        form.fill("length", "quantity", "m", "");
        assertTrue(form.notice().orElseThrow().text().contains("length"));
        form.fill("loss_share", "quantity", "percent", "loss / sent");
        assertTrue(form.notice().orElseThrow().text().contains("%"));
        form.fill("loss_share", "quantity", "%", "loss / nothing_known");
        assertTrue(form.notice().isPresent());
        form.fill("loss_share", "quantity", "%", "loss / sent");
        assertEquals(Optional.empty(), form.notice());
        assertTrue(form.apply());
        Column made = column("loss_share");
        assertEquals(Column.Tint.OWN, made.tint());
        assertEquals("%", made.unit());
        assertEquals("loss_share", model.columns().get(model.range().column()).key());
    }

    @Test
    void anOwnColumnCanBeChangedRenamedAndTakenAwayWithItsCells() {
        model.show(Table.DEVICES);
        OwnColumn fresh = new OwnColumn(model, Optional.empty());
        fresh.fill("tag", "text", "", "");
        assertTrue(fresh.apply());
        model.pick(0, model.columnSet().indexOf("tag"));
        parts.block().paste("A 17");
        OwnColumn again = new OwnColumn(model, parts.columns().own(column("tag")));
        again.fill("asset_tag", "text", "", "");
        assertTrue(again.apply());
        assertEquals("A 17", sheet.plan().rows(Table.DEVICES).at(0).text("asset_tag"));
        parts.columns().removeOwn(column("asset_tag"));
        assertEquals(-1, model.columnSet().indexOf("asset_tag"));
        assertEquals(Landing.plan().rows(Table.DEVICES), sheet.plan().rows(Table.DEVICES));
        sheet.document.undo();
        assertEquals("A 17", sheet.plan().rows(Table.DEVICES).at(0).text("asset_tag"));
    }

    @Test
    void aCellIsSpokenWithRowColumnValueAndWhatColoursSay() {
        sheet.verdicts = Map.of("trunk", Level.FAIL);
        model.show(Table.RUNS);
        String gauge = Spoken.cell(model, 0, model.columnSet().indexOf("gauge"));
        assertEquals("trunk, gauge 24 AWG, default, row fails", gauge);
        assertEquals("length in m, given", Spoken.heading(model, column("length")));
        parts.columns().sort(column("length"));
        assertEquals("length in m, given, sorted upwards", Spoken.heading(model, column("length")));
    }

    @Test
    void everyCodeHasASentenceAndEverySentenceACode() {
        List<String> keys = new ArrayList<>();
        for (GridCode code : GridCode.values()) {
            assertFalse(Messages.pattern(code).isBlank(), code.key());
            keys.add(code.key());
        }
        keys.sort(null);
        assertEquals(keys, new ArrayList<>(Messages.all("grid").keySet()));
    }
}
