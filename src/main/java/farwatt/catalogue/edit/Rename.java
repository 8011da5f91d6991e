package farwatt.catalogue.edit;

import farwatt.catalogue.CatalogueCode;
import farwatt.catalogue.Wording;
import farwatt.catalogue.Wording.Renaming;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gives a row another id and rewrites whatever names it: cells, expressions, scenarios. */
public final class Rename {
    private Rename() {}

    /**
     * The changes that rename the row at a place. Of two rows with the same id, references mean the first: renaming
     * the second leaves them alone.
     *
     * @throws Refusal if the new name is blank, taken, or cannot be used where it must be
     */
    public static Change.Batch of(Plan plan, Table table, int place, String to, Wording wording) throws Refusal {
        Row row = plan.rows(table).at(place);
        check(plan, table, place, to);
        List<Change> changes = new ArrayList<>();
        if (isMeant(plan, table, place)) {
            References references = new References(plan, wording, new Renaming(table, row.id(), to));
            for (Table each : Table.values()) {
                rows(references, plan, each, each == table ? place : -1, to, changes);
            }
            List<Scenario> scenarios =
                    plan.scenarios().stream().map(references::scenario).toList();
            if (!scenarios.equals(plan.scenarios())) {
                changes.add(new Change.SetScenarios(scenarios));
            }
        } else {
            changes.add(new Change.ReplaceRow(table, place, row.renamed(to)));
        }
        return new Change.Batch(Messages.text(CatalogueCode.EDIT_RENAME, row.id(), to), changes);
    }

    private static void rows(
            References references, Plan plan, Table table, int renamed, String to, List<Change> changes) {
        Rows rows = plan.rows(table);
        for (int i = 0; i < rows.size(); i++) {
            Row row = references.row(table, rows.at(i));
            Row now = i == renamed ? row.renamed(to) : row;
            if (!now.equals(rows.at(i))) {
                changes.add(new Change.ReplaceRow(table, i, now));
            }
        }
    }

    /** True where a reference to the row's id finds this row. */
    static boolean isMeant(Plan plan, Table table, int place) {
        String id = plan.rows(table).at(place).id();
        return table.isSite()
                ? plan.find(id).equals(Optional.of(new Plan.Spot(table, place)))
                : plan.rows(table).place(id) == place;
    }

    private static void check(Plan plan, Table table, int place, String to) throws Refusal {
        String from = plan.rows(table).at(place).id();
        Place at = Place.row(table.key(), from);
        if (to.isBlank()) {
            throw new Refusal(Notice.of(Level.FAIL, CatalogueCode.NO_NAME, at, from));
        }
        if ((table == Table.VALUES || table == Table.COLUMNS) && !StepPath.isName(to)) {
            throw new Refusal(Notice.of(Level.FAIL, CatalogueCode.NOT_A_NAME, at, to));
        }
        for (Table other : table.isSite() ? Table.site() : List.of(table)) {
            int taken = plan.rows(other).place(to);
            if (taken >= 0 && !(other == table && Rows.fold(from).equals(Rows.fold(to)))) {
                throw new Refusal(Notice.of(Level.FAIL, CatalogueCode.TAKEN_NAME, at, to, other.key()));
            }
        }
    }
}
