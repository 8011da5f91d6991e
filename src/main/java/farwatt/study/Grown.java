package farwatt.study;

import farwatt.plan.Step;
import java.util.List;
import java.util.Optional;

/**
 * How many copies fitted.
 *
 * @param fitted copies that can be added before the condition is met
 * @param stoppedBy what ended it, a sentence
 * @param reached true if the condition was met or lost its value; false if the most was tried without
 * @param firstDark with that many copies the first device or switch stays without power; empty if none did
 * @param darkId that device or switch, "" if none
 * @param points by number of copies: the condition, how many devices have no power, and what else was read
 * @param added the copies, each as the steps of a scenario
 */
public record Grown(
        int fitted,
        String stoppedBy,
        boolean reached,
        Optional<Integer> firstDark,
        String darkId,
        Points points,
        List<List<Step>> added) {
    /** The first column of what else was read. */
    public static final int READS = 3;

    public Grown {
        added = List.copyOf(added);
    }

    /** The steps of a scenario with so many copies. */
    public List<Step> steps(int copies) {
        return added.subList(0, copies).stream().flatMap(List::stream).toList();
    }
}
