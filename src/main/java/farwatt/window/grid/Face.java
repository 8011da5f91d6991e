package farwatt.window.grid;

import farwatt.report.Notice;
import java.util.Optional;

/**
 * A cell as a person sees it. What was typed into it stands in the plan.
 *
 * @param text the value in the column's unit, or what was typed where it has none; decimal point
 * @param origin where it comes from
 * @param figure the value as a number, for sorting; NaN where there is none
 * @param notice what is wrong with it or to be said about it
 * @param base what stands there in the plan without the scenario, where that is something else
 */
public record Face(String text, Origin origin, double figure, Optional<Notice> notice, Optional<String> base) {
    /** Where the value of a cell comes from. */
    public enum Origin {
        /** Nothing stands there and nothing takes its place. */
        EMPTY,
        /** A person typed it. */
        TYPED,
        /** A person typed an expression, and this is its value. */
        EXPRESSION,
        /** Nothing was typed, and the default takes its place. */
        DEFAULT,
        /** The circuit's answer, or worked out from it. */
        SOLVED,
        /** The value of a column of the person's own. */
        OWN,
        /** It has no value, and the notice says why. */
        FAULT,
        /** It is being worked out. */
        WAITING
    }

    private static final Face EMPTY = text("", Origin.EMPTY);

    /** A cell with nothing in it. */
    public static Face empty() {
        return EMPTY;
    }

    /** A cell that is no number and about which there is nothing to say. */
    public static Face text(String text, Origin origin) {
        return new Face(text, origin, Double.NaN, Optional.empty(), Optional.empty());
    }
}
