package farwatt.catalogue;

import farwatt.plan.Cell;
import farwatt.quantity.Decimal;
import farwatt.quantity.Reader;
import farwatt.quantity.Typed;
import farwatt.quantity.Units;
import java.util.Optional;

/** A column of text in which a quantity of any measure, yes, no or an expression stands. Kept as text. */
final class FreeCell implements CellReader {
    private final Name name;
    private final Units units;

    FreeCell(Name name, Units units) {
        this.name = name;
        this.units = units;
    }

    @Override
    public Reading read(String row, Cell cell) {
        if (cell.form() == Cell.Form.OTHER) {
            return Mistake.of(name, row, CatalogueCode.NO_CELL, cell.text());
        }
        return switch (cell.text().strip()) {
            case "" -> EMPTY;
            case "yes" -> new Reading.YesNo(true);
            case "no" -> new Reading.YesNo(false);
            default ->
                literal(cell.text(), Decimal.POINT)
                        .<Reading>map(typed -> new Reading.Literal(typed.inside(), typed, Optional.empty()))
                        .orElseGet(() -> new Reading.Expression(cell.text()));
        };
    }

    @Override
    public Optional<Typed> literal(String text, Decimal decimal) {
        return Reader.read(text, units, decimal);
    }

    @Override
    public Cell canonical(Cell cell, Wording wording) {
        return asText(CellReader.super.canonical(cell, wording));
    }

    @Override
    public Cell typed(String text, Decimal decimal, Wording wording) {
        return asText(CellReader.super.typed(text, decimal, wording));
    }

    private static Cell asText(Cell cell) {
        return cell.form() == Cell.Form.OTHER ? cell : Cell.text(cell.text());
    }
}
