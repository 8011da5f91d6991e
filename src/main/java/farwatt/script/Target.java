package farwatt.script;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.CellReader;
import farwatt.catalogue.Name;
import farwatt.catalogue.PlanCells;
import farwatt.plan.Plan;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * The cell that a path names.
 *
 * @param table whose row it is in
 * @param row id as it stands in the plan; "" for the plan's settings
 * @param name of the column
 * @param reader knows what the cell may hold
 */
record Target(Table table, String row, String name, CellReader reader) {

    /** The cell of a path; a failure with a near name where there is none. */
    static Target of(Plan plan, PlanCells cells, String path) {
        StepPath parts = StepPath.of(path).orElseThrow(() -> ScriptFailure.of(ScriptCode.WRONG_PATH, path));
        if (parts.row().isEmpty()) {
            return bare(plan, cells, parts.name());
        }
        Plan.Spot spot = plan.find(parts.row())
                .orElseThrow(
                        () -> ScriptFailure.of(ScriptCode.NO_ROW, parts.row(), Near.hint(parts.row(), plan.ids())));
        String id = plan.rows(spot.table()).at(spot.place()).id();
        return cell(cells, spot.table(), id, parts.name());
    }

    private static Target bare(Plan plan, PlanCells cells, String name) {
        if (plan.rows(Table.VALUES).place(name) >= 0) {
            return cell(cells, Table.VALUES, name, "is");
        }
        if (Catalogue.find(Table.PLAN, name).isPresent()) {
            return cell(cells, Table.PLAN, "", name);
        }
        if (plan.rows(Table.PRACTICE).place(name) >= 0
                || Catalogue.find(Table.PRACTICE, name).isPresent()) {
            return cell(cells, Table.PRACTICE, name, "is");
        }
        if (plan.find(name).isPresent()) {
            throw ScriptFailure.of(ScriptCode.ROW_ALONE, name);
        }
        List<String> known = new ArrayList<>();
        plan.rows(Table.VALUES).forEach(row -> known.add(row.id()));
        Catalogue.cells(Table.PLAN).forEach(each -> known.add(each.key()));
        Catalogue.of(Table.PRACTICE).forEach(each -> known.add(each.key()));
        throw ScriptFailure.of(ScriptCode.NO_NAME, name, Near.hint(name, known));
    }

    /** The cell of a row's column. */
    static Target cell(PlanCells cells, Table table, String row, String name) {
        CellReader reader = cells.reader(table, row, name).orElseThrow(() -> noCell(cells, table, row, name));
        return new Target(table, row, name, reader);
    }

    private static ScriptFailure noCell(PlanCells cells, Table table, String row, String name) {
        boolean known =
                Catalogue.find(table, name).isPresent() || cells.own().of(table).containsKey(name);
        if (known) {
            return ScriptFailure.of(ScriptCode.WORKED_OUT, name, table.key());
        }
        List<String> names =
                new ArrayList<>(Catalogue.cells(table).stream().map(Name::key).toList());
        names.addAll(cells.own().of(table).keySet());
        return ScriptFailure.of(ScriptCode.NO_CELL, row.isEmpty() ? "The plan" : row, name, Near.hint(name, names));
    }

    /** True for a notice's place that is this cell; of values and constants the name alone is said. */
    boolean isAt(Place place) {
        boolean cell = place.row().equals(row) && place.name().equals(name);
        return cell || (place.row().isEmpty() && place.name().equals(row) && name.equals("is"));
    }
}
