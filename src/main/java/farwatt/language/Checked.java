package farwatt.language;

import farwatt.report.Span;
import java.util.List;

/**
 * A text that was checked against what its names refer to.
 *
 * @param expr what was understood, a bare number with the wanted unit
 * @param type of its value; unknown if something is wrong
 * @param wanted what its place asks for
 * @param problems in the order of their places; empty if it can be planned
 * @param known every name that was found, with what it refers to
 */
public record Checked(Expr expr, Type type, Wanted wanted, List<Problem> problems, List<Known> known) {
    public Checked {
        problems = List.copyOf(problems);
        known = List.copyOf(known);
    }

    /**
     * A name in the text and what it refers to.
     *
     * @param scope in which it was found: inside a gather another one than outside
     */
    public record Known(Span span, Ref ref, Scope scope) {}
}
