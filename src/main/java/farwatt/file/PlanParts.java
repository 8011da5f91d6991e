package farwatt.file;

import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was read of a file so far. Sentences wait until every row has its name. */
final class PlanParts {
    private final Map<Table, List<Row>> rows = new EnumMap<>(Table.class);
    private final List<Scenario> scenarios = new ArrayList<>();
    private final Map<String, String> rest = new LinkedHashMap<>();
    /** By table's key: items that are no rows. */
    private final Map<String, List<String>> unread = new LinkedHashMap<>();

    private final List<Said> said = new ArrayList<>();
    private Row settings = Row.of("");
    private int version;

    /** A sentence about a part of the file; {@code at} is the row's place in its table, −1 for none. */
    private record Said(Level level, FileCode code, String part, int at, String name, List<Object> fill) {}

    /** Adds a row; one without an id gets one in the end. */
    void add(Table table, Row row) {
        rows(table).add(row);
    }

    /** The place that the next row of a table gets. */
    int next(Table table) {
        return rows(table).size();
    }

    void settings(Row row) {
        settings = row;
    }

    Row settings() {
        return settings;
    }

    void add(Scenario scenario) {
        scenarios.add(scenario);
    }

    int scenarioCount() {
        return scenarios.size();
    }

    boolean hasScenario(String id) {
        return scenarios.stream().anyMatch(s -> Rows.fold(s.id()).equals(Rows.fold(id)));
    }

    /** Sets an item of a list aside that is not what the list holds. */
    void setAside(String part, String json) {
        unread.computeIfAbsent(part, k -> new ArrayList<>()).add(json);
    }

    /** Keeps a part of the file as it is. */
    void keep(String key, String json) {
        rest.put(Kept.name(key, taken -> taken.equals(Kept.VERSION) || rest.containsKey(taken)), json);
    }

    void version(int number) {
        version = number;
    }

    void say(Level level, FileCode code, String part, int at, String name, Object... fill) {
        said.add(new Said(level, code, part, at, name, List.of(fill)));
    }

    /** The plan with all there is to tell about it. */
    Opened opened(Fingerprint fingerprint) {
        name();
        Plan plan = plan();
        List<Notice> notices = new ArrayList<>();
        said.forEach(s -> notices.add(Notice.of(s.level, s.code, place(s), s.fill.toArray())));
        notices.addAll(Twins.of(plan));
        notices.addAll(StrangeKeys.of(plan));
        boolean newer = version > Plan.VERSION;
        if (newer) {
            notices.add(0, Notice.of(Level.WARN, FileCode.NEWER, Place.NONE, version, Plan.VERSION));
        }
        return new Opened(plan, notices, newer ? Access.READ_ONLY : Access.EDIT, fingerprint);
    }

    private Plan plan() {
        Plan plan = Plan.EMPTY.withVersion(version).with(Table.PLAN, Rows.of(List.of(settings)));
        for (Map.Entry<Table, List<Row>> table : rows.entrySet()) {
            plan = plan.with(table.getKey(), Rows.of(table.getValue()));
        }
        Map<String, String> all = new LinkedHashMap<>(rest);
        unread.forEach(
                (part, items) -> all.put(Kept.name(part, all::containsKey), "[" + String.join(", ", items) + "]"));
        return plan.withScenarios(scenarios).withRest(all);
    }

    /** Gives every row without an id one that is free. */
    private void name() {
        Naming site = Naming.in(plan());
        rows.forEach((table, list) -> {
            Naming naming = table.isSite() ? site : Naming.in(Rows.of(list));
            boolean plain = table == Table.VALUES || table == Table.COLUMNS;
            for (int i = 0; i < list.size(); i++) {
                if (list.get(i).id().isEmpty()) {
                    String id = naming.free(plain ? "unnamed_1" : "unnamed 1");
                    list.set(i, list.get(i).renamed(id));
                    say(Level.WARN, FileCode.NO_ID, table.key(), i, "", table.idKey(), id);
                }
            }
        });
    }

    private Place place(Said s) {
        String row = "";
        if (s.at >= 0) {
            row = s.part.equals(Kept.SCENARIOS)
                    ? scenarios.get(s.at).id()
                    : Table.of(s.part).map(t -> rows(t).get(s.at).id()).orElse("");
        }
        return new Place(s.part, row, s.name);
    }

    private List<Row> rows(Table table) {
        return rows.computeIfAbsent(table, t -> new ArrayList<>());
    }
}
