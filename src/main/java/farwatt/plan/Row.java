package farwatt.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * One row: its id and the cells that were filled in, in the order in which they were. Immutable; compact, since a
 * plan may hold tens of thousands.
 */
public final class Row {
    private static final String[] NO_NAMES = {};
    private static final Cell[] NO_CELLS = {};

    private static final Row NONE = new Row("", NO_NAMES, NO_CELLS);

    private final String id;
    private final String[] names;
    private final Cell[] cells;

    private Row(String id, String[] names, Cell[] cells) {
        this.id = id;
        this.names = names;
        this.cells = cells;
    }

    /** A row without cells. */
    public static Row of(String id) {
        return new Row(id, NO_NAMES, NO_CELLS);
    }

    /**
     * A row with these cells.
     *
     * @param names of the cells, each once
     * @param cells as many as names
     */
    public static Row of(String id, List<String> names, List<Cell> cells) {
        return of(id, names, cells, NONE);
    }

    /** The same; shares what it can with a row that is likely to have the same names, to save memory. */
    public static Row of(String id, List<String> names, List<Cell> cells, Row like) {
        if (names.size() != cells.size()) {
            throw new IllegalArgumentException(names.size() + " names for " + cells.size() + " cells");
        }
        Cell[] filled = cells.toArray(NO_CELLS);
        if (like.hasNames(names)) {
            return new Row(id, like.names, filled);
        }
        String[] interned = new String[names.size()];
        for (int i = 0; i < interned.length; i++) {
            interned[i] = names.get(i).intern();
        }
        return new Row(id, interned, filled);
    }

    private boolean hasNames(List<String> others) {
        boolean same = names.length == others.size();
        for (int i = 0; same && i < names.length; i++) {
            same = names[i].equals(others.get(i));
        }
        return same;
    }

    /** The id (for values, practice, columns and needs: the name) as typed. */
    public String id() {
        return id;
    }

    /** The cell under a name, if it was filled in. */
    public Optional<Cell> cell(String name) {
        int at = find(name);
        return at < 0 ? Optional.empty() : Optional.of(cells[at]);
    }

    /** The text of the cell under a name, "" if it is empty. */
    public String text(String name) {
        int at = find(name);
        return at < 0 ? "" : cells[at].text();
    }

    /** The names of the filled cells in their order. */
    public List<String> names() {
        return List.of(names);
    }

    /** Visits the filled cells in their order. */
    public void forEach(BiConsumer<String, Cell> visitor) {
        for (int i = 0; i < names.length; i++) {
            visitor.accept(names[i], cells[i]);
        }
    }

    /** The row with one cell filled or replaced. */
    public Row with(String name, Cell cell) {
        int at = find(name);
        if (at >= 0) {
            Cell[] changed = cells.clone();
            changed[at] = cell;
            return new Row(id, names, changed);
        }
        String[] moreNames = Arrays.copyOf(names, names.length + 1);
        Cell[] moreCells = Arrays.copyOf(cells, cells.length + 1);
        moreNames[names.length] = name.intern();
        moreCells[cells.length] = cell;
        return new Row(id, moreNames, moreCells);
    }

    /** The row with a text in one cell. */
    public Row with(String name, String text) {
        return with(name, Cell.text(text));
    }

    /** The row with one cell emptied. */
    public Row without(String name) {
        if (find(name) < 0) {
            return this;
        }
        List<String> keptNames = new ArrayList<>();
        List<Cell> keptCells = new ArrayList<>();
        forEach((n, c) -> {
            if (!n.equals(name)) {
                keptNames.add(n);
                keptCells.add(c);
            }
        });
        return new Row(id, keptNames.toArray(NO_NAMES), keptCells.toArray(NO_CELLS));
    }

    /** The row with the same cells under another id. */
    public Row renamed(String newId) {
        return new Row(newId, names, cells);
    }

    /** The row with a cell under another name at the same place; a cell that is not filled in stays so. */
    public Row withName(String name, String other) {
        int at = find(name);
        if (at < 0 || find(other) >= 0) {
            return this;
        }
        String[] changed = names.clone();
        changed[at] = other.intern();
        return new Row(id, changed, cells);
    }

    private int find(String name) {
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals(name)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Row row
                && id.equals(row.id)
                && Arrays.equals(names, row.names)
                && Arrays.equals(cells, row.cells);
    }

    @Override
    public int hashCode() {
        return id.hashCode() * 31 + Arrays.hashCode(cells);
    }

    @Override
    public String toString() {
        return id + Arrays.toString(names) + Arrays.toString(cells);
    }
}
