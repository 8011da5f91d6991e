package farwatt.catalogue.edit;

import farwatt.catalogue.CellReader;
import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Wording;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import java.util.Optional;

/**
 * Turns what a person types into a cell into a change, the text in canonical form. A text that cannot be read is kept
 * as typed.
 */
public final class Entry {
    private final PlanCells cells;
    private final Wording wording;
    private final Decimal decimal;

    /** @param decimal the person's decimal sign */
    public Entry(PlanCells cells, Wording wording, Decimal decimal) {
        this.cells = cells;
        this.wording = wording;
        this.decimal = decimal;
    }

    /**
     * Fills the cell of a row; a blank text empties it.
     *
     * @param id the row's id; ignored for {@link Table#PLAN}
     */
    public Change.SetCell change(Table table, String id, String name, String text) {
        return new Change.SetCell(table, id, name, cell(table, id, name, text));
    }

    /** The cell that a text becomes; empty for a blank one. */
    public Optional<Cell> cell(Table table, String id, String name, String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Optional<CellReader> reader = cells.reader(table, id, name);
        return Optional.of(reader.map(r -> r.typed(text, decimal, wording)).orElseGet(() -> Cell.text(text)));
    }
}
