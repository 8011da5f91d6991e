package farwatt.intake;

import farwatt.plan.Change;
import farwatt.report.Notice;
import java.util.List;
import java.util.Optional;

/**
 * What taking a list into a plan does.
 *
 * @param batch the one step that does it; empty when there is nothing to do or the policy stopped it
 * @param added ids of new devices
 * @param changed ids of devices that were there and get other cells
 * @param same ids of devices that were there and stay as they are
 * @param gone ids of the plan's devices that the list does not name
 * @param differences the cells of devices and runs that were there and that the list says otherwise
 * @param questions what a person should decide
 * @param notices what else is to be said
 */
public record Taken(
        Optional<Change.Batch> batch,
        List<String> added,
        List<String> changed,
        List<String> same,
        List<String> gone,
        List<Difference> differences,
        List<Question> questions,
        List<Notice> notices) {
    public Taken {
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        same = List.copyOf(same);
        gone = List.copyOf(gone);
        differences = List.copyOf(differences);
        questions = List.copyOf(questions);
        notices = List.copyOf(notices);
    }
}
