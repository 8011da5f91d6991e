package farwatt.script;

import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import java.util.List;

/**
 * A table that a script made. Any thread.
 *
 * @param title "" for none
 * @param columns with the unit in which their numbers are shown
 * @param rows as many cells as columns
 */
public record ResultTable(String title, List<Column> columns, List<List<Cell>> rows) {
    public ResultTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** One column. */
    public record Column(String name, Unit unit) {}

    /** What stands in a cell. */
    public sealed interface Cell {}

    /** A finite number in SI. */
    public record Amount(double inside) implements Cell {}

    public record Words(String text) implements Cell {}

    public record YesNo(boolean yes) implements Cell {}

    /** No value. */
    public record None() implements Cell {}

    /** The cell as people read it, with its unit. */
    public static String text(Cell cell, Column column) {
        if (cell instanceof Amount amount) {
            return Show.text(amount.inside(), column.unit());
        }
        if (cell instanceof YesNo yesNo) {
            return yesNo.yes() ? "yes" : "no";
        }
        return cell instanceof Words words ? words.text() : "–";
    }
}
