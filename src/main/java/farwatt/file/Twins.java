package farwatt.file;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds values, constants and needs whose name stands twice in their table. What is on the site is left to whoever
 * reads the plan: there twins are found at every edit.
 */
final class Twins {
    private static final List<Table> TABLES = List.of(Table.VALUES, Table.PRACTICE, Table.NEEDS);

    private Twins() {}

    static List<Notice> of(Plan plan) {
        List<Notice> notices = new ArrayList<>();
        for (Table table : TABLES) {
            Set<String> seen = new HashSet<>();
            for (Row row : plan.rows(table)) {
                if (!seen.add(Rows.fold(row.id()))) {
                    Place place = Place.row(table.key(), row.id());
                    notices.add(Notice.of(Level.FAIL, FileCode.NAME_TWICE, place, row.id(), table.key()));
                }
            }
        }
        return notices;
    }
}
