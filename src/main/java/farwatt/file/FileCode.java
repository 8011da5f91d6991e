package farwatt.file;

import farwatt.report.Code;

/** What is said about plan files; sentences in the message catalogue. */
public enum FileCode implements Code {
    // refused on opening
    MISSING,
    FOLDER,
    UNREADABLE,
    TOO_LARGE,
    NOT_UTF8,
    EMPTY,
    NOT_JSON,
    CUT_OFF,
    TOO_DEEP,
    OTHER_KIND,
    NO_VERSION,
    ODD_VERSION,
    // told on opening
    NEWER,
    NO_ID,
    ID_NUMBER,
    NOT_READ,
    KEY_TWICE,
    NAME_TWICE,
    ROW_NO_OBJECT,
    TABLE_NO_LIST,
    PLAN_NO_OBJECT,
    PART_TWICE,
    UNKNOWN_KEY,
    UNKNOWN_KEY_ROWS,
    WORKED_OUT,
    UNKNOWN_PART,
    SCENARIO_NO_OBJECT,
    SCENARIO_TWICE,
    STEP_UNREAD,
    // refused on saving
    CHANGED_UNDERNEATH,
    ALREADY_THERE,
    NO_ORDINARY_FILE,
    READ_ONLY,
    NO_FOLDER,
    NO_RIGHT,
    DISK_FULL,
    NOT_WRITTEN,
    NEWER_KEPT,
    // mappings of lists
    NO_MAPPING,
    MAPPING_NOT_WRITTEN;

    @Override
    public String room() {
        return "file";
    }
}
