package farwatt.engine;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Says which ids and names of a plan are there twice. The first of a name keeps it. */
final class Duplicates {
    private final Plan plan;
    private final List<Notice> notices;

    Duplicates(Plan plan, List<Notice> notices) {
        this.plan = plan;
        this.notices = notices;
    }

    /** Rows on the site share one name space; the other tables have their own. */
    void find() {
        Map<String, Table> site = new HashMap<>();
        for (Table table : Table.site()) {
            find(table, site);
        }
        for (Table table : List.of(Table.VALUES, Table.PRACTICE, Table.NEEDS)) {
            find(table, new HashMap<>());
        }
    }

    private void find(Table table, Map<String, Table> known) {
        for (Row row : plan.rows(table)) {
            Table first = known.putIfAbsent(Rows.fold(row.id()), table);
            if (first != null) {
                Place place = table.isSite() ? Place.row(table.key(), row.id()) : new Place(table.key(), "", row.id());
                notices.add(Notice.of(Level.FAIL, EngineCode.DUPLICATE_ID, place, row.id(), first.key()));
            }
        }
    }
}
