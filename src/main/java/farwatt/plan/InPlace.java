package farwatt.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Changes of cells that leave every row of one table in its place with its id. Many of them in a row, such as a paste
 * or a rename, are made on one copy of the table instead of a copy each.
 *
 * @param plan after the changes
 * @param inverses one for each change, in the changes' order
 */
record InPlace(Plan plan, List<Change> inverses) {
    /** One past the last of the changes, from a place on, that can be made together; that place itself if none can. */
    static int end(Plan plan, List<Change> changes, int from) {
        Optional<Table> table = table(plan, changes.get(from));
        int at = from;
        while (table.isPresent() && at < changes.size() && table.equals(table(plan, changes.get(at)))) {
            at++;
        }
        return at;
    }

    private static Optional<Table> table(Plan plan, Change change) {
        if (change instanceof Change.SetCell set) {
            return Optional.of(set.table());
        }
        if (change instanceof Change.ReplaceRow replace) {
            Rows rows = plan.rows(replace.table());
            int place = replace.place();
            boolean same = place >= 0
                    && place < rows.size()
                    && rows.at(place).id().equals(replace.row().id());
            return same ? Optional.of(replace.table()) : Optional.empty();
        }
        return Optional.empty();
    }

    /** Makes changes that {@link #end} found to belong together. */
    static InPlace make(Plan plan, List<Change> changes) {
        Table table = table(plan, changes.get(0)).orElseThrow();
        Rows before = plan.rows(table);
        Row[] rows = before.copy();
        List<Change> inverses = new ArrayList<>(changes.size());
        for (Change change : changes) {
            if (change instanceof Change.SetCell set) {
                int place = table == Table.PLAN ? 0 : before.place(set.id());
                if (place < 0) {
                    throw new IllegalArgumentException("no row " + set.id() + " in " + table.key());
                }
                inverses.add(inverse(set, place, rows[place]));
                rows[place] = changed(set, rows[place]);
            } else if (change instanceof Change.ReplaceRow replace) {
                inverses.add(new Change.ReplaceRow(table, replace.place(), rows[replace.place()]));
                rows[replace.place()] = replace.row();
            }
        }
        return new InPlace(plan.with(table, before.withSameIds(rows)), inverses);
    }

    private static Row changed(Change.SetCell set, Row row) {
        return set.cell().map(cell -> row.with(set.name(), cell)).orElseGet(() -> row.without(set.name()));
    }

    /** A cell that was emptied comes back at its old place only with its whole row. */
    private static Change inverse(Change.SetCell set, int place, Row row) {
        Optional<Cell> before = row.cell(set.name());
        boolean sameOrder = before.isEmpty() || set.cell().isPresent();
        return sameOrder
                ? new Change.SetCell(set.table(), set.id(), set.name(), before)
                : new Change.ReplaceRow(set.table(), place, row);
    }
}
