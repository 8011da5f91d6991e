package farwatt.file;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.CellReader;
import farwatt.catalogue.PlanCells;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Writes scenarios; what their steps set is put in the canonical form of the cell it is set in. */
final class ScenarioText {
    private final StringBuilder out;
    private final Plan plan;
    private final RowText rows;
    private final PlanCells cells;
    /** By folded id: the table of a row that some scenario adds. */
    private final Map<String, Table> added = new HashMap<>();

    ScenarioText(StringBuilder out, Plan plan, RowText rows, PlanCells cells) {
        this.out = out;
        this.plan = plan;
        this.rows = rows;
        this.cells = cells;
        for (Scenario scenario : plan.scenarios()) {
            for (Step step : scenario.steps()) {
                if (step instanceof Step.Add add) {
                    Table.of(add.table())
                            .ifPresent(t -> added.put(Rows.fold(add.row().id()), t));
                }
            }
        }
    }

    void scenario(Scenario scenario) {
        text("{", "id", scenario.id());
        if (!scenario.on().isEmpty()) {
            text(", ", "on", scenario.on());
        }
        if (!scenario.steps().isEmpty()) {
            out.append(", \"changes\": [");
            String comma = "";
            for (Step step : scenario.steps()) {
                out.append(comma);
                step(step);
                comma = ", ";
            }
            out.append(']');
        }
        rest(scenario.rest());
    }

    private void step(Step step) {
        if (step instanceof Step.Set set) {
            text("{", "set", set.path());
            out.append(", \"to\": ");
            rows.value(StepPath.of(set.path()).flatMap(this::reader), set.to());
            rest(set.rest());
        } else if (step instanceof Step.Add add) {
            Optional<Table> table = Table.of(add.table());
            text("{", "add", add.table());
            out.append(", \"row\": ");
            rows.row(table, table.map(Table::idKey).orElse("id"), add.row());
            rest(add.rest());
        } else if (step instanceof Step.Drop drop) {
            text("{", "drop", drop.id());
            rest(drop.rest());
        } else if (step instanceof Step.Unread unread) {
            out.append(Json.oneLine(unread.json()));
        }
    }

    private Optional<CellReader> reader(StepPath path) {
        if (path.row().isEmpty()) {
            return bare(path.name());
        }
        Optional<Table> table = plan.find(path.row()).map(Plan.Spot::table);
        return table.or(() -> Optional.ofNullable(added.get(Rows.fold(path.row()))))
                .flatMap(t -> cells.reader(t, path.row(), path.name()));
    }

    /** A bare name is a value, else a setting of the plan, else a constant of practice. */
    private Optional<CellReader> bare(String name) {
        if (plan.rows(Table.VALUES).place(name) < 0) {
            if (Catalogue.find(Table.PLAN, name).isPresent()) {
                return cells.reader(Table.PLAN, "", name);
            }
            if (Catalogue.find(Table.PRACTICE, name).isPresent()) {
                return cells.reader(Table.PRACTICE, name, "is");
            }
        }
        return cells.reader(Table.VALUES, name, "is");
    }

    private void text(String before, String key, String text) {
        Json.string(out.append(before), key);
        Json.string(out.append(": "), text);
    }

    private void rest(Map<String, String> rest) {
        rest.forEach((key, json) -> {
            Json.string(out.append(", "), key);
            out.append(": ").append(Json.oneLine(json));
        });
        out.append('}');
    }
}
