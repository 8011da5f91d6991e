package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;

class PlacesTest {
    private static final Schedule.Lines TWO = Schedule.Lines.of(
            List.of(List.of(Entry.number(1), Entry.number(2)), List.of(Entry.number(3), Entry.number(4))));

    private static Schedule table(String name, List<Schedule.Fact> facts, Schedule.Lines lines) {
        List<Column> columns = List.of(Column.of("a", "a", Form.ONE), Column.of("b", "b", Form.ONE));
        return new Schedule(name, "", facts, columns, lines);
    }

    @Test
    void namesBecomeCells() {
        Places places = new Places();
        Schedule.Fact fact = new Schedule.Fact("target", "target", Form.SHARE, Entry.number(0.2), "");
        Places.Place here = places.put(table("Here", List.of(fact), TWO), "Here");
        places.put(table("There's", List.of(), TWO), "There's~1");
        assertEquals(5, here.first());
        assertEquals("A6-B6", places.resolve("{a}-{b}", here, 5));
        assertEquals("SUM(B$6:B$7)", places.resolve("SUM({b:all})", here, 7));
        assertEquals("IF(A6<$B$3,1,2)", places.resolve("IF({a}<{#target},1,2)", here, 5));
        assertEquals("SUM('There''s~1'!B$4:B$5)", places.resolve("SUM({There's!b:all})", here, 0));
        assertEquals("'There''s~1'!$A$5", places.resolve("{There's!a@1}", here, 0));
        assertEquals("1+1", places.resolve("1+1", here, 0));
    }

    @Test
    void aTableWithoutLinesStillHasARangeToLookInto() {
        Places places = new Places();
        Places.Place here = places.put(table("Here", List.of(), Schedule.Lines.of(List.of())), "Here");
        assertEquals("COUNTA(A$4:A$4)", places.resolve("COUNTA({a:all})", here, 9));
    }

    @Test
    void aNameThatIsNotThereIsABug() {
        Places places = new Places();
        Places.Place here = places.put(table("Here", List.of(), TWO), "Here");
        assertThrows(IllegalArgumentException.class, () -> places.resolve("{c}", here, 5));
        assertThrows(IllegalArgumentException.class, () -> places.resolve("{#c}", here, 5));
        assertThrows(IllegalArgumentException.class, () -> places.resolve("{Nowhere!a:all}", here, 5));
    }

    @Test
    void columnsHaveTheLettersThatWorkbooksUse() {
        for (int column : new int[] {0, 1, 25, 26, 27, 51, 52, 701, 702, 16_383}) {
            assertEquals(CellReference.convertNumToColString(column), Places.letters(column));
        }
    }
}
