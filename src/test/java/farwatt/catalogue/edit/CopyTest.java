package farwatt.catalogue.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.PlanCells;
import farwatt.catalogue.TokenWording;
import farwatt.catalogue.Wording;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CopyTest {
    @Test
    void aRowIsCopiedRightAfterItselfUnderTheNextFreeName() {
        Plan plan = Ferry.plan();
        Copy copy = Copy.row(plan, Table.DEVICES, 0, Naming.in(plan));
        assertEquals("cam 3", copy.id(), "a scenario adds a cam 2");
        assertEquals("Copy cam 1", copy.change().label());
        Plan after = Edit.apply(plan, copy.change()).plan();
        assertEquals(
                plan.rows(Table.DEVICES).at(0).renamed("cam 3"),
                after.rows(Table.DEVICES).at(1));
    }

    @Test
    void aDeviceIsCopiedWithItsRunPortLeftOpen() {
        Plan plan = Ferry.plan();
        Copy copy = Copy.withRun(plan, Table.DEVICES, 0, Naming.in(plan));
        Row run = Edit.apply(plan, copy.change()).plan().rows(Table.RUNS).at(2);
        assertEquals("run cam 3", run.id());
        assertEquals("cam 3", run.text("to"));
        assertEquals("Gate", run.text("from"));
        assertEquals("trunk.length / 5", run.text("length"));
        assertTrue(run.cell("port").isEmpty());
    }

    @Test
    void manyCopiesOfOneAreCountedOn() {
        Plan plan = Ferry.plan();
        Naming naming = Naming.in(plan);
        for (String id : List.of("cam 3", "cam 4", "cam 5")) {
            Copy copy = Copy.withRun(plan, Table.DEVICES, 0, naming);
            assertEquals(id, copy.id());
            plan = Edit.apply(plan, copy.change()).plan();
        }
        assertEquals(5, plan.rows(Table.RUNS).size());
    }

    @Test
    void whatIsTypedIsKeptCanonicalAndWhatCannotBeReadAsTyped() {
        Wording wording = new TokenWording();
        Entry entry = new Entry(PlanCells.of(Ferry.plan()), wording, Decimal.COMMA);
        assertEquals(
                new Change.SetCell(Table.RUNS, "trunk", "length", Optional.of(Cell.text("12.5 m"))),
                entry.change(Table.RUNS, "trunk", "length", "12,5"));
        assertEquals(Optional.of(Cell.text("abc m")), entry.cell(Table.RUNS, "trunk", "length", "abc m"));
        assertEquals(
                Optional.of(Cell.text("dark + 1.5 m")), entry.cell(Table.RUNS, "trunk", "length", "dark  + 1,5 m"));
        assertEquals(Optional.empty(), entry.cell(Table.RUNS, "trunk", "length", "  "));
        assertEquals(Optional.of(Cell.text("1,5")), entry.cell(Table.RUNS, "trunk", "no such column", "1,5"));
    }
}
