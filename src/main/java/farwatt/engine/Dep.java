package farwatt.engine;

import java.util.List;

/**
 * One thing that a vertex reads.
 *
 * @param col the column read
 * @param path relations from the reading row to the row read; none for the same row
 * @param row the one row that is read by every reader, −1 where the reader's row decides
 * @param wide true where any change of the column may matter to any reader (gathers)
 */
record Dep(Col col, List<Relation> path, int row, boolean wide) {
    private static final List<Relation> HERE = List.of();

    static Dep here(Col col) {
        return new Dep(col, HERE, -1, false);
    }

    static Dep over(Col col, Relation... path) {
        return new Dep(col, List.of(path), -1, false);
    }

    static Dep cell(Col col, int row) {
        return new Dep(col, HERE, row, false);
    }

    static Dep all(Col col) {
        return new Dep(col, HERE, -1, true);
    }
}
