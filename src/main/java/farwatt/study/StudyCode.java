package farwatt.study;

import farwatt.report.Code;

/** What studies say; sentences in the message catalogue. */
public enum StudyCode implements Code {
    NOT_UNDERSTOOD,
    NO_CONDITION,
    NO_IS,
    NO_PATH,
    NO_CELL,
    NO_TYPE,
    NO_VALUE,
    OTHER_MEASURE,
    NO_STEP,
    STEP_MEASURE,
    TOO_MANY_STEPS,
    NO_SPAN,
    NO_SPREAD,
    BAND_MEASURE,
    NOTHING_VARIED,
    NOTHING_READ,
    TWICE,
    TOO_MANY_POINTS,
    PROGRESS,
    PROGRESS_LEFT,
    NO_NODE,
    NO_RUN_THERE,
    HOLDS_ALREADY,
    STOPPED_BY_CONDITION,
    STOPPED_BY_FAULT,
    STOPPED_BY_MOST,
    BAD_MOST,
    BAD_RUNS,
    BAD_STEP,
    NOT_A_NUMBER,
    ROOM_PORTS,
    ROOM_DARK,
    ROOM_RESERVE,
    CANCELLED;

    @Override
    public String room() {
        return "study";
    }
}
