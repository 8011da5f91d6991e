package farwatt.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What was understood of a few cells of a row, for the rows in which the same cells stand again: most lists say the
 * same watts and lengths many times. Remembers some thousands. For one thread.
 */
final class Known {
    private static final int SLOTS = 1 << 12;

    private final int[] columns;
    private final RawCell[][] cells = new RawCell[SLOTS][];
    private final @Nullable Draft[] drafts = new Draft[SLOTS];

    /** @param meanings those whose cells decide, and no other cell of the row */
    Known(Listing listing, List<Meaning> meanings) {
        columns = meanings.stream()
                .map(listing::column)
                .flatMap(Optional::stream)
                .mapToInt(Column::at)
                .toArray();
    }

    /** What the cells of a row say; read only where it is not known. Nobody may change it. */
    Draft of(RawRow row, Function<RawRow, Draft> read) {
        int hash = 1;
        for (int column : columns) {
            hash = 31 * hash + row.cell(column).text().hashCode();
        }
        int slot = (hash ^ hash >>> 12) & (SLOTS - 1);
        Draft there = drafts[slot];
        if (there != null && isSame(row, cells[slot])) {
            return there;
        }
        Draft fresh = read.apply(row);
        drafts[slot] = fresh;
        cells[slot] = Arrays.stream(columns).mapToObj(row::cell).toArray(RawCell[]::new);
        return fresh;
    }

    private boolean isSame(RawRow row, RawCell[] before) {
        for (int i = 0; i < columns.length; i++) {
            if (!before[i].equals(row.cell(columns[i]))) {
                return false;
            }
        }
        return true;
    }
}
