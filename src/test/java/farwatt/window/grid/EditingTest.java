package farwatt.window.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Change;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class EditingTest {
    private PlainSheet sheet = Landing.sheet();
    private Parts parts = Parts.of(sheet, new Landing.Pocket());

    private Editing at(Table table, int row, String name) {
        parts.model().show(table);
        parts.model().pick(row, parts.model().columnSet().indexOf(name));
        return parts.editing();
    }

    private String cell(Table table, String id, String name) {
        return sheet.plan().rows(table).row(id).orElseThrow().text(name);
    }

    @Test
    void aBareNumberTakesTheColumnsUnit() {
        Editing editing = at(Table.RUNS, 0, "length");
        editing.open(Editing.From.A_KEY, "6");
        editing.type("60", 2);
        assertTrue(editing.commit());
        assertEquals("60 m", cell(Table.RUNS, "trunk", "length"));
        assertEquals(List.of("Set length of trunk"), sheet.steps);
    }

    @Test
    void leavingWithoutAChangeIsNoStep() {
        Editing editing = at(Table.RUNS, 0, "length");
        editing.open(Editing.From.THE_CELL, "");
        assertEquals("95 m", editing.text());
        assertTrue(editing.commit());
        assertTrue(sheet.steps.isEmpty());
    }

    @Test
    void aTextThatCannotBeReadIsSaidWhileTypingAndKeptWhenLeaving() {
        Editing editing = at(Table.RUNS, 0, "length");
        editing.open(Editing.From.A_KEY, "9");
        editing.type("9 W", 3);
        assertTrue(editing.notice().orElseThrow().text().contains("9 W"));
        assertTrue(editing.commit());
        assertEquals("9 W", cell(Table.RUNS, "trunk", "length"));
        parts.model().show(Table.RUNS);
        Face face = parts.model().face(0, parts.model().columnSet().indexOf("length"));
        assertEquals(Face.Origin.FAULT, face.origin());
        assertEquals("9 W", face.text());
        assertTrue(face.notice().isPresent());
    }

    @Test
    void escapeLeavesTheCellAsItWas() {
        Editing editing = at(Table.RUNS, 0, "length");
        editing.open(Editing.From.A_KEY, "1");
        editing.cancel();
        assertFalse(editing.isOpen());
        assertEquals("95 m", cell(Table.RUNS, "trunk", "length"));
    }

    @Test
    void workedOutCellsCannotBeOpened() {
        Editing editing = at(Table.RUNS, 0, "loop");
        editing.open(Editing.From.A_KEY, "1");
        assertFalse(editing.isOpen());
        assertEquals(1, sheet.said.size());
    }

    @Test
    void anIdThatIsTakenKeepsTheCellOpenAndSaysWhy() {
        Editing editing = at(Table.DEVICES, 0, "id");
        editing.open(Editing.From.THE_CELL, "");
        editing.type("gate", 4);
        assertFalse(editing.commit());
        assertTrue(editing.isOpen());
        assertTrue(editing.notice().isPresent());
        editing.type("cam 9", 5);
        assertTrue(editing.commit());
        assertEquals("cam 9", cell(Table.RUNS, "run cam 1", "to"));
    }

    @Test
    void choicesAreOfferedAtOnceAndTakeThePlaceOfTheText() {
        Editing editing = at(Table.RUNS, 0, "metal");
        editing.open(Editing.From.THE_CELL, "");
        assertEquals(2, editing.offers().size());
        assertEquals(-1, editing.chosen());
        editing.choose(2);
        editing.accept(editing.chosen());
        assertEquals("clad", editing.text());
        assertTrue(editing.commit());
        assertEquals("clad", cell(Table.RUNS, "trunk", "metal"));
    }

    @Test
    void typingNarrowsTheOffersToWhatFits() {
        Editing editing = at(Table.RUNS, 0, "basis");
        editing.open(Editing.From.A_KEY, "d");
        assertEquals(
                List.of("datasheet"),
                editing.offers().stream().map(o -> o.text()).toList());
    }

    @Test
    void anExpressionGetsOffersAtTheCaret() {
        Editing editing = at(Table.DEVICES, 0, "draw");
        editing.open(Editing.From.A_KEY, "2");
        editing.type("2 * load_e", 10);
        editing.accept(0);
        assertTrue(editing.text().startsWith("2 * load"), editing.text());
        editing.type("9 W + ", 6);
        assertTrue(editing.offers().isEmpty());
    }

    @Test
    void theCommaIsTheSignWhereThePersonWantsIt() {
        sheet = new PlainSheet(Landing.plan(), Decimal.COMMA);
        parts = Parts.of(sheet, new Landing.Pocket());
        Editing editing = at(Table.RUNS, 0, "length");
        editing.open(Editing.From.A_KEY, "1");
        editing.type("1,30", 4);
        editing.commit();
        assertEquals("1.30 m", cell(Table.RUNS, "trunk", "length"));
        editing.open(Editing.From.THE_CELL, "");
        assertEquals("1,30 m", editing.text());
        editing.type("1.30", 4);
        editing.commit();
        assertEquals("1.30 m", cell(Table.RUNS, "trunk", "length"));
        Face face = parts.model().face(0, parts.model().range().column());
        assertEquals("1,3 m", parts.model().text(face));
    }

    @Test
    void aRowThatMovedMeanwhileIsStillTheOneThatGetsTheText() {
        Editing editing = at(Table.DEVICES, 1, "draw");
        editing.open(Editing.From.A_KEY, "8");
        sheet.document.apply(new Change.DropRow(Table.DEVICES, 0, "cam 1"));
        assertTrue(editing.commit());
        assertEquals("8 W", cell(Table.DEVICES, "cam 2", "draw"));
        assertEquals("4 W", cell(Table.DEVICES, "cam 3", "draw"));
    }

    @Test
    void aRowThatIsGoneMeanwhileIsSaid() {
        Editing editing = at(Table.DEVICES, 2, "draw");
        editing.open(Editing.From.A_KEY, "8");
        sheet.document.apply(new Change.DropRow(Table.DEVICES, 2, "cam 3"));
        assertTrue(editing.commit());
        assertTrue(sheet.said.get(0).text().contains("cam 3"));
    }

    @Test
    void oneTextGoesIntoEveryChosenRow() {
        at(Table.DEVICES, 0, "draw");
        parts.model().pickTo(2, parts.model().range().column());
        parts.editing().open(Editing.From.A_KEY, "3");
        parts.editing().commitToAll(parts.block());
        assertEquals("3 W", cell(Table.DEVICES, "cam 1", "draw"));
        assertEquals("3 W", cell(Table.DEVICES, "cam 3", "draw"));
        assertEquals(1, sheet.steps.size());
    }
}
