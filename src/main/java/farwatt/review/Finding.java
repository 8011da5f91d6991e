package farwatt.review;

import farwatt.engine.Corner;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.List;
import java.util.Optional;

/**
 * One thing that the review found.
 *
 * @param code key of the kind, such as {@code review.floor}
 * @param level how much it matters
 * @param corner where it was worst; empty where no corner comes in
 * @param place table, row and name
 * @param value the figure, SI; NaN where there is none
 * @param limit what it was held against, SI; NaN where there is none
 * @param text one sentence: where, what, how much, what to do
 * @param source the standard, or "practice, editable"
 * @param caution what to mind where someone can be hurt, "" if nothing
 * @param remedies changes that were solved and mend it, smallest intervention first
 * @param nearest where none does: what comes nearest and what it lacks; "" where nothing was sought
 */
public record Finding(
        String code,
        Level level,
        Optional<Corner> corner,
        Place place,
        double value,
        double limit,
        String text,
        String source,
        String caution,
        List<Remedy> remedies,
        String nearest) {
    public Finding {
        remedies = List.copyOf(remedies);
    }

    /** A finding for which no remedies were sought. */
    public Finding(
            String code,
            Level level,
            Optional<Corner> corner,
            Place place,
            double value,
            double limit,
            String text,
            String source,
            String caution) {
        this(code, level, corner, place, value, limit, text, source, caution, List.of(), "");
    }

    /** The same with what mends it. */
    Finding mended(List<Remedy> by) {
        return new Finding(code, level, corner, place, value, limit, text, source, caution, by, "");
    }

    /** The same with what is to be said where nothing mends it. */
    Finding unmended(String said) {
        return new Finding(code, level, corner, place, value, limit, text, source, caution, List.of(), said);
    }
}
