package farwatt.review;

import farwatt.plan.Step;
import java.util.List;

/**
 * A set of changes that mends a finding, solved in every corner.
 *
 * @param text what it changes and what that brings
 * @param changes as a scenario would make them
 * @param leastReserveShare of the plan with the changes, over all corners; NaN where there is none
 */
public record Remedy(String text, List<Step> changes, double leastReserveShare) {
    public Remedy {
        changes = List.copyOf(changes);
    }
}
