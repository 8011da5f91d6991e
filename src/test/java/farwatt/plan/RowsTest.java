package farwatt.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RowsTest {
    @Test
    void idsAreFoundWithoutRegardToCaseAndTheFirstOfTwins() {
        Rows rows = Rows.of(List.of(Row.of("Cam 1"), Row.of("cam 2"), Row.of("CAM 1")));
        assertEquals(0, rows.place("cam 1"));
        assertEquals(1, rows.place("CAM 2"));
        assertEquals(-1, rows.place("cam 3"));
        assertEquals(0, rows.without(0).without(0).place("cam 1"));
        assertEquals(2, rows.with(0, Row.of("gate")).place("cam 1"));
    }

    @Test
    void cellsKeepTheirOrderAndTheirNeighbours() {
        Row row = Row.of("trunk").with("b", "1").with("a", "2").with("c", Cell.YES);
        assertEquals(List.of("b", "a", "c"), row.names());
        assertEquals("3", row.with("a", "3").text("a"));
        assertEquals(List.of("b", "c"), row.without("a").names());
        assertEquals(List.of("b", "x", "c"), row.withName("a", "x").names());
        assertEquals(row, row.withName("a", "c"), "a name that is taken is not taken twice");
        assertEquals(row, row.withName("nothing", "x"));
        assertEquals(Optional.of(Cell.YES), row.cell("c"));
        assertEquals("", row.text("nothing"));
    }

    @Test
    void aRowMadeInOneGoEqualsOneMadeCellByCell() {
        Row made = Row.of("x").with("a", "1").with("b", "2");
        assertEquals(made, Row.of("x", List.of("a", "b"), List.of(Cell.text("1"), Cell.text("2"))));
        assertEquals(made, Row.of("x", List.of("a", "b"), List.of(Cell.text("1"), Cell.text("2")), made));
        assertEquals(
                made,
                Row.of(
                        "x",
                        List.of("a", "b"),
                        List.of(Cell.text("1"), Cell.text("2")),
                        Row.of("y").with("a", "1")));
        assertThrows(IllegalArgumentException.class, () -> Row.of("x", List.of("a"), List.of()));
    }

    @Test
    void aSiteRowIsFoundInWhicheverTable() {
        Plan plan = Plan.EMPTY.and(Table.ZONES, Row.of("quay")).and(Table.DEVICES, Row.of("cam 1"));
        assertEquals(Optional.of(new Plan.Spot(Table.DEVICES, 0)), plan.find("CAM 1"));
        assertEquals(Optional.empty(), plan.find("dark"));
        assertEquals(List.of("quay", "cam 1"), plan.ids());
        assertEquals("EUR", plan.currency());
    }

    @Test
    void idsSortAsPeopleCount() {
        List<String> sorted =
                new ArrayList<>(List.of("cam 10", "Cam 2", "cam 1", "cam", "cam 02", "quay", "2", "10", "cam 1b"));
        sorted.sort(NaturalOrder.IDS);
        assertEquals(List.of("2", "10", "cam", "cam 1", "cam 1b", "Cam 2", "cam 02", "cam 10", "quay"), sorted);
    }

    @Test
    void theNaturalOrderIsAnOrder() {
        Random random = new Random(11);
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            StringBuilder id = new StringBuilder();
            for (int j = random.nextInt(6); j > 0; j--) {
                id.append("aA01 9é".charAt(random.nextInt(7)));
            }
            ids.add(id.toString());
        }
        for (String a : ids) {
            for (String b : ids) {
                int ab = NaturalOrder.IDS.compare(a, b);
                assertEquals(Integer.signum(ab), -Integer.signum(NaturalOrder.IDS.compare(b, a)), a + "|" + b);
                assertEquals(a.equals(b), ab == 0, a + "|" + b);
                for (String c : ids) {
                    if (ab < 0 && NaturalOrder.IDS.compare(b, c) < 0) {
                        assertEquals(-1, Integer.signum(NaturalOrder.IDS.compare(a, c)), a + "|" + b + "|" + c);
                    }
                }
            }
        }
    }
}
