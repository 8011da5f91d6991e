package farwatt.review;

import farwatt.plan.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Changes that may mend a finding, before they are solved.
 *
 * @param effort of the largest of them
 * @param size how far they go among those of one effort; smaller first
 * @param text what they are, in words of the trade
 */
record Attempt(Effort effort, double size, List<Step> steps, String text) {
    /** Smallest intervention first: what it takes, how many changes, how far they go, then by its words. */
    static final Comparator<Attempt> SMALLEST = Comparator.comparing(Attempt::effort)
            .thenComparingInt(a -> a.steps().size())
            .thenComparingDouble(Attempt::size)
            .thenComparing(Attempt::text);

    Attempt {
        steps = List.copyOf(steps);
    }

    /** Both together, whichever of them is asked: the larger is named first, then by their words. */
    Attempt and(Attempt other) {
        int larger = effort.compareTo(other.effort);
        if (larger < 0 || (larger == 0 && text.compareTo(other.text) > 0)) {
            return other.and(this);
        }
        List<Step> both = new ArrayList<>(steps);
        both.addAll(other.steps);
        return new Attempt(effort, size + other.size, both, TryPhrase.TRY_BOTH.text(text, other.text));
    }
}
