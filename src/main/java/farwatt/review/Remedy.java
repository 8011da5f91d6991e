package farwatt.review;

import farwatt.engine.ScenarioPlans;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Changes that mend a finding, solved in every corner.
 *
 * @param text what they change and what that brings
 * @param changes as a scenario would make them
 * @param leastReserveShare of the plan with the changes, over all corners; NaN where there is none
 * @param leastHeadroom least volts above a device's floor of what hangs together with the finding; NaN where none
 * @param cost what the plan costs more (less: below zero) by the prices filled in; NaN where they say nothing
 */
public record Remedy(String text, List<Step> changes, double leastReserveShare, double leastHeadroom, double cost) {
    public Remedy {
        changes = List.copyOf(changes);
    }

    /**
     * To try it: a scenario of the plan that was looked at.
     *
     * @param on the scenario that was looked at, "" for base
     */
    public Scenario scenario(String id, String on) {
        return new Scenario(id, on, changes);
    }

    /**
     * To apply it: one change, and so one step to undo.
     *
     * @param plan the one that was looked at
     * @return empty if the plan has become another one to which the changes do not apply
     */
    public Optional<Change> change(Plan plan) {
        Plan now = plan;
        List<Change> all = new ArrayList<>();
        for (Step step : changes) {
            Optional<Change> one = ScenarioPlans.change(now, step, "", new ArrayList<>());
            if (one.isEmpty()) {
                return Optional.empty();
            }
            all.add(one.get());
            now = Edit.apply(now, one.get()).plan();
        }
        return Optional.of(new Change.Batch(text, all));
    }
}
