package farwatt.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything a person filled in. Immutable: an edit makes a new plan that shares what stayed the same. Holds text as
 * typed and no results. Safe for any thread.
 */
public final class Plan {
    /** The version of the plan file that this program writes. */
    public static final int VERSION = 1;

    /** An empty plan. */
    public static final Plan EMPTY = new Plan(emptyTables(), List.of(), Map.of(), VERSION);

    private final Rows[] tables;
    private final List<Scenario> scenarios;
    private final Map<String, String> rest;
    private final int version;

    private Plan(Rows[] tables, List<Scenario> scenarios, Map<String, String> rest, int version) {
        this.tables = tables;
        this.scenarios = List.copyOf(scenarios);
        this.rest = Collections.unmodifiableMap(new LinkedHashMap<>(rest));
        this.version = version;
    }

    private static Rows[] emptyTables() {
        Rows[] tables = new Rows[Table.values().length];
        Arrays.fill(tables, Rows.NONE);
        tables[Table.PLAN.ordinal()] = Rows.of(List.of(Row.of("")));
        return tables;
    }

    /** The rows of a table; the table of the plan's settings always has one row. */
    public Rows rows(Table table) {
        return tables[table.ordinal()];
    }

    /** The settings of the plan as a whole. */
    public Row settings() {
        return rows(Table.PLAN).at(0);
    }

    /** The plan's name, "" if it has none. */
    public String name() {
        return settings().text("name");
    }

    /** The plan's currency code. */
    public String currency() {
        String typed = settings().text("currency");
        return typed.isEmpty() ? "EUR" : typed;
    }

    public List<Scenario> scenarios() {
        return scenarios;
    }

    /** The scenario with this id, without regard to case. */
    public Optional<Scenario> scenario(String id) {
        return scenarios.stream()
                .filter(s -> Rows.fold(s.id()).equals(Rows.fold(id)))
                .findFirst();
    }

    /** Parts of the file that this program keeps but does not read, by key, as JSON text. */
    public Map<String, String> rest() {
        return rest;
    }

    /** The version of the file it came from; above {@link #VERSION} it is not written back. */
    public int version() {
        return version;
    }

    /** The plan with other rows in one table. */
    public Plan with(Table table, Rows rows) {
        Rows[] changed = tables.clone();
        changed[table.ordinal()] = rows;
        return new Plan(changed, scenarios, rest, version);
    }

    /** The plan with one more row at a table's end. */
    public Plan and(Table table, Row row) {
        return with(table, rows(table).and(row));
    }

    public Plan withScenarios(List<Scenario> other) {
        return new Plan(tables, other, rest, version);
    }

    public Plan withRest(Map<String, String> other) {
        return new Plan(tables, scenarios, other, version);
    }

    public Plan withVersion(int other) {
        return new Plan(tables, scenarios, rest, other);
    }

    /** Where a site row with this id stands: the first one in the tables' order, without regard to case. */
    public Optional<Spot> find(String id) {
        for (Table table : Table.site()) {
            int at = rows(table).place(id);
            if (at >= 0) {
                return Optional.of(new Spot(table, at));
            }
        }
        return Optional.empty();
    }

    /** Every site row's id. */
    public List<String> ids() {
        List<String> all = new ArrayList<>();
        for (Table table : Table.site()) {
            rows(table).forEach(row -> all.add(row.id()));
        }
        return all;
    }

    /**
     * A row by its table and place.
     *
     * @param place counted from 0
     */
    public record Spot(Table table, int place) {}

    @Override
    public boolean equals(Object other) {
        return other == this
                || (other instanceof Plan o
                        && Arrays.equals(tables, o.tables)
                        && scenarios.equals(o.scenarios)
                        && rest.equals(o.rest)
                        && version == o.version);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(tables) * 31 + scenarios.hashCode();
    }
}
