package farwatt.window.desk;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.window.WindowCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns edits made while a scenario is looked at into steps of that scenario; the plan below stays as it is. */
final class ScenarioEdits {
    private ScenarioEdits() {}

    /**
     * The change of the plan that writes an edit into a scenario.
     *
     * @param shown the plan with the scenario put in, as it was edited
     * @throws Refusal if the edit is none that a scenario can hold
     */
    static Change into(Plan base, Plan shown, String scenario, Change edit) throws Refusal {
        if (edit instanceof Change.SetScenarios || edit instanceof Change.SetRest) {
            return edit;
        }
        List<Scenario> all = new ArrayList<>(base.scenarios());
        for (int i = 0; i < all.size(); i++) {
            Scenario each = all.get(i);
            if (Rows.fold(each.id()).equals(Rows.fold(scenario))) {
                List<Step> steps = new ArrayList<>(each.steps());
                add(base, shown, steps, edit);
                all.set(i, new Scenario(each.id(), each.on(), steps, each.rest()));
            }
        }
        Change change = new Change.SetScenarios(all);
        return edit instanceof Change.Batch batch ? new Change.Batch(batch.label(), List.of(change)) : change;
    }

    private static void add(Plan base, Plan shown, List<Step> steps, Change edit) throws Refusal {
        if (edit instanceof Change.Batch batch) {
            for (Change each : batch.changes()) {
                add(base, shown, steps, each);
            }
        } else if (edit instanceof Change.SetCell set) {
            set(base, steps, set);
        } else if (edit instanceof Change.AddRow row && row.table() != Table.PLAN) {
            steps.add(new Step.Add(row.table().key(), row.row()));
        } else if (edit instanceof Change.DropRow drop && drop.table().isSite()) {
            drop(steps, drop.id(), shown.rows(drop.table()).row(drop.id()));
        } else {
            throw new Refusal(Notice.of(Level.FAIL, WindowCode.IN_SCENARIO, Place.NONE, what(edit)));
        }
    }

    private static String what(Change edit) {
        return edit instanceof Change.ReplaceRow replace
                ? "A new name for " + replace.row().id()
                : "This edit";
    }

    private static void set(Plan base, List<Step> steps, Change.SetCell set) throws Refusal {
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (steps.get(i) instanceof Step.Add add && isOf(add, set)) {
                Row row = set.cell()
                        .map(cell -> add.row().with(set.name(), cell))
                        .orElse(add.row().without(set.name()));
                steps.set(i, new Step.Add(add.table(), row, add.rest()));
                return;
            }
        }
        String path = path(set)
                .orElseThrow(() -> new Refusal(Notice.of(Level.FAIL, WindowCode.IN_SCENARIO, Place.NONE, set.name())));
        steps.removeIf(step -> step instanceof Step.Set other && sameCell(other.path(), path));
        Optional<Cell> before = cell(base, set);
        if (!before.equals(set.cell())) {
            steps.add(new Step.Set(path, set.cell().orElse(Cell.text(""))));
        }
    }

    private static boolean isOf(Step.Add add, Change.SetCell set) {
        return add.table().equals(set.table().key())
                && Rows.fold(add.row().id()).equals(Rows.fold(set.id()));
    }

    private static boolean sameCell(String path, String other) {
        return StepPath.of(path).equals(StepPath.of(other));
    }

    private static Optional<Cell> cell(Plan plan, Change.SetCell set) {
        if (set.table() == Table.PLAN) {
            return plan.settings().cell(set.name());
        }
        return plan.rows(set.table()).row(set.id()).flatMap(row -> row.cell(set.name()));
    }

    /** How a step names the cell; empty for cells that no step can name. */
    static Optional<String> path(Change.SetCell set) {
        if (set.table().isSite()) {
            return Optional.of(new StepPath(set.id(), set.name()).text());
        }
        if (set.table() == Table.PLAN) {
            return Optional.of(set.name());
        }
        boolean named = set.table() == Table.VALUES || set.table() == Table.PRACTICE;
        return named && set.name().equals("is") ? Optional.of(set.id()) : Optional.empty();
    }

    /** A row that the scenario itself added just goes, with what the scenario did to it; a node takes its runs along. */
    private static void drop(List<Step> steps, String id, Optional<Row> row) {
        boolean added = steps.removeIf(step ->
                step instanceof Step.Add add && Rows.fold(add.row().id()).equals(Rows.fold(id)));
        steps.removeIf(step -> step instanceof Step.Set set
                && StepPath.of(set.path())
                        .filter(path -> Rows.fold(path.row()).equals(Rows.fold(id)))
                        .isPresent());
        boolean gone = isDropped(steps, id)
                || row.filter(run -> isDropped(steps, run.text("from")) || isDropped(steps, run.text("to")))
                        .isPresent();
        if (!added && !gone) {
            steps.add(new Step.Drop(id));
        }
    }

    private static boolean isDropped(List<Step> steps, String id) {
        return steps.stream()
                .anyMatch(step ->
                        step instanceof Step.Drop drop && Rows.fold(drop.id()).equals(Rows.fold(id)));
    }
}
