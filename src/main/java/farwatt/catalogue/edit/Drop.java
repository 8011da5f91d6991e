package farwatt.catalogue.edit;

import farwatt.catalogue.CatalogueCode;
import farwatt.catalogue.Wording;
import farwatt.catalogue.Wording.Renaming;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Table;
import farwatt.report.Messages;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A row taken away, a node together with the runs that touch it.
 *
 * @param change takes all of it away in one step
 * @param alsoGone the runs that go with the node
 * @param stillRefer cells and scenarios that name what is gone
 */
public record Drop(Change.Batch change, List<Place> alsoGone, List<Place> stillRefer) {
    public Drop {
        alsoGone = List.copyOf(alsoGone);
        stillRefer = List.copyOf(stillRefer);
    }

    /** What dropping the row at a place does. Of two rows with the same id, dropping one leaves the runs alone. */
    public static Drop of(Plan plan, Table table, int place, Wording wording) {
        String id = plan.rows(table).at(place).id();
        Change.Batch change = change(plan, table, place);
        List<Place> alsoGone = new ArrayList<>();
        for (Change each : change.changes().subList(1, change.changes().size())) {
            if (each instanceof Change.DropRow run) {
                alsoGone.add(0, Place.row(Table.RUNS.key(), run.id()));
            }
        }
        Set<Place> refer = new LinkedHashSet<>();
        if (isLast(plan, table, id)) {
            Plan after = Edit.apply(plan, change).plan();
            refer.addAll(mentions(plan, after, wording, new Renaming(table, id, id + " 2")));
            for (Place run : alsoGone) {
                refer.addAll(mentions(plan, after, wording, new Renaming(Table.RUNS, run.row(), run.row() + " 2")));
            }
        }
        return new Drop(change, alsoGone, List.copyOf(refer));
    }

    /** The change alone, without looking for what still refers. */
    public static Change.Batch change(Plan plan, Table table, int place) {
        String id = plan.rows(table).at(place).id();
        List<Change> changes = new ArrayList<>();
        changes.add(new Change.DropRow(table, place, id));
        if (isNode(table) && isLast(plan, table, id)) {
            dropRuns(plan.rows(Table.RUNS), id, changes);
        }
        return new Change.Batch(Messages.text(CatalogueCode.EDIT_DROP, id), changes);
    }

    private static boolean isNode(Table table) {
        return table == Table.SOURCES || table == Table.SWITCHES || table == Table.DEVICES;
    }

    /** Last places first, so that each place still holds when its turn comes. */
    private static void dropRuns(Rows runs, String node, List<Change> changes) {
        for (int i = runs.size() - 1; i >= 0; i--) {
            Row run = runs.at(i);
            if (same(run.text("from"), node) || same(run.text("to"), node)) {
                changes.add(new Change.DropRow(Table.RUNS, i, run.id()));
            }
        }
    }

    private static boolean isLast(Plan plan, Table table, String id) {
        int count = 0;
        for (Table other : table.isSite() ? Table.site() : List.of(table)) {
            for (Row row : plan.rows(other)) {
                count += same(row.id(), id) ? 1 : 0;
            }
        }
        return count == 1;
    }

    private static List<Place> mentions(Plan before, Plan after, Wording wording, Renaming renaming) {
        References references = new References(before, wording, renaming);
        List<Place> found = new ArrayList<>();
        for (Table table : Table.values()) {
            for (Row row : after.rows(table)) {
                for (String name : references.cells(table, row)) {
                    found.add(new Place(table.key(), row.id(), name));
                }
            }
        }
        for (Scenario scenario : after.scenarios()) {
            if (!references.scenario(scenario).equals(scenario)) {
                found.add(Place.row("scenarios", scenario.id()));
            }
        }
        return found;
    }

    private static boolean same(String a, String b) {
        return Rows.fold(a).equals(Rows.fold(b));
    }
}
