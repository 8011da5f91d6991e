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
    NO_NODES,
    IN_USE_UNSTABLE;

    @Override
    public String room() {
        return "engine";
    }
}
