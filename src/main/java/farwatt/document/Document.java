package farwatt.document;

import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An open plan: the plan as it is now, the changes that led there with their inverses, and the position at which it was
 * saved. One change is one step to undo; what belongs together comes as a {@link Change.Batch}. Confined to the thread
 * that made it: every call from another is an {@link IllegalStateException}. The plan it gives out may go anywhere.
 */
public final class Document {
    /** In place of the saved position once it can no longer be reached. */
    private static final int NOWHERE = -1;

    private final Thread home = Thread.currentThread();
    private final List<Done> steps = new ArrayList<>();
    private final List<Watcher> watchers = new ArrayList<>();
    private Plan plan;
    /** How many of the steps are done; the ones from there on were undone. */
    private int position;

    private int saved;

    /** A step with what undoes it. */
    private record Done(Change change, Change inverse) {}

    /** An open plan that is as saved. */
    public Document(Plan plan) {
        this.plan = plan;
    }

    /** The plan as it is now. */
    public Plan plan() {
        checkThread();
        return plan;
    }

    /**
     * Makes a change; what was undone can no longer be redone.
     *
     * @throws IllegalArgumentException if the change names a row that is not there: nothing is changed then
     */
    public void apply(Change change) {
        checkThread();
        Edit edit = Edit.apply(plan, change);
        steps.subList(position, steps.size()).clear();
        if (saved > position) {
            saved = NOWHERE;
        }
        steps.add(new Done(change, edit.inverse()));
        position++;
        install(edit.plan(), change);
    }

    /** Undoes the last step; nothing happens where there is none. */
    public void undo() {
        checkThread();
        if (position > 0) {
            Change inverse = steps.get(position - 1).inverse;
            Plan after = Edit.apply(plan, inverse).plan();
            position--;
            install(after, inverse);
        }
    }

    /** Makes the step again that was undone last; nothing happens where there is none. */
    public void redo() {
        checkThread();
        if (position < steps.size()) {
            Change change = steps.get(position).change;
            Plan after = Edit.apply(plan, change).plan();
            position++;
            install(after, change);
        }
    }

    /** What undo would undo, in a person's words; empty where there is nothing. */
    public Optional<String> undoLabel() {
        checkThread();
        return position > 0 ? Optional.of(Label.of(steps.get(position - 1).change)) : Optional.empty();
    }

    /** What redo would make again; empty where there is nothing. */
    public Optional<String> redoLabel() {
        checkThread();
        return position < steps.size() ? Optional.of(Label.of(steps.get(position).change)) : Optional.empty();
    }

    /** Notes that the plan as it is now was saved. */
    public void markSaved() {
        markSaved(mark());
    }

    /** Where the document stands now, for saving that goes on while edits are made. */
    public Mark mark() {
        checkThread();
        return new Mark(position, position > 0 ? Optional.of(steps.get(position - 1)) : Optional.empty());
    }

    /** Notes that the plan was saved as it was at a mark, whatever came since. */
    public void markSaved(Mark mark) {
        checkThread();
        boolean there = mark.position <= steps.size()
                && (mark.position == 0
                        || mark.last
                                .filter(step -> step == steps.get(mark.position - 1))
                                .isPresent());
        saved = there ? mark.position : NOWHERE;
    }

    /** A place in the history of a document. */
    public static final class Mark {
        private final int position;
        private final Optional<Object> last;

        private Mark(int position, Optional<Object> last) {
            this.position = position;
            this.last = last;
        }
    }

    /** Notes that the plan as it is now is nowhere saved, such as one that was recovered or made from a list. */
    public void markUnsaved() {
        checkThread();
        saved = NOWHERE;
    }

    /** True where the plan is as it was saved last: never by a mere count of changes. */
    public boolean isSaved() {
        checkThread();
        return saved == position;
    }

    /** Tells a watcher of every change from now on. A watcher must not change the document from within. */
    public void watch(Watcher watcher) {
        checkThread();
        watchers.add(watcher);
    }

    private void install(Plan after, Change done) {
        Plan before = plan;
        plan = after;
        List.copyOf(watchers).forEach(watcher -> watcher.changed(before, done, after));
    }

    private void checkThread() {
        if (Thread.currentThread() != home) {
            throw new IllegalStateException("document of " + home.getName() + " used by "
                    + Thread.currentThread().getName());
        }
    }
}
