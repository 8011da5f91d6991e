package farwatt.catalogue;

import farwatt.plan.Cell;

/** A column of text, kept as it stands. */
final class TextCell implements CellReader {
    private final Name name;

    TextCell(Name name) {
        this.name = name;
    }

    @Override
    public Reading read(String row, Cell cell) {
        if (cell.form() == Cell.Form.OTHER) {
            return Mistake.of(name, row, CatalogueCode.NO_CELL, cell.text());
        }
        return cell.text().isEmpty() ? EMPTY : new Reading.TextValue(cell.text());
    }
}
