package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Cells that name rows: the ends of runs, zones, bundles. They stand as they are, never as expressions. */
final class RowCells {
    static final int EMPTY = -2;
    static final int UNKNOWN = -1;

    private final Layout layout;
    private final Plan plan;
    private final Faults faults;
    private final List<Notice> notices;

    /** By row: the fault of a cell of its that names no row it could name, 0 if there is none. */
    final double[] slips;

    RowCells(Layout layout, Plan plan, Faults faults, List<Notice> notices) {
        this.layout = layout;
        this.plan = plan;
        this.faults = faults;
        this.notices = notices;
        slips = new double[layout.rows()];
    }

    /** By place of a run: the row its end names, or one of the marks above. */
    int[] ends(String name) {
        int[] found = new int[layout.size(Table.RUNS)];
        for (int place = 0; place < found.length; place++) {
            Row row = plan.rows(Table.RUNS).at(place);
            found[place] = read(Table.RUNS, row, layout.base(Table.RUNS) + place, name);
        }
        return found;
    }

    /** By row: the zone or bundle in use that it names, −1 for none. */
    int[] named(String name, Table target, boolean[] used) {
        int[] found = new int[layout.rows()];
        Arrays.fill(found, UNKNOWN);
        for (Table table : Table.site()) {
            if (Catalogue.find(table, name).isEmpty()) {
                continue;
            }
            int row = layout.base(table);
            for (Row each : plan.rows(table)) {
                int to = read(table, each, row, name);
                if (to >= 0 && layout.isIn(to, target) && used[to]) {
                    found[row] = to;
                }
                row++;
            }
        }
        return found;
    }

    private int read(Table table, Row row, int number, String name) {
        Optional<Cell> cell = row.cell(name);
        String text = cell.map(c -> c.text().strip()).orElse("");
        if (text.isEmpty()) {
            return EMPTY;
        }
        int found = cell.get().form() == Cell.Form.OTHER ? UNKNOWN : layout.siteRow(text);
        Kind.RowOf kind = (Kind.RowOf) Catalogue.need(table, name).kind();
        if (found >= 0 && kind.tables().contains(layout.table(found))) {
            return found;
        }
        Place place = new Place(table.key(), row.id(), name);
        Notice notice = found < 0
                ? Notice.of(Level.FAIL, EngineCode.NO_SUCH_ROW, place, text)
                : Notice.of(Level.FAIL, EngineCode.WRONG_TABLE, place, text, called(layout.table(found)), wanted(kind));
        notices.add(notice);
        if (slips[number] == 0) {
            slips[number] = faults.raise(new Fault(Fault.Kind.UNREADABLE, place, notice.line()));
        }
        return UNKNOWN;
    }

    private static String wanted(Kind.RowOf kind) {
        return String.join(" or ", kind.tables().stream().map(RowCells::called).toList());
    }

    private static String called(Table table) {
        return RowKinds.called(RowKinds.of(table));
    }
}
