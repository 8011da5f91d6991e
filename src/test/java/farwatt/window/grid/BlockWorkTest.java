package farwatt.window.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BlockWorkTest {
    private final Landing.Pocket pocket = new Landing.Pocket();
    private PlainSheet sheet = Landing.sheet();
    private Parts parts = Parts.of(sheet, pocket);

    private void on(PlainSheet other) {
        sheet = other;
        parts = Parts.of(sheet, pocket);
    }

    private void choose(Table table, int top, String from, int bottom, String to) {
        GridModel model = parts.model();
        model.show(table);
        model.range(new Range(
                bottom, model.columnSet().indexOf(to), top, model.columnSet().indexOf(from)));
    }

    private String cell(Table table, String id, String name) {
        return sheet.plan().rows(table).row(id).orElseThrow().text(name);
    }

    @Test
    void aBlockOfThreeByThreeGoesInWholeAndOneUndoTakesItBack() {
        Plan before = sheet.plan();
        choose(Table.DEVICES, 0, "draw", 0, "draw");
        parts.block().paste("5\t6 W\t7 W\n1.5\t2\t3\n4\t5\t6\n");
        assertEquals("5 W", cell(Table.DEVICES, "cam 1", "draw"));
        assertEquals("1.5 W", cell(Table.DEVICES, "cam 2", "draw"));
        assertEquals("6 W", cell(Table.DEVICES, "cam 3", "draw_start"));
        assertEquals(List.of("Paste 3 × 3 cells"), sheet.steps);
        sheet.document.undo();
        assertEquals(before, sheet.plan());
    }

    @Test
    void whatIsPastedBelowTheLastRowAddsRows() {
        choose(Table.DEVICES, 2, "id", 2, "id");
        int draw = parts.model().columnSet().indexOf("draw");
        parts.model().pick(2, draw);
        parts.block().paste("4\n5\n6");
        assertEquals(5, sheet.plan().rows(Table.DEVICES).size());
        assertEquals("4 W", cell(Table.DEVICES, "cam 3", "draw"));
        assertEquals("6 W", sheet.plan().rows(Table.DEVICES).at(4).text("draw"));
        sheet.document.undo();
        assertEquals(3, sheet.plan().rows(Table.DEVICES).size());
    }

    @Test
    void addedRowsTakeTheirIdsFromTheBlockAndTakenOnesGetTheNextNumber() {
        choose(Table.ZONES, 0, "id", 0, "id");
        parts.model().pick(0, 0);
        parts.block().paste("quay\nshed\ncam 1");
        assertEquals(List.of("quay", "shed", "cam 4"), sheet.ids(Table.ZONES));
    }

    @Test
    void pastedIdsRenameRowsAndWhateverNamesThem() {
        choose(Table.ZONES, 0, "id", 0, "id");
        parts.block().paste("pier");
        assertEquals("pier", cell(Table.DEVICES, "cam 2", "zone"));
        assertEquals(1, sheet.steps.size());
    }

    @Test
    void anIdThatIsTakenStopsTheWholeBlock() {
        Plan before = sheet.plan();
        choose(Table.DEVICES, 0, "id", 0, "id");
        parts.block().paste("gate\nother");
        assertEquals(before, sheet.plan());
        assertEquals(1, sheet.said.size());
    }

    @Test
    void oneValueGoesIntoAllChosenCells() {
        choose(Table.DEVICES, 0, "draw", 2, "draw");
        parts.block().paste("9");
        assertEquals("9 W", cell(Table.DEVICES, "cam 1", "draw"));
        assertEquals("9 W", cell(Table.DEVICES, "cam 3", "draw"));
        assertEquals(1, sheet.steps.size());
    }

    @Test
    void copyAndPasteBringsTheSameCells() {
        choose(Table.DEVICES, 0, "zone", 1, "draw");
        String text = parts.block().copy(BlockWork.As.TYPED);
        choose(Table.DEVICES, 2, "zone", 2, "zone");
        parts.block().paste(text);
        assertEquals("6 W", cell(Table.DEVICES, "cam 3", "draw"));
        assertEquals(Optional.empty(), sheet.plan().rows(Table.DEVICES).at(2).cell("class"));
        assertEquals("5 W", sheet.plan().rows(Table.DEVICES).at(3).text("draw"));
    }

    @Test
    void defaultsAreCopiedAsSeenOnlyWhenAskedFor() {
        choose(Table.RUNS, 0, "gauge", 0, "gauge");
        assertEquals("", parts.block().copy(BlockWork.As.TYPED));
        assertEquals("24 AWG", parts.block().copy(BlockWork.As.SHOWN));
    }

    @Test
    void workedOutCellsAreLeftAndCounted() {
        choose(Table.RUNS, 0, "loop", 0, "loop");
        parts.block().paste("5 ohm");
        assertTrue(sheet.steps.isEmpty());
        assertTrue(sheet.said.get(0).text().startsWith("1 of the cells"));
    }

    @Test
    void aBlockWiderThanTheTableSaysSoAndChangesNothing() {
        GridModel model = parts.model();
        model.pick(0, model.columns().size() - 1);
        parts.block().paste("a\tb");
        assertTrue(sheet.steps.isEmpty());
        assertEquals(1, sheet.said.size());
    }

    @Test
    void aDecimalPointNeverBecomesAThousandsMarkWhereTheCommaIsTheSign() {
        on(new PlainSheet(Landing.plan(), Decimal.COMMA));
        choose(Table.DEVICES, 0, "draw", 0, "draw");
        parts.block().paste("1.30\n1,30\n1,5 W");
        assertEquals("1.30 W", cell(Table.DEVICES, "cam 1", "draw"));
        assertEquals("1.30 W", cell(Table.DEVICES, "cam 2", "draw"));
        assertEquals("1.5 W", cell(Table.DEVICES, "cam 3", "draw"));
        choose(Table.DEVICES, 1, "draw", 1, "draw");
        assertEquals("1,30 W", parts.block().copy(BlockWork.As.TYPED));
    }

    @Test
    void textsThatCannotBeReadAreKeptAsTyped() {
        choose(Table.DEVICES, 0, "draw", 0, "draw");
        parts.block().paste("about 5");
        assertEquals("about 5", cell(Table.DEVICES, "cam 1", "draw"));
    }

    @Test
    void theFirstRowIsRepeatedDownTheRangeAndTheRowAboveIntoOneRow() {
        choose(Table.DEVICES, 0, "draw", 2, "draw");
        parts.block().repeat();
        assertEquals("6 W", cell(Table.DEVICES, "cam 3", "draw"));
        choose(Table.RUNS, 1, "length", 1, "length");
        parts.block().repeat();
        assertEquals("95 m", cell(Table.RUNS, "run cam 1", "length"));
        assertEquals(2, sheet.steps.size());
    }

    @Test
    void clearingEmptiesCellsToTheirDefaultsAndLeavesIds() {
        choose(Table.RUNS, 0, "id", 3, "length");
        parts.block().clear();
        assertEquals(4, sheet.plan().rows(Table.RUNS).size());
        assertEquals(Optional.empty(), sheet.plan().rows(Table.RUNS).at(1).cell("from"));
        sheet.document.undo();
        assertEquals("gate", cell(Table.RUNS, "run cam 1", "from"));
    }

    @Test
    void ofTwoRowsWithOneIdTheChosenOneIsChanged() {
        on(new PlainSheet(Landing.plan().and(Table.DEVICES, Row.of("cam 1").with("draw", "8 W")), Decimal.POINT));
        choose(Table.DEVICES, 3, "draw", 3, "draw");
        parts.block().paste("2 W");
        assertEquals("6 W", sheet.plan().rows(Table.DEVICES).at(0).text("draw"));
        assertEquals("2 W", sheet.plan().rows(Table.DEVICES).at(3).text("draw"));
    }

    @Test
    void pastingIntoSortedRowsFollowsTheRowsAsSeen() {
        choose(Table.DEVICES, 0, "draw", 0, "draw");
        parts.columns().sort(parts.columns().current().orElseThrow());
        parts.model().pick(0, parts.model().range().column());
        parts.block().paste("10 W\n20 W");
        assertEquals("10 W", cell(Table.DEVICES, "cam 3", "draw"));
        assertEquals("20 W", cell(Table.DEVICES, "cam 2", "draw"));
        assertEquals(List.of("cam 1", "cam 2", "cam 3"), sheet.ids(Table.DEVICES));
    }

    @Test
    void yesNoAndChoicesKeepTheFormOfFiles() {
        choose(Table.RUNS, 0, "screened", 0, "screened");
        parts.block().paste("yes");
        assertEquals(Optional.of(Cell.YES), sheet.plan().rows(Table.RUNS).at(0).cell("screened"));
    }
}
