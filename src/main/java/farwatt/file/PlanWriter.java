package farwatt.file;

import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Wording;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.Table;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes plans in their one canonical form: UTF-8, one row a line, keys in the catalogue's order, cells normalised,
 * empty tables left out. Writing what was read of it gives the same bytes again. Safe for any thread.
 */
public final class PlanWriter {
    private final Plan plan;
    private final StringBuilder out = new StringBuilder(1 << 12);
    private final RowText rows;
    private final ScenarioText scenarios;
    /** What has to be written back as it was. */
    private final Map<String, String> rest;

    private PlanWriter(Plan plan, Wording wording) {
        this.plan = plan;
        PlanCells cells = PlanCells.of(plan);
        this.rows = new RowText(out, cells, wording);
        this.scenarios = new ScenarioText(out, plan, rows, cells);
        this.rest = new LinkedHashMap<>(plan.rest());
    }

    /**
     * The plan as the text of its file.
     *
     * @param wording knows how expressions are written
     * @throws IllegalArgumentException if the plan is of a newer version: it must not be written
     */
    public static String text(Plan plan, Wording wording) {
        if (plan.version() > Plan.VERSION) {
            throw new IllegalArgumentException("version " + plan.version());
        }
        return new PlanWriter(plan, wording).write();
    }

    /** The same as bytes. */
    public static byte[] bytes(Plan plan, Wording wording) {
        return text(plan, wording).getBytes(StandardCharsets.UTF_8);
    }

    private String write() {
        out.append("{\n  \"farwatt\": ").append(Plan.VERSION);
        for (Table table : Table.values()) {
            if (table == Table.PLAN) {
                settings();
            } else {
                table(table);
            }
        }
        list(Kept.SCENARIOS, new ArrayList<>(plan.scenarios()));
        for (Map.Entry<String, String> part : rest.entrySet()) {
            String key = isOwn(part.getKey()) ? Kept.name(part.getKey(), this::isTaken) : part.getKey();
            part(key, part.getValue());
        }
        return out.append("\n}\n").toString();
    }

    private boolean isOwn(String key) {
        return key.equals(Kept.VERSION)
                || key.equals(Kept.SCENARIOS)
                || Table.of(key).isPresent();
    }

    private boolean isTaken(String key) {
        return isOwn(key) || plan.rest().containsKey(key);
    }

    private void settings() {
        Row row = plan.settings();
        String key = Table.PLAN.key();
        if (!row.names().isEmpty()) {
            key(key);
            rows.row(Optional.of(Table.PLAN), "", row);
        } else if (rest.containsKey(key)) {
            part(key, rest.remove(key));
        }
    }

    private void table(Table table) {
        List<Object> items = new ArrayList<>(plan.rows(table).list());
        list(table.key(), items);
    }

    /** A list of rows or scenarios, and what stood among them and could not be read. */
    private void list(String key, List<Object> items) {
        String kept = rest.get(key);
        if (kept != null && (items.isEmpty() || kept.startsWith("["))) {
            rest.remove(key);
            if (!kept.startsWith("[")) {
                part(key, kept);
                return;
            }
            items.addAll(Json.items(kept));
        }
        if (!items.isEmpty()) {
            key(key);
            lines(Table.of(key), items);
        }
    }

    /** A part that is only kept; a list of several items with one on each line. */
    private void part(String key, String json) {
        key(key);
        if (json.startsWith("[")) {
            lines(Optional.empty(), new ArrayList<>(Json.items(json)));
        } else {
            out.append(Json.oneLine(json));
        }
    }

    private void key(String key) {
        Json.string(out.append(",\n  "), key);
        out.append(": ");
    }

    private void lines(Optional<Table> table, List<Object> items) {
        boolean several = items.size() > 1;
        out.append('[');
        String before = several ? "\n    " : "";
        for (Object item : items) {
            out.append(before);
            item(table, item);
            before = ",\n    ";
        }
        out.append(several ? "\n  ]" : "]");
    }

    private void item(Optional<Table> table, Object item) {
        if (item instanceof Row row) {
            rows.row(table, table.map(Table::idKey).orElse(""), row);
        } else if (item instanceof Scenario scenario) {
            scenarios.scenario(scenario);
        } else {
            out.append(item);
        }
    }
}
