package farwatt.command;

import farwatt.report.Code;

/** What the command line says; sentences in the message catalogue. */
enum CommandCode implements Code {
    BAD_CORNER,
    BAD_OUTPUT,
    OUT_OF_MEMORY,
    BUG,
    BAD_POLICY,
    BAD_KNOWN,
    BAD_GONE,
    REPORT_WRITTEN,
    BAD_MEANING,
    NO_EQUALS,
    PLAN_CHANGED,
    LEFT_ASIDE,
    TAKEN_BACK,
    TAKEN_IN,
    WRITTEN,
    DRAWN,
    BAD_PALETTE,
    NO_NAME,
    NOTHING_WRITTEN,
    NO_ARGUMENT_FILE,
    HELD_BACK,
    NEW_PLAN,
    NOT_KEPT,
    KEPT,
    SAVED,
    NO_FOLDER,
    ONE_CORNER,
    BAD_EFFORT,
    STUDY_WRITTEN,
    ONLY_CSV,
    TOO_LONG_TO_SHOW,
    GROWN,
    FIRST_DARK,
    HOLDS_NOWHERE,
    HOLDS_TO_END,
    HOLDS_TO,
    NOT_MONOTONIC,
    BAD_SHARE,
    AS_IT_IS,
    WITHOUT_EFFECT,
    SEEKING,
    TAKE_OFF_COST,
    TAKE_OFF_SAME,
    NO_STUDY,
    BAD_STUDY,
    NO_SHEET,
    LIST_WRITTEN,
    DEMO_END;

    @Override
    public String room() {
        return "command";
    }
}
