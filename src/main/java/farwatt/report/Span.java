package farwatt.report;

/**
 * A stretch of a text in UTF-16 units.
 *
 * @param from first unit
 * @param to one past the last unit; equal to {@code from} for a point between two units
 */
public record Span(int from, int to) {
    public Span {
        if (from < 0 || to < from) {
            throw new IllegalArgumentException("span " + from + ".." + to);
        }
    }
}
