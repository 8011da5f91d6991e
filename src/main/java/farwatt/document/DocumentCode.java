package farwatt.document;

import farwatt.report.Code;

/** What single steps are called; sentences in the message catalogue. */
public enum DocumentCode implements Code {
    SET_CELL,
    SET_SETTING,
    ADD_ROW,
    DROP_ROW,
    REPLACE_ROW,
    SET_SCENARIOS,
    SET_REST;

    @Override
    public String room() {
        return "document";
    }
}
