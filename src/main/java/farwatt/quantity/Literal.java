package farwatt.quantity;

import farwatt.report.Span;
import java.util.List;

/**
 * A number with its unit as found in a longer text. Without a sign: a sign before it belongs to the expression.
 *
 * @param typed what was found; the bare number where there is no unit or none that is known
 * @param numbers where the digits stand: one stretch, two for feet and inches
 * @param units where the units stand: none, one, two for feet and inches; with {@link Doubt#UNIT} what was taken for
 *     the unit
 * @param end one past the last character that belongs to it
 * @param doubt what is wrong with it
 */
public record Literal(Typed typed, List<Span> numbers, List<Span> units, int end, Doubt doubt) {
    /** What may be wrong with a literal. */
    public enum Doubt {
        NONE,
        /** A word follows the number that is no unit. */
        UNIT,
        /** Too large or too small to be worked with. */
        RANGE,
        /** More than one decimal sign; some of them may be thousands marks. */
        DECIMALS
    }

    /** Where the whole of it stands. */
    public Span span() {
        return new Span(numbers.get(0).from(), end);
    }
}
