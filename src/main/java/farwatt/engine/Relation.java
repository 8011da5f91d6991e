package farwatt.engine;

import farwatt.language.Link;
import java.util.function.IntToDoubleFunction;

/**
 * A relation from rows to at most one row each, with its way back. Rows are numbered as in {@link Layout}.
 */
final class Relation implements Link {
    final String name;
    private final int[] to;
    private final IntToDoubleFunction why;
    private final int[] start;
    private final int[] back;

    /**
     * @param to by row: where it leads, −1 for nowhere
     * @param why gives the fault that says why a row leads nowhere
     */
    Relation(String name, int[] to, IntToDoubleFunction why) {
        this.name = name;
        this.to = to;
        this.why = why;
        start = new int[to.length + 1];
        for (int target : to) {
            if (target >= 0) {
                start[target + 1]++;
            }
        }
        for (int i = 0; i < to.length; i++) {
            start[i + 1] += start[i];
        }
        back = new int[start[to.length]];
        int[] next = start.clone();
        for (int row = 0; row < to.length; row++) {
            if (to[row] >= 0) {
                back[next[to[row]]++] = row;
            }
        }
    }

    /** Where a row leads, −1 for nowhere. */
    @Override
    public int follow(int row) {
        return to[row];
    }

    /** The fault that says why a row leads nowhere. */
    @Override
    public double why(int row) {
        return why.applyAsDouble(row);
    }

    /** Marks every row that leads to one. */
    void backTo(int row, Marks into) {
        for (int k = start[row]; k < start[row + 1]; k++) {
            into.add(back[k]);
        }
    }
}
