package farwatt.language;

import java.util.List;

/**
 * A text as read.
 *
 * @param text as typed
 * @param expr what was understood; holds {@link Expr.Broken} where nothing was
 * @param problems in the order of their places; empty if the text is sound
 * @param colours of all its parts, in order, without overlap
 */
public record Parsed(String text, Expr expr, List<Problem> problems, List<Coloured> colours) {
    public Parsed {
        problems = List.copyOf(problems);
        colours = List.copyOf(colours);
    }
}
