package farwatt.window.grid;

import farwatt.plan.Cell;
import farwatt.report.Level;
import farwatt.report.Notice;
import java.util.Optional;

/**
 * What a typed text becomes in a cell.
 *
 * @param cell in canonical form; as typed where it cannot be read; empty for nothing
 * @param notice what is wrong with it or to be said about it
 */
public record Filled(Optional<Cell> cell, Optional<Notice> notice) {
    /** True where the text stands in the cell as a mistake. */
    public boolean isWrong() {
        return notice.map(Notice::level).filter(Level.FAIL::equals).isPresent();
    }
}
