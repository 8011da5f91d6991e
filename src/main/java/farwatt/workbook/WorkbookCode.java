package farwatt.workbook;

import farwatt.report.Code;

/** What this room says; sentences in the message catalogue. */
public enum WorkbookCode implements Code {
    NO_FOLDER,
    IS_FOLDER,
    NOT_WRITTEN,
    TOO_MANY_ROWS,
    TOO_MANY_COLUMNS,
    TEXT_CUT,
    SHEET_RENAMED,
    DAMAGED,
    NO_HANDOVER,
    NO_HEADINGS,
    NO_ID,
    TWICE,
    NO_COLUMN,
    NO_SUCH_RUN,
    ELSEWHERE,
    WORKED_OUT,
    RULE_STANDS,
    OF_SCENARIO,
    NEW_LINE,
    STEP;

    @Override
    public String room() {
        return "workbook";
    }
}
