package farwatt.catalogue.edit;

import farwatt.catalogue.CatalogueCode;
import farwatt.plan.Change;
import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.List;

/**
 * A copy of a row, named after the original with the next free number, ports left open.
 *
 * @param change adds it right after the original
 * @param id the copy's id
 */
public record Copy(Change.Batch change, String id) {
    /**
     * Copies the row at a place.
     *
     * @param naming gives the id; one for a whole series of copies
     */
    public static Copy row(Plan plan, Table table, int place, Naming naming) {
        Row original = plan.rows(table).at(place);
        Row copy = original.renamed(naming.next(original.id())).without("port");
        return of(original, copy, List.of(new Change.AddRow(table, place + 1, copy)));
    }

    /**
     * Copies a switch or device together with the run that feeds it; the copied run leaves the same node.
     *
     * @param naming gives the ids; one for a whole series of copies
     */
    public static Copy withRun(Plan plan, Table table, int place, Naming naming) {
        Copy node = row(plan, table, place, naming);
        String original = plan.rows(table).at(place).id();
        List<Change> changes = new ArrayList<>(node.change.changes());
        Rows runs = plan.rows(Table.RUNS);
        for (int i = 0; i < runs.size(); i++) {
            if (Rows.fold(runs.at(i).text("to")).equals(Rows.fold(original))) {
                Row run = runs.at(i);
                Row copy = run.renamed(naming.next(run.id())).without("port").with("to", node.id);
                changes.add(new Change.AddRow(Table.RUNS, i + 1, copy));
                break;
            }
        }
        return new Copy(new Change.Batch(node.change.label(), changes), node.id);
    }

    private static Copy of(Row original, Row copy, List<Change> changes) {
        String label = Messages.text(CatalogueCode.EDIT_COPY, original.id());
        return new Copy(new Change.Batch(label, changes), copy.id());
    }
}
