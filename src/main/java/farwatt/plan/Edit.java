package farwatt.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A change done: the plan after it and the change that undoes it exactly, order of cells and keys included.
 *
 * @param plan after the change
 * @param inverse gives back a plan equal to the one before
 */
public record Edit(Plan plan, Change inverse) {
    /**
     * Does a change.
     *
     * @throws IllegalArgumentException if the row it names is not there: a bug in the caller
     */
    public static Edit apply(Plan plan, Change change) {
        if (change instanceof Change.SetCell set) {
            return setCell(plan, set);
        }
        if (change instanceof Change.AddRow add) {
            Rows more = plan.rows(add.table()).inserted(add.place(), add.row());
            return new Edit(
                    plan.with(add.table(), more),
                    new Change.DropRow(add.table(), add.place(), add.row().id()));
        }
        if (change instanceof Change.DropRow drop) {
            return dropRow(plan, drop);
        }
        if (change instanceof Change.ReplaceRow replace) {
            Rows rows = plan.rows(replace.table());
            Row before = rows.at(replace.place());
            return new Edit(
                    plan.with(replace.table(), rows.with(replace.place(), replace.row())),
                    new Change.ReplaceRow(replace.table(), replace.place(), before));
        }
        if (change instanceof Change.SetScenarios set) {
            return new Edit(plan.withScenarios(set.scenarios()), new Change.SetScenarios(plan.scenarios()));
        }
        if (change instanceof Change.SetRest set) {
            return setRest(plan, set);
        }
        return batch(plan, (Change.Batch) change);
    }

    private static Edit setCell(Plan plan, Change.SetCell set) {
        Rows rows = plan.rows(set.table());
        int place = set.table() == Table.PLAN ? 0 : rows.place(set.id());
        if (place < 0) {
            throw new IllegalArgumentException(
                    "no row " + set.id() + " in " + set.table().key());
        }
        Row row = rows.at(place);
        Row changed = set.cell().map(cell -> row.with(set.name(), cell)).orElseGet(() -> row.without(set.name()));
        Optional<Cell> before = row.cell(set.name());
        boolean sameOrder = before.isPresent() == set.cell().isPresent() || before.isEmpty();
        Change inverse = sameOrder
                ? new Change.SetCell(set.table(), set.id(), set.name(), before)
                : new Change.ReplaceRow(set.table(), place, row);
        return new Edit(plan.with(set.table(), rows.with(place, changed)), inverse);
    }

    private static Edit dropRow(Plan plan, Change.DropRow drop) {
        Rows rows = plan.rows(drop.table());
        Row row = rows.at(drop.place());
        if (!row.id().equals(drop.id())) {
            throw new IllegalArgumentException("row " + drop.place() + " is " + row.id() + ", not " + drop.id());
        }
        return new Edit(
                plan.with(drop.table(), rows.without(drop.place())),
                new Change.AddRow(drop.table(), drop.place(), row));
    }

    private static Edit setRest(Plan plan, Change.SetRest set) {
        Map<String, String> rest = new LinkedHashMap<>(plan.rest());
        Optional<String> before = Optional.ofNullable(rest.get(set.key()));
        set.json().ifPresentOrElse(json -> rest.put(set.key(), json), () -> rest.remove(set.key()));
        return new Edit(plan.withRest(rest), new Change.SetRest(set.key(), before));
    }

    private static Edit batch(Plan plan, Change.Batch batch) {
        Plan now = plan;
        List<Change> inverses = new ArrayList<>();
        for (Change part : batch.changes()) {
            Edit edit = apply(now, part);
            now = edit.plan();
            inverses.add(edit.inverse());
        }
        Collections.reverse(inverses);
        return new Edit(now, new Change.Batch(batch.label(), inverses));
    }
}
