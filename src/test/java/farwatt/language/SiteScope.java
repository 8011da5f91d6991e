package farwatt.language;

import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The scope of a cell of {@link Site}. */
record SiteScope(Site site, Optional<String> kind, Optional<String> self) implements Scope {
    private static final List<String> TABLES = List.of("devices", "runs", "switches", "sources", "zones", "bundles");
    private static final Set<String> HANGING = Set.of("devices", "runs", "switches");

    @Override
    public Optional<Ref> bare(String name) {
        Optional<Ref> own = kind.flatMap(k -> member(k, name));
        if (own.isPresent()) {
            return own;
        }
        Site.Col value = site.values.getOrDefault(name, site.plan.get(name));
        if (value != null) {
            return Optional.of(new Ref.Cell(name, value, 0, value.type));
        }
        return row(name).map(ref -> ref);
    }

    @Override
    public Optional<Ref.Fixed> row(String id) {
        for (int row = 0; row < site.ids.size(); row++) {
            if (site.ids.get(row).toLowerCase(Locale.ROOT).equals(id.toLowerCase(Locale.ROOT))) {
                return Optional.of(new Ref.Fixed(site.ids.get(row), row, site.kinds.get(row)));
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Ref> member(String ofKind, String name) {
        return Optional.ofNullable(site.members.getOrDefault(ofKind, Map.of()).get(name))
                .map(Site.Col::ref);
    }

    @Override
    public Optional<Ref> plan(String name) {
        return Optional.ofNullable(site.plan.get(name)).map(c -> new Ref.Cell(name, c, 0, c.type));
    }

    @Override
    public Optional<Source> table(String name) {
        if (!TABLES.contains(name)) {
            return Optional.empty();
        }
        String of = name.equals("switches") ? "switch" : name.substring(0, name.length() - 1);
        return Optional.of(new Source(site.set(of), of, HANGING.contains(name) ? Site.NODES : Set.of()));
    }

    @Override
    public Optional<String> join(String one, String other) {
        if (one.equals(other)) {
            return Optional.of(one);
        }
        boolean nodes = Site.NODES.contains(one) && Site.NODES.contains(other);
        return nodes ? Optional.of("node") : Optional.empty();
    }

    @Override
    public Scope inside(String inner) {
        return new SiteScope(site, Optional.of(inner), self);
    }

    @Override
    public Collection<Item> items() {
        List<Item> all = new ArrayList<>();
        kind.ifPresent(k -> all.addAll(members(k)));
        site.values.values().forEach(c -> all.add(new Item(c.name, Item.What.VALUE, c.type, "", "A value.")));
        all.addAll(planItems());
        for (int row = 0; row < site.ids.size(); row++) {
            Type type = new Type.RowOf(site.kinds.get(row));
            all.add(new Item(site.ids.get(row), Item.What.ROW, type, "", "A row."));
        }
        return all;
    }

    @Override
    public Collection<Item> members(String ofKind) {
        return site.members.getOrDefault(ofKind, Map.of()).values().stream()
                .map(Site.Col::item)
                .toList();
    }

    @Override
    public Collection<Item> planItems() {
        return site.plan.values().stream()
                .map(c -> new Item(c.name, Item.What.PLAN, c.type, "", "Of the plan."))
                .toList();
    }

    @Override
    public Collection<Item> tables() {
        return TABLES.stream()
                .map(t -> new Item(t, Item.What.TABLE, Type.Plain.UNKNOWN, "", "A table."))
                .toList();
    }

    @Override
    public String called(String ofKind) {
        return ofKind.equals("node") ? "a source or switch" : "a " + ofKind;
    }

    @Override
    public double word(String text) {
        return site.word(text);
    }

    @Override
    public Units units() {
        return Site.UNITS;
    }
}
