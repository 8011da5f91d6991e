package farwatt.window.grid;

import farwatt.plan.Change;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is done to columns: sort, filter, choose, hold, widen, take one's own away. The plan's order stays. */
final class ColumnWork {
    private final GridModel model;

    ColumnWork(GridModel model) {
        this.model = model;
    }

    /** The column with the cursor. */
    Optional<Column> current() {
        int at = model.range().column();
        return at < model.columns().size() ? Optional.of(model.columns().get(at)) : Optional.empty();
    }

    /** Sorts by a column: upwards, downwards, as in the plan. */
    void sort(Column column) {
        keepingRow(() -> {
            model.order().cycle(column.key());
            model.order().arrange(model.shown(), model.columns());
        });
    }

    void filter(String text, RowOrder.Only only) {
        keepingRow(() -> {
            model.order().filter(text, only);
            model.order().arrange(model.shown(), model.columns());
        });
    }

    /** The cursor stays on its row where that is still seen. */
    private void keepingRow(Runnable change) {
        int column = model.range().column();
        int place = model.isEmpty() ? -1 : model.place(model.range().row());
        change.run();
        int row = place < 0 ? -1 : model.order().seen(place);
        model.pick(Math.max(0, row), column);
    }

    void toggleSeen(Column column) {
        keepingColumn(() -> model.columnSet().toggleSeen(column.key()));
    }

    void seeAll() {
        keepingColumn(() -> model.columnSet().seeAll());
    }

    void toggleHeld(Column column) {
        keepingColumn(() -> model.columnSet().toggleHeld(column.key()));
    }

    private void keepingColumn(Runnable change) {
        Optional<Column> before = current();
        int row = model.range().row();
        int was = model.range().column();
        change.run();
        int now = before.map(c -> model.columnSet().indexOf(c.key())).orElse(0);
        model.pick(row, now < 0 ? was : now);
    }

    /**
     * Makes a column wider, or with negative letters narrower.
     *
     * @param letters one is half the height of the type
     */
    void widen(Column column, double letters) {
        width(column, model.columnSet().width(column) + letters);
    }

    void width(Column column, double letters) {
        model.columnSet().width(column, letters);
        model.changed();
    }

    /** As wide as the longest of the texts around the cursor, so that a long table takes no time. */
    void fit(Column column) {
        int looked = 500;
        int at = model.columns().indexOf(column);
        int from = Math.max(0, model.range().row() - looked);
        int longest = column.key().length() + column.unit().length() + 4;
        for (int row = from; at >= 0 && row < Math.min(model.rowCount(), from + 2 * looked); row++) {
            longest = Math.max(longest, model.face(row, at).text().length() + 3);
        }
        width(column, longest);
    }

    /** The row of the plan that makes a column of the person's own. */
    Optional<Row> own(Column column) {
        int place = ownPlace(column);
        return place < 0
                ? Optional.empty()
                : Optional.of(model.shown().plan().rows(Table.COLUMNS).at(place));
    }

    int ownPlace(Column column) {
        Rows rows = model.shown().plan().rows(Table.COLUMNS);
        for (int i = 0; i < rows.size(); i++) {
            boolean here = rows.at(i).text("table").equals(model.table().key());
            if (here && rows.at(i).id().equals(column.key())) {
                return i;
            }
        }
        return -1;
    }

    /** Takes a column of the person's own away with what was typed into it, as one step. */
    void removeOwn(Column column) {
        int place = ownPlace(column);
        if (place < 0) {
            return;
        }
        List<Change> changes = new ArrayList<>();
        Rows rows = model.rows();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.at(i).cell(column.key()).isPresent()) {
                changes.add(new Change.ReplaceRow(model.table(), i, rows.at(i).without(column.key())));
            }
        }
        changes.add(new Change.DropRow(Table.COLUMNS, place, column.key()));
        String what = Messages.text(GridCode.OWN_REMOVED, column.key());
        model.sheet().apply(what, new Change.Batch(what, changes));
    }
}
