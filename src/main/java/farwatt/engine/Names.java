package farwatt.engine;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.language.Item;
import farwatt.language.Ref;
import farwatt.language.RowSet;
import farwatt.language.Source;
import farwatt.language.Type;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything that names may refer to in one plan; {@link PlanScope} looks it up from where a text stands. */
final class Names {
    private static final List<String> RELATIONS = List.of("run", "feeder", "from", "to", "zone", "bundle");

    final Layout layout;
    final Columns columns;
    final Texts texts;
    final Units units;
    private final Faults faults;
    private final Types types;
    private final Relations relations;
    private final Map<Table, RowSet> sets;
    private final Map<Integer, Type> valueTypes = new HashMap<>();
    private final Map<String, UnionCol> unions = new HashMap<>();
    private final Map<Col, Type> ownTypes = new HashMap<>();

    Names(
            Layout layout,
            Columns columns,
            Texts texts,
            Units units,
            Faults faults,
            Relations relations,
            Map<Table, RowSet> sets) {
        this.layout = layout;
        this.columns = columns;
        this.texts = texts;
        this.units = units;
        this.faults = faults;
        this.relations = relations;
        this.sets = sets;
        types = new Types(units);
    }

    /** Says of which type a person's value is; until then it is unknown. */
    void valueType(int row, Type type) {
        valueTypes.put(row, type);
    }

    /** Says of which type a column of a person's own is. */
    void ownType(Col col, Type type) {
        ownTypes.put(col, type);
    }

    Type type(Col col) {
        Type own = ownTypes.get(col);
        return own != null ? own : types.of(col.name.kind());
    }

    Type valueType(int row) {
        return valueTypes.getOrDefault(row, Type.Plain.UNKNOWN);
    }

    /** A value or relation of rows of a kind. */
    Optional<Ref> member(String kind, String name) {
        List<Table> tables = RowKinds.tables(kind);
        if (tables.stream().anyMatch(table -> relations.of(table, name).isPresent())) {
            Relation relation = relations
                    .of(tables.get(tables.size() - 1), name)
                    .or(() -> relations.of(tables.get(0), name))
                    .orElseThrow();
            return Optional.of(new Ref.Leads(name, relation, RowKinds.ledTo(name)));
        }
        List<Col> parts = new ArrayList<>();
        for (Table table : tables) {
            columns.find(table, name).ifPresent(parts::add);
        }
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        Type type = type(parts.get(0));
        boolean whole = tables.size() == 1;
        return Optional.of(new Ref.Reads(name, whole ? parts.get(0) : union(kind, name, parts), type));
    }

    private UnionCol union(String kind, String name, List<Col> parts) {
        int number = faults.name(name);
        return unions.computeIfAbsent(
                kind + "." + name, k -> new UnionCol(parts, row -> faults.lack(Lack.NO_SUCH_NAME, row, number)));
    }

    /** A person's value. */
    Optional<Ref> value(String name) {
        int row = layout.value(name);
        return row < 0
                ? Optional.empty()
                : Optional.of(new Ref.Cell(name, columns.need(Table.VALUES, "is"), row, valueType(row)));
    }

    /** A name of the plan, or a constant of practice. */
    Optional<Ref> plan(String name) {
        Optional<Ref> setting =
                columns.find(Table.PLAN, name).map(col -> new Ref.Cell(name, col, layout.base(Table.PLAN), type(col)));
        if (setting.isPresent()) {
            return setting;
        }
        int row = layout.practice(name);
        return row < 0
                ? Optional.empty()
                : Optional.of(new Ref.Cell(name, columns.need(Table.PRACTICE, "is"), row, practiceType(name)));
    }

    private Type practiceType(String name) {
        return types.of(farwatt.catalogue.Catalogue.need(Table.PRACTICE, name).kind());
    }

    Optional<Ref.Fixed> row(String id) {
        int row = layout.siteRow(id);
        return row < 0
                ? Optional.empty()
                : Optional.of(new Ref.Fixed(layout.id(row), row, RowKinds.of(layout.table(row))));
    }

    Optional<Source> table(String name) {
        return Table.of(name).flatMap(table -> {
            RowSet set = sets.get(table);
            boolean hangs = table == Table.SWITCHES || table == Table.RUNS || table == Table.DEVICES;
            Set<String> nodes = hangs ? Set.of(RowKinds.NODE, "source", "switch") : Set.of();
            return set == null ? Optional.empty() : Optional.of(new Source(set, RowKinds.of(table), nodes));
        });
    }

    List<Item> members(String kind) {
        Map<String, Item> items = new LinkedHashMap<>();
        for (Table table : RowKinds.tables(kind)) {
            for (String relation : RELATIONS) {
                if (relations.of(table, relation).isPresent()) {
                    items.put(relation, item(relation, Item.What.RELATION, table, relation));
                }
            }
            for (Col col : columns.of(table)) {
                if (!(col.name.kind() instanceof Kind.RowOf)) {
                    items.putIfAbsent(col.key(), item(col.name, Item.What.COLUMN, type(col)));
                }
            }
        }
        return List.copyOf(items.values());
    }

    private Item item(String name, Item.What what, Table table, String relation) {
        String to = RowKinds.called(RowKinds.ledTo(relation));
        Type type = new Type.RowOf(RowKinds.ledTo(relation));
        String sentence =
                columns.find(table, name).map(col -> col.name.sentence()).orElse("Leads to " + to + ".");
        return new Item(name, what, type, "", sentence);
    }

    private Item item(Name name, Item.What what, Type type) {
        return new Item(name.key(), what, type, name.kind().symbol(units), name.sentence());
    }

    List<Item> values() {
        List<Item> items = new ArrayList<>();
        for (int row = layout.base(Table.VALUES); row < layout.end(Table.VALUES); row++) {
            Type type = valueType(row);
            items.add(new Item(
                    layout.id(row), Item.What.VALUE, type, type.unit(units).symbol(), "A value of this plan."));
        }
        return items;
    }

    List<Item> planItems() {
        List<Item> items = new ArrayList<>();
        columns.of(Table.PLAN).forEach(col -> items.add(item(col.name, Item.What.PLAN, type(col))));
        for (Name name : farwatt.catalogue.Catalogue.of(Table.PRACTICE)) {
            items.add(item(name, Item.What.PLAN, types.of(name.kind())));
        }
        return items;
    }

    List<Item> tableItems() {
        return sets.keySet().stream()
                .map(table ->
                        new Item(table.key(), Item.What.TABLE, Type.Plain.UNKNOWN, "", "All " + table.key() + "."))
                .toList();
    }

    List<Item> rowItems() {
        List<Item> items = new ArrayList<>();
        for (Table table : Table.site()) {
            for (int row = layout.base(table); row < layout.end(table); row++) {
                String kind = RowKinds.of(table);
                items.add(new Item(layout.id(row), Item.What.ROW, new Type.RowOf(kind), "", RowKinds.called(kind)));
            }
        }
        return items;
    }
}
