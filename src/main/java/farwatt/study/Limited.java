package farwatt.study;

import java.util.Optional;

/**
 * How far a value may go.
 *
 * @param heading of the varied cell
 * @param farthest the value farthest along the span for which the condition holds; empty if it holds nowhere
 * @param beyond the nearest value tried after it for which it does not hold; empty if it holds to the end
 * @param monotonic false where the condition comes back after it was lost, so that the farthest value says nothing of
 *     those before it
 * @param points the values tried, in the order of the span, with 1 or 0 for the condition
 */
public record Limited(
        Heading heading, Optional<Double> farthest, Optional<Double> beyond, boolean monotonic, Points points) {}
