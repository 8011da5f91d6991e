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
     * @throws IllegalArgumentException if the row or place it names is not there: a bug in the caller
     */
    public static Edit apply(Plan plan, Change change) {
        if (change instanceof Change.SetCell set) {
            return setCell(plan, set);
        }
        if (change instanceof Change.AddRow add) {
            return addRow(plan, add);
        }
        if (change instanceof Change.DropRow drop) {
            return dropRow(plan, drop);
        }
        if (change instanceof Change.ReplaceRow replace) {
            return replaceRow(plan, replace);
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
        InPlace done = InPlace.make(plan, List.of(set));
        return new Edit(done.plan(), done.inverses().get(0));
    }

    private static Edit addRow(Plan plan, Change.AddRow add) {
        Rows rows = plan.rows(add.table());
        check(add.place() >= 0 && add.place() <= rows.size(), add.table(), add.place());
        return new Edit(
                plan.with(add.table(), rows.inserted(add.place(), add.row())),
                new Change.DropRow(add.table(), add.place(), add.row().id()));
    }

    private static Edit replaceRow(Plan plan, Change.ReplaceRow replace) {
        Rows rows = plan.rows(replace.table());
        check(replace.place() >= 0 && replace.place() < rows.size(), replace.table(), replace.place());
        Row before = rows.at(replace.place());
        return new Edit(
                plan.with(replace.table(), rows.with(replace.place(), replace.row())),
                new Change.ReplaceRow(replace.table(), replace.place(), before));
    }

    private static void check(boolean there, Table table, int place) {
        if (!there) {
            throw new IllegalArgumentException("no place " + place + " in " + table.key());
        }
    }

    private static Edit dropRow(Plan plan, Change.DropRow drop) {
        Rows rows = plan.rows(drop.table());
        check(drop.place() >= 0 && drop.place() < rows.size(), drop.table(), drop.place());
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
        Change back = new Change.SetRest(set.key(), before);
        boolean taken = before.isPresent() && set.json().isEmpty();
        return new Edit(plan.withRest(rest), taken ? backInPlace(plan.rest(), set.key(), back) : back);
    }

    /** What is put back goes to the end, so the parts that came after it are taken and put back as well. */
    private static Change backInPlace(Map<String, String> rest, String key, Change back) {
        List<String> after = new ArrayList<>(rest.keySet());
        after.subList(0, after.indexOf(key) + 1).clear();
        List<Change> changes = new ArrayList<>();
        after.forEach(other -> changes.add(new Change.SetRest(other, Optional.empty())));
        changes.add(back);
        after.forEach(other -> changes.add(new Change.SetRest(other, Optional.ofNullable(rest.get(other)))));
        return after.isEmpty() ? back : new Change.Batch("", changes);
    }

    private static Edit batch(Plan plan, Change.Batch batch) {
        Plan now = plan;
        List<Change> inverses = new ArrayList<>();
        List<Change> changes = batch.changes();
        int at = 0;
        while (at < changes.size()) {
            int end = InPlace.end(now, changes, at);
            if (end > at) {
                InPlace done = InPlace.make(now, changes.subList(at, end));
                now = done.plan();
                inverses.addAll(done.inverses());
                at = end;
            } else {
                Edit edit = apply(now, changes.get(at));
                now = edit.plan();
                inverses.add(edit.inverse());
                at++;
            }
        }
        Collections.reverse(inverses);
        return new Edit(now, new Change.Batch(batch.label(), inverses));
    }
}
