package farwatt.engine;

import farwatt.report.Code;

/** What the engine says; sentences in the message catalogue. */
public enum EngineCode implements Code {
    NO_NUMBER,
    EMPTY,
    OUT_OF_USE,
    RUN_END_EMPTY,
    RUN_TO_NOWHERE,
    FED_TWICE,
    RING,
    NOT_FED,
    HANGS_ON,
    DUPLICATE_ID,
    NO_SUCH_ROW,
    WRONG_TABLE,
    NO_ZONE,
    NO_RELATION,
    NOT_APPLICABLE,
    PASSIVE_NO_CLASS,
    PORT_TOO_SMALL,
    NO_OPERATING_POINT,
    NO_OPERATING_POINT_TREE,
    RUNAWAY,
    NOTHING_AVAILABLE,
    NO_CLIFF_DIRECT,
    DARK_REFUSED,
    DARK_PARENT,
    DARK_NO_CLASS,
    NO_LIMIT,
    LOOP,
    CORD_LONGER,
    NO_ROWS,
    USES_SOLVED,
    UNTYPED,
    NAME_TAKEN,
    UNKNOWN_TABLE,
    UNKNOWN_UNIT,
    COUNTED_LATER,
    SCENARIO_LOOP,
    NO_SCENARIO,
    STEP_PATH,
    STEP_DROP,
    STEP_UNREAD,
    STEP_TABLE,
    STEP_TAKEN,
    NO_NODES,
    IN_USE_UNSTABLE,
    SEEN_NO_CURRENT,
    SEEN_NO_DROP,
    SEEN_NOTHING_EXPECTED,
    SEEN_DROP,
    SEEN_SPREAD,
    SEEN_EXPECTED,
    SEEN_FAR_LESS,
    SEEN_LESS,
    SEEN_OFF,
    SEEN_MORE,
    SEEN_MUCH_MORE,
    SEEN_HALF,
    SEEN_MOST;

    @Override
    public String room() {
        return "engine";
    }
}
