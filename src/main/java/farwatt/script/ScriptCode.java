package farwatt.script;

import farwatt.report.Code;

/** What this room says; sentences in the message catalogue. */
public enum ScriptCode implements Code {
    NO_SCRIPT,
    NOT_TEXT,
    TOO_LARGE,
    NO_JAVA,
    DIED,
    TOO_MUCH_MEMORY,
    TOO_LONG,
    TOO_MANY_STATEMENTS,
    TOO_MUCH_PRINTED,
    CANCELLED,
    WRONG_PATH,
    ROW_ALONE,
    NO_ROW,
    NO_NAME,
    NO_CELL,
    WORKED_OUT,
    NOTHING,
    NOT_FINITE,
    TOO_MANY_DIGITS,
    NO_CELL_VALUE,
    NO_UNIT,
    BLANK,
    NO_TEXT,
    NO_VALUE,
    NO_TABLE,
    ID_MISSING,
    ID_TAKEN,
    ONE_ROW,
    NO_LEVEL,
    NO_OBJECT,
    NO_OPTION,
    OPTION_MISSING,
    NOT_WHOLE,
    ONE_CELL,
    NOTHING_CHANGED,
    NAME_TAKEN,
    APPLY_ON_SCENARIO,
    NO_MEMBER,
    UNKNOWN,
    NEAR,
    FILE_NAME,
    FILE_ENDING,
    NO_RESULT,
    NO_COLUMN,
    NOT_DRAWN,
    NOT_CALLABLE,
    OF_NOTHING,
    CONSTANT,
    NOT_DECLARED,
    TWICE,
    SYNTAX,
    MODULE,
    BUG,
    DEPTH;

    @Override
    public String room() {
        return "script";
    }
}
