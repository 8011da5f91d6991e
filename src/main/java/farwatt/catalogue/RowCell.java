package farwatt.catalogue;

import farwatt.plan.Cell;

/** A column that names rows. An id is kept as it stands; digits are an id like any other. */
final class RowCell implements CellReader {
    private final Name name;

    RowCell(Name name) {
        this.name = name;
    }

    @Override
    public Reading read(String row, Cell cell) {
        return switch (cell.form()) {
            case TEXT -> cell.text().isBlank() ? EMPTY : new Reading.RowId(cell.text());
            case NUMBER -> new Reading.RowId(cell.text());
            case YES_NO -> Mistake.of(name, row, CatalogueCode.NO_ROW_ID, cell.text());
            case OTHER -> Mistake.of(name, row, CatalogueCode.NO_CELL, cell.text());
        };
    }
}
