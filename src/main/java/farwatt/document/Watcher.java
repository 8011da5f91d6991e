package farwatt.document;

import farwatt.plan.Change;
import farwatt.plan.Plan;

/** Told of every change of a document, undone and redone ones included, after it is done. */
@FunctionalInterface
public interface Watcher {
    /**
     * A change was made.
     *
     * @param before the plan before it
     * @param done the change as made; for an undo the inverse
     * @param after the plan after it
     */
    void changed(Plan before, Change done, Plan after);
}
