package farwatt.catalogue;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The names of everything a plan holds and the engine answers: headings, file keys, completion, command output and
 * the reference page come from here. Immutable.
 */
public final class Catalogue {
    private static final Map<Table, Map<String, Name>> NAMES = new EnumMap<>(Table.class);
    private static final Map<Table, List<Name>> CELLS = new EnumMap<>(Table.class);
    private static final List<Name> ALL = new ArrayList<>();

    static {
        put(Table.PLAN, PlanNames.all());
        put(Table.VALUES, PlanNames.values());
        put(Table.PRACTICE, PracticeNames.all());
        put(Table.ZONES, SiteNames.zones());
        put(Table.BUNDLES, SiteNames.bundles());
        put(Table.SOURCES, SourceNames.all());
        put(Table.SWITCHES, SwitchNames.all());
        put(Table.RUNS, RunNames.all());
        put(Table.DEVICES, DeviceNames.all());
        put(Table.COLUMNS, PlanNames.columns());
        put(Table.NEEDS, PlanNames.needs());
        CELLS.put(Table.PRACTICE, PlanNames.practice());
    }

    private Catalogue() {}

    private static void put(Table table, List<Name> names) {
        Map<String, Name> byKey = new LinkedHashMap<>();
        for (Name name : names) {
            if (byKey.put(name.key(), name) != null) {
                throw new IllegalStateException("twice: " + name.path());
            }
        }
        NAMES.put(table, byKey);
        CELLS.put(table, names.stream().filter(n -> n.stage() == Stage.GIVEN).toList());
        ALL.addAll(names);
    }

    /** All names, table by table, in the order in which files and grids show them. */
    public static List<Name> all() {
        return List.copyOf(ALL);
    }

    /** The names of a table in their order. */
    public static List<Name> of(Table table) {
        return List.copyOf(names(table).values());
    }

    /** The names under which the file keeps the cells of a table's rows, in their order, the identity apart. */
    public static List<Name> cells(Table table) {
        return CELLS.getOrDefault(table, List.of());
    }

    /** One name of a table. */
    public static Optional<Name> find(Table table, String key) {
        return Optional.ofNullable(names(table).get(key));
    }

    /** A name that the program itself asks for; an unknown one is a bug. */
    public static Name need(Table table, String key) {
        return find(table, key).orElseThrow(() -> new IllegalArgumentException("no name " + table.key() + "." + key));
    }

    private static Map<String, Name> names(Table table) {
        return NAMES.getOrDefault(table, Map.of());
    }
}
