package farwatt.language;

import farwatt.report.Code;

/** Why an expression that reads well gives no value. */
public enum FaultKind implements Code {
    DIVISION_BY_ZERO,
    /** The root of a negative number and the like. */
    NOT_REAL,
    /** Beyond what can be worked with. */
    TOO_LARGE,
    /** The mean, least or greatest of no rows at all. */
    NO_ROWS;

    @Override
    public String room() {
        return "language";
    }
}
