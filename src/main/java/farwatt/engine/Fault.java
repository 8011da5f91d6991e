package farwatt.engine;

import farwatt.report.Place;

/**
 * Why something has no value.
 *
 * @param kind what went wrong
 * @param origin the cell or row where it began; what reads it carries the same fault on
 * @param text one sentence
 * @param asked watts asked for where the circuit has no operating point, NaN elsewhere
 * @param possible the most that could have been had, NaN elsewhere
 */
public record Fault(Kind kind, Place origin, String text, double asked, double possible) {
    /** A fault that no watts come into. */
    public Fault(Kind kind, Place origin, String text) {
        this(kind, origin, text, Double.NaN, Double.NaN);
    }

    /** What can go wrong. */
    public enum Kind {
        /** A cell that is needed is empty. */
        EMPTY,
        /** A cell that cannot be read, or not as what it should be. */
        UNREADABLE,
        /** A cell that needs itself. */
        LOOP,
        /** Arithmetic without a result: division by zero, root of a negative, too large. */
        ARITHMETIC,
        /** The circuit has no operating point. */
        NO_OPERATING_POINT,
        /** The wire finds no temperature below its end. */
        RUNAWAY,
        /** The name does not apply to this row. */
        NOT_APPLICABLE,
        /** Nothing feeds the row, or what feeds it has no values. */
        NOT_FED,
        /** The row is out of use. */
        OUT_OF_USE
    }
}
