package farwatt.script;

import farwatt.engine.PlanWording;
import farwatt.engine.ScenarioPlans;
import farwatt.file.PlanReader;
import farwatt.file.PlanWriter;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What scripts kept, as changes of the plan. */
public final class Changes {
    private Changes() {}

    /**
     * The changes that a script proposed, as one step for a person.
     *
     * @param label what a person calls the step
     * @param notices filled with what could not be changed because the plan is another by now
     */
    public static Change.Batch proposed(Plan plan, Scenario proposed, String label, List<Notice> notices) {
        List<Change> changes = new ArrayList<>();
        Plan now = plan;
        for (Step step : proposed.steps()) {
            Optional<Change> change = ScenarioPlans.change(now, step, proposed.id(), notices);
            if (change.isPresent()) {
                changes.add(change.get());
                now = Edit.apply(now, change.get()).plan();
            }
        }
        return new Change.Batch(label, changes);
    }

    /** Kept scenarios put into the plan's list; one of the same name, without regard to case, is replaced. */
    public static Change kept(Plan plan, List<Scenario> kept) {
        List<Scenario> all = new ArrayList<>(plan.scenarios());
        for (Scenario scenario : kept) {
            put(all, scenario);
        }
        return new Change.SetScenarios(all);
    }

    static void put(List<Scenario> all, Scenario scenario) {
        String id = Rows.fold(scenario.id());
        for (int i = 0; i < all.size(); i++) {
            if (Rows.fold(all.get(i).id()).equals(id)) {
                all.set(i, scenario);
                return;
            }
        }
        all.add(scenario);
    }

    /** A scenario as the text of a plan file that holds nothing else. */
    static String text(Scenario scenario) {
        return text(Plan.EMPTY.withScenarios(List.of(scenario)));
    }

    static Scenario read(String text) throws Refusal {
        return plan(text).scenarios().get(0);
    }

    static String text(Plan plan) {
        return PlanWriter.text(plan.withVersion(Plan.VERSION), PlanWording.canonicalFor(plan));
    }

    static Plan plan(String text) throws Refusal {
        return PlanReader.read(text.getBytes(StandardCharsets.UTF_8), "The plan")
                .plan();
    }
}
