package farwatt.file;

import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Changes that were never saved, found in a journal.
 *
 * @param changes in the order in which they were made
 * @param basis whether the plan file is still the one that they were made on
 * @param unreadLines lines of the journal that could not be read: one where the crash tore the last
 */
public record Recovered(List<Change> changes, Basis basis, int unreadLines) {
    public Recovered {
        changes = List.copyOf(changes);
    }

    /** What the changes stand on. */
    public enum Basis {
        SAME_FILE,
        /** Another program changed the plan file since: the changes may no longer fit. */
        OTHER_FILE
    }

    /**
     * As many of the changes, from the first on, as can be made on a plan, as one step.
     *
     * @param label what a person calls the step
     */
    public Change.Batch fitting(Plan plan, String label) {
        List<Change> fitting = new ArrayList<>();
        Plan now = plan;
        for (Change change : changes) {
            try {
                now = Edit.apply(now, change).plan();
            } catch (IllegalArgumentException e) {
                break;
            }
            fitting.add(change);
        }
        return new Change.Batch(label, fitting);
    }
}
