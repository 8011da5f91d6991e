package farwatt.intake;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One number in a cell with what stands around it.
 *
 * @param value the number
 * @param other what it would be with its mark read the other way, where nothing decides
 * @param unit its own unit
 * @param bound whether it is a bound or an estimate
 * @param label which of several modes it belongs to
 */
record Figure(BigDecimal value, Optional<BigDecimal> other, Optional<ListUnit> unit, Bound bound, Label label) {
    /** Whether a number is exact. */
    enum Bound {
        NONE,
        UPPER,
        LOWER,
        ABOUT
    }

    /** Which of several modes a number belongs to. */
    enum Label {
        NONE,
        TYPICAL,
        MOST,
        START
    }

    Figure with(ListUnit own) {
        return new Figure(value, other, Optional.of(own), bound, label);
    }

    Figure with(Bound stated) {
        return new Figure(value, other, unit, stated, label);
    }

    Figure with(Label stated) {
        return new Figure(value, other, unit, bound, stated);
    }

    /** The measure of its own unit, or of the column's. */
    Measure measure(ListUnit usual) {
        return unit.orElse(usual).measure();
    }
}
