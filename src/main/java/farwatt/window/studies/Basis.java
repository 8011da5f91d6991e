package farwatt.window.studies;

import farwatt.engine.Corner;
import farwatt.plan.Plan;

/**
 * What a study stood on.
 *
 * @param plan with the scenario in it
 * @param scenario that was looked at, "" for none
 */
public record Basis(Plan plan, String scenario, Corner corner) {
    /** Which that was, in words. */
    public String text() {
        String named = scenario.isEmpty() ? "the plan as it is" : scenario;
        String name = plan.name().isBlank() ? "" : plan.name() + " · ";
        return name + named + " · " + corner.phrase();
    }
}
