package farwatt.plan;

import java.util.List;
import java.util.Optional;

/** The tables of a plan, in the order in which people and files see them. */
public enum Table {
    /** Settings of the plan as a whole; always one row. */
    PLAN("plan", "name"),
    VALUES("values", "name"),
    PRACTICE("practice", "name"),
    ZONES("zones", "id"),
    BUNDLES("bundles", "id"),
    SOURCES("sources", "id"),
    SWITCHES("switches", "id"),
    RUNS("runs", "id"),
    DEVICES("devices", "id"),
    /** Columns of a person's own. */
    COLUMNS("columns", "name"),
    NEEDS("needs", "name");

    private static final List<Table> SITE = List.of(ZONES, BUNDLES, SOURCES, SWITCHES, RUNS, DEVICES);

    private final String key;
    private final String idKey;

    Table(String key, String idKey) {
        this.key = key;
        this.idKey = idKey;
    }

    /** The table's key in the plan file and its name in expressions. */
    public String key() {
        return key;
    }

    /** The key under which a row's identity stands in the plan file. */
    public String idKey() {
        return idKey;
    }

    /** The tables whose rows are things on the site; their ids share one name space. */
    public static List<Table> site() {
        return SITE;
    }

    /** The table with this key. */
    public static Optional<Table> of(String key) {
        for (Table table : values()) {
            if (table.key.equals(key)) {
                return Optional.of(table);
            }
        }
        return Optional.empty();
    }

    /** True for tables whose rows the other tables' rows may name. */
    public boolean isSite() {
        return SITE.contains(this);
    }
}
