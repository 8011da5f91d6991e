package farwatt.file;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Name;
import farwatt.catalogue.OwnColumns;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds cells under names that no column has: kept, but not used. One notice a name, however many rows have it. */
final class StrangeKeys {
    private final Map<Table, Set<String>> known = new EnumMap<>(Table.class);
    private final Map<Place, Integer> found = new LinkedHashMap<>();
    /** By table and name: the first place. */
    private final Map<String, Place> first = new LinkedHashMap<>();

    private StrangeKeys(OwnColumns own) {
        for (Table table : Table.values()) {
            Set<String> names = new HashSet<>(own.of(table).keySet());
            Catalogue.cells(table).stream().map(Name::key).forEach(names::add);
            known.put(table, names);
        }
    }

    static List<Notice> of(Plan plan) {
        StrangeKeys keys = new StrangeKeys(OwnColumns.of(plan));
        for (Table table : Table.values()) {
            for (Row row : plan.rows(table)) {
                keys.look(table, row, table.key(), row.id());
            }
        }
        for (Scenario scenario : plan.scenarios()) {
            for (Step step : scenario.steps()) {
                if (step instanceof Step.Add add) {
                    Table.of(add.table()).ifPresent(t -> keys.look(t, add.row(), Kept.SCENARIOS, scenario.id()));
                }
            }
        }
        return keys.notices();
    }

    private void look(Table table, Row row, String part, String id) {
        row.forEach((name, cell) -> {
            if (!known.getOrDefault(table, Set.of()).contains(name)) {
                Place place = first.computeIfAbsent(table.key() + "." + name, k -> new Place(part, id, name));
                found.merge(place, 1, Integer::sum);
            }
        });
    }

    private List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        first.forEach((path, place) -> {
            String table = path.substring(0, path.indexOf('.'));
            int rows = found.getOrDefault(place, 0);
            FileCode code = FileCode.UNKNOWN_KEY;
            if (Table.of(table).flatMap(t -> Catalogue.find(t, place.name())).isPresent()) {
                code = FileCode.WORKED_OUT;
            } else if (rows > 1) {
                code = FileCode.UNKNOWN_KEY_ROWS;
            }
            notices.add(Notice.of(Level.NOTE, code, place, place.name(), table, rows));
        });
        return notices;
    }
}
