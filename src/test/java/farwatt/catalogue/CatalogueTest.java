package farwatt.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CatalogueTest {
    private static final Units UNITS = new Units("EUR");

    @Test
    void everyFixedDefaultIsACellOfItsColumnThatNeedsNoWord() {
        for (Name name : Catalogue.all()) {
            String literal = name.fallback().literal();
            if (!literal.isEmpty()) {
                Reading reading = CellReader.of(name, UNITS).read("x", Cell.text(literal));
                assertFalse(reading instanceof Reading.Wrong, name.path());
                assertFalse(reading instanceof Reading.Expression, name.path());
                assertFalse(reading instanceof Reading.Empty, name.path());
                if (reading instanceof Reading.Literal value) {
                    assertEquals(Optional.empty(), value.notice(), name.path());
                }
            }
        }
    }

    @Test
    void whatIsPlausibleLiesTheRightWayRound() {
        for (Name name : Catalogue.all()) {
            name.plausible().ifPresent(range -> assertTrue(range.low() < range.high(), name.path()));
        }
    }

    @Test
    void everyNameIsOneThatExpressionsCanSay() {
        for (Name name : Catalogue.all()) {
            assertTrue(name.key().matches("[a-z][a-z0-9_]*"), name.path());
            assertTrue(name.sentence().endsWith("."), name.path());
            assertNotNull(CellReader.of(name, UNITS), name.path());
        }
    }

    @Test
    void cellsAreWhatAPersonFillsIn() {
        assertEquals(List.of("is", "note"), keys(Table.VALUES));
        assertEquals(List.of("is", "why", "note"), keys(Table.PRACTICE));
        assertEquals(List.of("table", "kind", "is", "unit", "note"), keys(Table.COLUMNS));
        assertTrue(keys(Table.RUNS).contains("length"));
        assertFalse(keys(Table.RUNS).contains("loss"));
    }

    private static List<String> keys(Table table) {
        return Catalogue.cells(table).stream().map(Name::key).toList();
    }

    @Test
    void ownColumnsAreReadByTheirKindAndUnit() {
        Plan plan = Plan.EMPTY
                .and(Table.COLUMNS, Row.of("tag").with("table", "devices").with("kind", "text"))
                .and(Table.COLUMNS, Row.of("spare").with("table", "runs").with("unit", "m"))
                .and(Table.COLUMNS, Row.of("armoured").with("table", "runs").with("kind", "yes/no"))
                .and(Table.COLUMNS, Row.of("core").with("table", "runs").with("unit", "AWG"))
                .and(
                        Table.COLUMNS,
                        Row.of("share").with("table", "runs").with("unit", "%").with("is", "loss / sent"))
                .and(Table.COLUMNS, Row.of("lost").with("table", "runs").with("unit", "boats"))
                .and(Table.COLUMNS, Row.of("nowhere").with("table", "boats"))
                .and(Table.COLUMNS, Row.of("odd").with("table", "runs").with("kind", "colour"));
        OwnColumns own = OwnColumns.of(plan);
        assertEquals(
                List.of("spare", "armoured", "core", "share"),
                List.copyOf(own.of(Table.RUNS).keySet()));
        assertEquals(
                Stage.DERIVED,
                Optional.ofNullable(own.of(Table.RUNS).get("share"))
                        .orElseThrow()
                        .stage());

        PlanCells cells = PlanCells.of(plan);
        assertEquals(new Reading.TextValue("5"), read(cells, Table.DEVICES, "tag", "5"));
        assertTrue(read(cells, Table.RUNS, "spare", "-5 m") instanceof Reading.Literal, "below zero may be meant");
        assertEquals(new Reading.YesNo(true), read(cells, Table.RUNS, "armoured", "yes"));
        assertTrue(read(cells, Table.RUNS, "core", "23 AWG") instanceof Reading.Literal);
        assertTrue(cells.reader(Table.RUNS, "trunk", "share").isEmpty(), "derived: nobody fills it in");
        assertTrue(cells.reader(Table.RUNS, "trunk", "loss").isEmpty());
        assertTrue(cells.reader(Table.RUNS, "trunk", "boats").isEmpty());
        assertTrue(cells.reader(Table.PRACTICE, "joint_ohms", "is").isPresent());
        assertTrue(cells.reader(Table.PRACTICE, "no such constant", "is").isPresent());
    }

    private static Reading read(PlanCells cells, Table table, String name, String text) {
        return cells.reader(table, "x", name).orElseThrow().read("x", Cell.text(text));
    }
}
