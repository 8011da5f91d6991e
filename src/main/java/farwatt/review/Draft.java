package farwatt.review;

import farwatt.engine.Corner;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A finding before its sentence is made: most drafts give way to a worse one of another corner.
 *
 * @param rank the smaller, the more a finding tells about why a plan fails
 * @param weight the larger, the worse among those of one kind and place
 * @param text the whole sentence
 * @param brief the same as a clause of the verdict
 */
record Draft(
        String code,
        int rank,
        Level level,
        Optional<Corner> corner,
        Place place,
        double value,
        double limit,
        double weight,
        Supplier<String> text,
        Supplier<String> brief,
        String source,
        String caution) {

    /** How far a figure lies beyond its limit, as a share of the larger; 0 where there are none. */
    static double excess(double value, double limit) {
        double size = Math.max(Math.abs(value), Math.abs(limit));
        return size > 0 ? Math.abs(value - limit) / size : 0;
    }

    /** True if this one is to be shown rather than another of the same kind and place. */
    boolean worseThan(Draft other) {
        return level != other.level ? level.compareTo(other.level) < 0 : Near.over(weight, other.weight);
    }

    Finding finding() {
        return new Finding(code, level, corner, place, value, limit, text.get(), source, caution);
    }
}
