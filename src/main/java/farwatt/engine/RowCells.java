package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Cells that name rows: the ends of runs, zones, bundles. They stand as they are, never as expressions. */
final class RowCells {
    static final int EMPTY = -2;
    static final int UNKNOWN = -1;

    private final Layout layout;
    private final Plan plan;
    private final List<Notice> notices;

    RowCells(Layout layout, Plan plan, List<Notice> notices) {
        this.layout = layout;
        this.plan = plan;
        this.notices = notices;
    }

    /** By place of a run: the row its end names, or one of the marks above. */
    int[] ends(String name) {
        int[] found = new int[layout.size(Table.RUNS)];
        for (int place = 0; place < found.length; place++) {
            found[place] = read(Table.RUNS, plan.rows(Table.RUNS).at(place), name);
        }
        return found;
    }

    /** By row: the zone or bundle it names, −1 for none. */
    int[] named(String name, Table target, boolean[] used) {
        int[] found = new int[layout.rows()];
        Arrays.fill(found, UNKNOWN);
        for (Table table : Table.site()) {
            if (Catalogue.find(table, name).isEmpty()) {
                continue;
            }
            int row = layout.base(table);
            for (Row each : plan.rows(table)) {
                int to = read(table, each, name);
                if (to >= 0 && layout.isIn(to, target) && used[to]) {
                    found[row] = to;
                }
                row++;
            }
        }
        return found;
    }

    private int read(Table table, Row row, String name) {
        String text = row.text(name).strip();
        if (text.isEmpty()) {
            return EMPTY;
        }
        int found = layout.siteRow(text);
        Place place = new Place(table.key(), row.id(), name);
        Kind.RowOf kind = (Kind.RowOf) Catalogue.need(table, name).kind();
        if (found < 0) {
            notices.add(Notice.of(Level.FAIL, EngineCode.NO_SUCH_ROW, place, text));
            return UNKNOWN;
        }
        if (!kind.tables().contains(layout.table(found))) {
            String wanted = String.join(
                    " or ",
                    kind.tables().stream()
                            .map(t -> RowKinds.called(RowKinds.of(t)))
                            .toList());
            String is = RowKinds.called(RowKinds.of(layout.table(found)));
            notices.add(Notice.of(Level.FAIL, EngineCode.WRONG_TABLE, place, text, is, wanted));
            return UNKNOWN;
        }
        return found;
    }

    /** A notice for every id that is there twice; the first row keeps it. */
    void duplicates() {
        Set<Integer> seen = new HashSet<>();
        for (Table table : Table.site()) {
            int row = layout.base(table);
            for (Row each : plan.rows(table)) {
                int first = layout.siteRow(each.id());
                if (first != row && seen.add(row)) {
                    notices.add(Notice.of(
                            Level.FAIL,
                            EngineCode.DUPLICATE_ID,
                            Place.row(table.key(), each.id()),
                            each.id(),
                            layout.table(first).key()));
                }
                row++;
            }
        }
    }
}
