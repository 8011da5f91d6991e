package farwatt.window.grid;

import farwatt.catalogue.edit.Copy;
import farwatt.catalogue.edit.Drop;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is done to whole rows: insert, duplicate, remove. Each is one step. */
final class RowWork {
    /** Looking for what still names a row goes through the whole plan, so it is done for so many rows at most. */
    private static final int LOOKED_FOR = 20;

    private static final int NAMED = 5;

    private final GridModel model;

    RowWork(GridModel model) {
        this.model = model;
    }

    /** Adds an empty row after the last chosen one and goes there. */
    void insert() {
        Table table = model.table();
        if (!NewRows.canGrow(table)) {
            say(GridCode.NO_MORE_ROWS, table.key());
            return;
        }
        int place = model.rowCount() == 0
                ? model.rows().size()
                : model.place(model.range().bottom()) + 1;
        Row row = new NewRows(model.shown().plan(), table).row();
        model.sheet().apply(Messages.text(GridCode.STEP_INSERT, row.id()), new Change.AddRow(table, place, row));
        model.pickPlace(place, 0);
    }

    /** Copies the chosen rows, switches and devices with the runs that feed them, each right after its original. */
    void duplicate() {
        Table table = model.table();
        if (!NewRows.canGrow(table) || model.isEmpty()) {
            return;
        }
        NewRows fresh = new NewRows(model.shown().plan(), table);
        Plan plan = model.shown().plan();
        List<Change> changes = new ArrayList<>();
        List<Integer> places = places();
        for (int i = 0; i < places.size(); i++) {
            Change.Batch copy = copy(plan, table, places.get(i) + i, fresh);
            plan = Edit.apply(plan, copy).plan();
            changes.addAll(copy.changes());
        }
        String what = Messages.text(GridCode.STEP_DUPLICATE, places.size());
        model.sheet().apply(what, new Change.Batch(what, changes));
        model.pickPlace(places.get(0) + 1, model.range().column());
    }

    private static Change.Batch copy(Plan plan, Table table, int place, NewRows fresh) {
        if (NewRows.isNamed(table)) {
            Row row = plan.rows(table).at(place);
            Change add = new Change.AddRow(table, place + 1, row.renamed(fresh.next(row.id())));
            return new Change.Batch("", List.of(add));
        }
        return table == Table.SWITCHES || table == Table.DEVICES
                ? Copy.withRun(plan, table, place, fresh.naming()).change()
                : Copy.row(plan, table, place, fresh.naming()).change();
    }

    /** Takes the chosen rows away, nodes with the runs that touch them, and says what went along and what is left. */
    void remove() {
        Table table = model.table();
        if (!NewRows.canGrow(table) || model.isEmpty()) {
            return;
        }
        Plan plan = model.shown().plan();
        List<Change> changes = new ArrayList<>();
        Set<Place> gone = new LinkedHashSet<>();
        Set<Place> named = new LinkedHashSet<>();
        List<Integer> places = places();
        for (int i = places.size() - 1; i >= 0; i--) {
            Change.Batch batch;
            if (places.size() <= LOOKED_FOR) {
                Drop drop = Drop.of(plan, table, places.get(i), model.sheet().wording());
                batch = drop.change();
                gone.addAll(drop.alsoGone());
                named.addAll(drop.stillRefer());
            } else {
                batch = Drop.change(plan, table, places.get(i));
            }
            plan = Edit.apply(plan, batch).plan();
            changes.addAll(batch.changes());
        }
        Plan after = plan;
        named.removeIf(place -> isGone(after, place));
        String what = Messages.text(GridCode.STEP_REMOVE, places.size());
        model.sheet().apply(what, new Change.Batch(what, changes));
        tell(GridCode.REMOVED_TOO, Level.NOTE, gone);
        tell(GridCode.STILL_NAMED, Level.WARN, named);
    }

    private static boolean isGone(Plan after, Place place) {
        return Table.of(place.table())
                .filter(table -> after.rows(table).place(place.row()) < 0)
                .isPresent();
    }

    private void tell(GridCode code, Level level, Set<Place> places) {
        if (!places.isEmpty()) {
            String some = places.stream().limit(NAMED).map(Place::text).collect(Collectors.joining(", "));
            String all = places.size() > NAMED ? some + " …" : some;
            model.sheet().say(Notice.of(level, code, Place.NONE, places.size(), all));
        }
    }

    /** The chosen rows' places in the plan, in its order. */
    private List<Integer> places() {
        List<Integer> places = new ArrayList<>();
        for (int row = model.range().top(); row <= model.range().bottom(); row++) {
            places.add(model.place(row));
        }
        places.sort(null);
        return places;
    }

    private void say(GridCode code, Object... parts) {
        model.sheet().say(Notice.of(Level.WARN, code, Place.NONE, parts));
    }
}
