package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.Stage;
import farwatt.plan.Table;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Every column of a calculation by table and name: the catalogue's, a person's own, and a few that stay inside. */
final class Columns {
    private final Layout layout;
    private final Faults faults;
    private final Map<Table, Map<String, Col>> byTable = new EnumMap<>(Table.class);

    Columns(Layout layout, Faults faults) {
        this.layout = layout;
        this.faults = faults;
        for (Name name : Catalogue.all()) {
            if (name.table() != Table.PRACTICE && name.table() != Table.COLUMNS) {
                add(name);
            }
        }
        add(Catalogue.need(Table.VALUES, "is"), Table.PRACTICE);
    }

    /** Adds a column for a name; one of the same name is replaced. */
    Col add(Name name) {
        return add(name, name.table());
    }

    private Col add(Name name, Table table) {
        Col col = new Col(table, name, faults.name(name.key()), layout.base(table), layout.size(table));
        byTable.computeIfAbsent(table, t -> new LinkedHashMap<>()).put(name.key(), col);
        return col;
    }

    /** A column that no person sees: a step between what is given and what the circuit needs. */
    Col inside(Table table, String key) {
        return new Col(table, hidden(table, key), faults.name(key), layout.base(table), layout.size(table));
    }

    /** A column of one cell that stands in no table, its row behind all others: a gather that many read. */
    static Col single(String key, Layout layout) {
        return new Col(Table.PLAN, hidden(Table.PLAN, key), 0, layout.rows(), 1);
    }

    private static Name hidden(Table table, String key) {
        return new Name(
                table, key, new Kind.Quantity(""), Stage.GIVEN, Name.Fallback.NONE, Optional.empty(), "", "", "");
    }

    Optional<Col> find(Table table, String key) {
        return Optional.ofNullable(byTable.getOrDefault(table, Map.of()).get(key));
    }

    /** A column that must be there. */
    Col need(Table table, String key) {
        return find(table, key).orElseThrow(() -> new IllegalArgumentException(table.key() + "." + key));
    }

    /** The columns of a table in the catalogue's order, own ones last. */
    Iterable<Col> of(Table table) {
        return byTable.getOrDefault(table, Map.of()).values();
    }
}
