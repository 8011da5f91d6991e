package farwatt.catalogue;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.quantity.Typed;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import java.util.Optional;
import java.util.Set;

/**
 * Understands the cells of one column: the one place that knows what a literal cell means, which mistakes it can hold
 * and what its canonical form is. Expressions it only recognises as what is left. Safe for any thread.
 */
public interface CellReader {
    Reading EMPTY = new Reading.Empty();
    /** Columns of text in which a literal or an expression stands. */
    Set<String> EXPRESSIONS = Set.of("values.is", "practice.is", "columns.is", "needs.holds");

    /** A reader for a column of the catalogue or of a person's own. */
    static CellReader of(Name name, Units units) {
        Kind kind = name.kind();
        if (kind instanceof Kind.Quantity quantity) {
            return new QuantityCell(name, quantity.unit(units), units);
        }
        if (kind instanceof Kind.Gauge) {
            return new QuantityCell(name, units.need("AWG"), units);
        }
        if (kind instanceof Kind.Choice choice) {
            return new ChoiceCell(name, choice);
        }
        if (kind instanceof Kind.YesNo) {
            return new YesNoCell(name);
        }
        if (kind instanceof Kind.RowOf) {
            return new RowCell(name);
        }
        if (EXPRESSIONS.contains(name.path())) {
            return new FreeCell(name, units);
        }
        return name.table() == Table.COLUMNS && name.key().equals("unit")
                ? new UnitCell(name, units)
                : new TextCell(name);
    }

    /**
     * What the cell means.
     *
     * @param row id of its row, for the place of a notice
     */
    Reading read(String row, Cell cell);

    /** The cell as files keep it; one that nobody can read stays as it is. */
    default Cell canonical(Cell cell, Wording wording) {
        return canonical(read("", cell), wording).orElse(cell);
    }

    /** A text as a person typed it, in the form in which the plan keeps it. */
    default Cell typed(String text, Decimal decimal, Wording wording) {
        Cell plain = Cell.text(text);
        Reading reading = read("", plain);
        if (reading instanceof Reading.Expression) {
            return literal(text, decimal)
                    .map(typed -> canonical(Cell.text(typed.text()), wording))
                    .orElseGet(() -> Cell.text(wording.canonical(text, decimal)));
        }
        return canonical(reading, wording).orElse(plain);
    }

    /** The literal that stands in a text with a decimal sign of the person's own, where the column holds such. */
    default Optional<Typed> literal(String text, Decimal decimal) {
        return Optional.empty();
    }

    private static Optional<Cell> canonical(Reading reading, Wording wording) {
        if (reading instanceof Reading.Literal literal) {
            String text = literal.typed().text();
            boolean bare = literal.typed().unit().equals(Unit.ONE);
            return Optional.of(bare && isWhole(text) ? Cell.number(text) : Cell.text(text));
        }
        if (reading instanceof Reading.Word word) {
            return Optional.of(isWhole(word.word()) ? Cell.number(word.word()) : Cell.text(word.word()));
        }
        if (reading instanceof Reading.YesNo yesNo) {
            return Optional.of(yesNo.yes() ? Cell.YES : Cell.NO);
        }
        if (reading instanceof Reading.RowId row) {
            return Optional.of(Cell.text(row.id()));
        }
        if (reading instanceof Reading.TextValue text) {
            return Optional.of(Cell.text(text.text()));
        }
        if (reading instanceof Reading.Expression expression) {
            return Optional.of(Cell.text(wording.canonical(expression.text(), Decimal.POINT)));
        }
        return Optional.empty();
    }

    /** True for digits that may stand as a number in a file and mean the same. */
    private static boolean isWhole(String text) {
        return text.chars().allMatch(c -> c >= '0' && c <= '9')
                && !text.isEmpty()
                && (text.charAt(0) != '0' || text.length() == 1);
    }
}
