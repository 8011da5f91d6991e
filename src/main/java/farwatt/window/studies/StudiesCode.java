package farwatt.window.studies;

import farwatt.report.Code;

/** What studies in the window say; sentences in the message catalogue. */
enum StudiesCode implements Code {
    NOT_WHOLE,
    NO_SHARE,
    POINTS,
    GROWN,
    FIRST_DARK,
    HOLDS_NOWHERE,
    HOLDS_TO_END,
    HOLDS_TO,
    NOT_STEADY,
    HALF_BETWEEN,
    FAILS_SHARE,
    AS_IT_IS,
    WITHOUT_EFFECT,
    ROOM,
    NO_ROOM,
    WITHOUT_VALUE,
    BASIS,
    CHANGED,
    STOPPED,
    MADE,
    SCENARIO_GONE,
    COPIED;

    @Override
    public String room() {
        return "studies";
    }
}
