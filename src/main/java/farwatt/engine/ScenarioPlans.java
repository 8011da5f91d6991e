package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Wording;
import farwatt.catalogue.edit.Drop;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
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
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The plan of a scenario: the changes of what it stands on and its own, written into the plan in order as if by hand.
 *
 * @param plan base with all changes
 * @param notices changes that could not be made, each with the scenario and the step
 */
public record ScenarioPlans(Plan plan, List<Notice> notices) {
    /**
     * The plan of a scenario, by id without regard to case.
     *
     * @throws Refusal if there is no such scenario, or it stands on itself
     */
    public static ScenarioPlans of(Plan base, String id) throws Refusal {
        Deque<Scenario> chain = new ArrayDeque<>();
        Set<String> seen = new HashSet<>();
        String next = id;
        while (!next.isEmpty()) {
            if (!seen.add(Rows.fold(next))) {
                throw Refusal.of(EngineCode.SCENARIO_LOOP, id, next);
            }
            Optional<Scenario> scenario = base.scenario(next);
            if (scenario.isEmpty()) {
                throw Refusal.of(EngineCode.NO_SCENARIO, next, known(base));
            }
            chain.push(scenario.get());
            next = scenario.get().on();
        }
        Plan plan = base;
        List<Notice> notices = new ArrayList<>();
        for (Scenario scenario : chain) {
            for (Step step : scenario.steps()) {
                plan = apply(plan, step, scenario.id(), notices);
            }
        }
        return new ScenarioPlans(plan, List.copyOf(notices));
    }

    private static String known(Plan base) {
        List<String> ids = base.scenarios().stream().map(Scenario::id).toList();
        return ids.isEmpty() ? "none" : String.join(", ", ids);
    }

    /** One step written into a plan; a step that cannot be made is said and left out. */
    public static Plan apply(Plan plan, Step step, String scenario, List<Notice> notices) {
        Optional<Change> change = change(plan, step, scenario, notices);
        return change.map(c -> Edit.apply(plan, c).plan()).orElse(plan);
    }

    /** The change of a plan that a step stands for. */
    public static Optional<Change> change(Plan plan, Step step, String scenario, List<Notice> notices) {
        Place place = Place.row("scenarios", scenario);
        if (step instanceof Step.Set set) {
            Optional<Change> change = StepPath.of(set.path()).flatMap(path -> set(plan, path, set.to()));
            if (change.isEmpty()) {
                notices.add(Notice.of(Level.FAIL, EngineCode.STEP_PATH, place, set.path()));
            }
            return change;
        }
        if (step instanceof Step.Add add) {
            return add(plan, add, place, notices);
        }
        if (step instanceof Step.Drop drop) {
            Optional<Plan.Spot> spot = plan.find(drop.id());
            if (spot.isEmpty()) {
                notices.add(Notice.of(Level.FAIL, EngineCode.STEP_DROP, place, drop.id()));
            }
            return spot.map(
                    s -> Drop.of(plan, s.table(), s.place(), Wording.PLAIN).change());
        }
        notices.add(Notice.of(Level.FAIL, EngineCode.STEP_UNREAD, place));
        return Optional.empty();
    }

    private static Optional<Change> add(Plan plan, Step.Add add, Place place, List<Notice> notices) {
        Optional<Table> table = Table.of(add.table()).filter(t -> t != Table.PLAN);
        if (table.isEmpty()) {
            notices.add(Notice.of(Level.FAIL, EngineCode.STEP_TABLE, place, add.table()));
            return Optional.empty();
        }
        if (table.get().isSite() && plan.find(add.row().id()).isPresent()) {
            notices.add(Notice.of(
                    Level.FAIL, EngineCode.STEP_TAKEN, place, add.row().id()));
            return Optional.empty();
        }
        return Optional.of(new Change.AddRow(table.get(), plan.rows(table.get()).size(), add.row()));
    }

    /** A row's cell; or a value, a setting of the plan, a constant of practice by its bare name. */
    private static Optional<Change> set(Plan plan, StepPath path, Cell to) {
        String name = path.name();
        if (!path.row().isEmpty()) {
            return plan.find(path.row()).map(spot -> {
                String id = plan.rows(spot.table()).at(spot.place()).id();
                return new Change.SetCell(spot.table(), id, name, Optional.of(to));
            });
        }
        if (plan.rows(Table.VALUES).place(name) >= 0) {
            return Optional.of(new Change.SetCell(Table.VALUES, name, "is", Optional.of(to)));
        }
        if (Catalogue.find(Table.PLAN, name).isPresent()) {
            return Optional.of(new Change.SetCell(Table.PLAN, "", name, Optional.of(to)));
        }
        if (plan.rows(Table.PRACTICE).place(name) >= 0) {
            return Optional.of(new Change.SetCell(Table.PRACTICE, name, "is", Optional.of(to)));
        }
        return Catalogue.find(Table.PRACTICE, name).map(constant -> {
            Row row = Row.of(name).with("is", to).with("why", "set by a scenario");
            return new Change.AddRow(Table.PRACTICE, plan.rows(Table.PRACTICE).size(), row);
        });
    }
}
