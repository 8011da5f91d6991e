package farwatt.intake;

import farwatt.plan.Cell;
import org.jspecify.annotations.Nullable;

/** Cells of a plan that stand in many rows, kept once. Remembers some thousands. For one thread. */
final class SharedCells {
    private static final int SLOTS = 1 << 12;

    private final @Nullable Cell[] cells = new Cell[SLOTS];

    Cell of(Cell.Form form, String text) {
        int hash = text.hashCode();
        int slot = (hash ^ hash >>> 12) & (SLOTS - 1);
        Cell there = cells[slot];
        if (there != null && there.form() == form && there.text().equals(text)) {
            return there;
        }
        Cell fresh = new Cell(form, text);
        cells[slot] = fresh;
        return fresh;
    }
}
