package farwatt.review;

import farwatt.report.Code;
import farwatt.report.Messages;

/** Parts of sentences; the words stand in the message catalogue. */
enum Phrase implements Code {
    AND,
    AND_MORE,
    ROW_ONE,
    ROW_MANY,
    PORT_OF,
    WITH_ONE,
    WITH_MANY,
    WAVE,
    THEN,
    ZONES_BY_CORNER,
    BOUND_RIGHT,
    BOUND_PORT,
    BOUND_BUDGET,
    BOUND_WIRE,
    BOUND_CABLE,
    BOUND_FLOOR,
    DO_RIGHT,
    DO_PORT,
    DO_BUDGET,
    DO_WIRE,
    DO_CABLE,
    DO_FLOOR,
    VERDICT_FAILS,
    VERDICT_FAILS_ALWAYS,
    VERDICT_HOLDS_ALL,
    VERDICT_HOLDS_ONE,
    VERDICT_LEAST,
    VERDICT_NO_RESERVE,
    VERDICT_EMPTY,
    VERDICT_DARK_ONE,
    VERDICT_DARK_MANY,
    VERDICT_MORE_ONE,
    VERDICT_MORE,
    VERDICT_WARNING,
    VERDICT_WARNINGS,
    VERDICT_CHOICE,
    CAUTION_EXTRA_LOW,
    CAUTION_HEAT,
    CAUTION_PASSIVE,
    CAUTION_OUTSIDE;

    @Override
    public String room() {
        return "review";
    }

    String text(Object... parts) {
        return Messages.text(this, parts);
    }

    /** How many rows have no values, as a clause. */
    static String rows(int count) {
        return (count == 1 ? ROW_ONE : ROW_MANY).text(count);
    }
}
