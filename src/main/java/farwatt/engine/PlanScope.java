package farwatt.engine;

import farwatt.language.Item;
import farwatt.language.Ref;
import farwatt.language.Scope;
import farwatt.language.Source;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What a text may refer to from where it stands: first the row's own names, then values, then the plan's, then rows.
 *
 * @param names of the plan
 * @param here kind of the row whose names are bare; "" for none
 * @param cell kind of the row that {@code this} is; "" for none
 */
record PlanScope(Names names, String here, String cell) implements Scope {
    @Override
    public Optional<Ref> bare(String name) {
        Optional<Ref> own = here.isEmpty() ? Optional.empty() : names.member(here, name);
        return own.or(() -> names.value(name))
                .or(() -> names.plan(name))
                .or(() -> names.row(name).map(row -> (Ref) row));
    }

    @Override
    public Optional<Ref.Fixed> row(String id) {
        return names.row(id);
    }

    @Override
    public Optional<String> self() {
        return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
    }

    @Override
    public Optional<Ref> member(String kind, String name) {
        return names.member(kind, name);
    }

    @Override
    public Optional<Ref> plan(String name) {
        return names.plan(name);
    }

    @Override
    public Optional<Source> table(String name) {
        return names.table(name);
    }

    @Override
    public Optional<String> join(String kind, String other) {
        return RowKinds.join(kind, other);
    }

    @Override
    public Scope inside(String kind) {
        return new PlanScope(names, kind, cell);
    }

    @Override
    public Collection<Item> items() {
        List<Item> all = new ArrayList<>();
        if (!here.isEmpty()) {
            all.addAll(names.members(here));
        }
        all.addAll(names.values());
        all.addAll(names.planItems());
        all.addAll(names.rowItems());
        return all;
    }

    @Override
    public Collection<Item> members(String kind) {
        return names.members(kind);
    }

    @Override
    public Collection<Item> planItems() {
        return names.planItems();
    }

    @Override
    public Collection<Item> tables() {
        return names.tableItems();
    }

    @Override
    public String called(String kind) {
        return RowKinds.called(kind);
    }

    @Override
    public double word(String text) {
        return names.texts.number(text);
    }

    @Override
    public Units units() {
        return names.units;
    }
}
