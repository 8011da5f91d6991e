package farwatt.window.grid;

import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the grid shows: one table, its columns and rows as seen, and the chosen cells. Knows nothing of the screen. Its
 * watchers are called after whatever changes what is to be seen. For the window's thread.
 */
final class GridModel {
    private final Sheet sheet;
    private final Map<Table, TableState> states = new EnumMap<>(Table.class);
    private final List<Runnable> watchers = new ArrayList<>();
    private Shown shown;
    private Table table;

    GridModel(Sheet sheet) {
        this.sheet = sheet;
        shown = sheet.now();
        table = shown.tables().isEmpty() ? Table.DEVICES : shown.tables().get(0);
        follow();
        sheet.watch(this::fresh);
    }

    private void fresh() {
        shown = sheet.now();
        follow();
        changed();
    }

    private void follow() {
        TableState state = state();
        state.columns.update(shown.columns(table));
        state.order.follow(shown);
        state.range = state.range.within(state.order.size(), columns().size());
    }

    private TableState state() {
        return states.computeIfAbsent(table, TableState::new);
    }

    void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    /** Tells the watchers that something is to be seen otherwise. */
    void changed() {
        List.copyOf(watchers).forEach(Runnable::run);
    }

    Sheet sheet() {
        return sheet;
    }

    Shown shown() {
        return shown;
    }

    Table table() {
        return table;
    }

    /** Looks into another table; cursor, order and columns are as they were left there. */
    void show(Table other) {
        if (other != table) {
            table = other;
            follow();
            pointed();
            changed();
        }
    }

    /** Where the view of this table was scrolled to. */
    Scroll scroll() {
        return state().scroll;
    }

    void scroll(Scroll to) {
        state().scroll = to;
    }

    /** The rows of the table in the plan's order. */
    Rows rows() {
        return shown.plan().rows(table);
    }

    ColumnSet columnSet() {
        return state().columns;
    }

    RowOrder order() {
        return state().order;
    }

    /** The columns as seen. */
    List<Column> columns() {
        return state().columns.seen();
    }

    /** How many rows are seen. */
    int rowCount() {
        return state().order.size();
    }

    /** The place in the plan of a row as seen. */
    int place(int row) {
        return state().order.place(row);
    }

    String id(int row) {
        return rows().at(place(row)).id();
    }

    Face face(int row, int column) {
        return shown.face(table, place(row), columns().get(column));
    }

    /** The text of a face with the person's decimal sign. */
    String text(Face face) {
        return Spoken.figure(face, sheet.decimal());
    }

    /** What was typed into a cell, with the person's decimal sign; "" for nothing. */
    String typed(int row, int column) {
        Column one = columns().get(column);
        if (one.tint() == Column.Tint.IDENTITY) {
            return id(row);
        }
        return Spoken.typed(rows().at(place(row)).text(one.key()), one, sheet.decimal());
    }

    Optional<Level> verdict(int row) {
        return shown.verdict(table, place(row));
    }

    Range range() {
        return state().range;
    }

    boolean isEmpty() {
        return rowCount() == 0 || columns().isEmpty();
    }

    /** Chooses one cell. */
    void pick(int row, int column) {
        range(Range.at(row, column));
    }

    /** Chooses the cells from where choosing began to another. */
    void pickTo(int row, int column) {
        range(range().to(row, column));
    }

    void range(Range wanted) {
        state().range = wanted.within(rowCount(), columns().size());
        pointed();
        changed();
    }

    private void pointed() {
        if (isEmpty()) {
            sheet.pointed(table, List.of(), "");
            return;
        }
        List<String> ids = new ArrayList<>();
        ids.add(id(range().row()));
        for (int row = range().top(); row <= range().bottom(); row++) {
            if (row != range().row()) {
                ids.add(id(row));
            }
        }
        sheet.pointed(table, ids, columns().get(range().column()).key());
    }

    /** Goes to a cell of a table without telling the sheet, since it is the sheet's side that asks. */
    void point(Table other, String id, String name) {
        int place = shown.plan().rows(other).place(id);
        if (place < 0) {
            return;
        }
        table = other;
        follow();
        if (order().seen(place) < 0) {
            order().filter("", RowOrder.Only.ALL);
            order().arrange(shown, columns());
        }
        int column = columnSet().indexOf(name);
        state().range = Range.at(order().seen(place), column < 0 ? range().column() : column);
        changed();
    }

    /** Goes to the row at a place in the plan, if it is seen. */
    void pickPlace(int place, int column) {
        int row = order().seen(place);
        if (row >= 0) {
            pick(row, column);
        }
    }

    /** What the model remembers of each table. */
    private static final class TableState {
        private final ColumnSet columns = new ColumnSet();
        private final RowOrder order;
        private Range range = Range.at(0, 0);
        private Scroll scroll = new Scroll(0, 0);

        TableState(Table table) {
            order = new RowOrder(table);
        }
    }

    /** How far a view is scrolled, in pixels. */
    record Scroll(double x, double y) {}
}
