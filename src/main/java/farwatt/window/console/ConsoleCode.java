package farwatt.window.console;

import farwatt.report.Code;

/** What the console says; sentences in the message catalogue. */
public enum ConsoleCode implements Code {
    NAMES_FORGOTTEN,
    PLAN_CHANGED,
    STANDS_ON,
    TAKEN,
    REPLACES,
    APPLIED,
    NOTHING_FITS,
    LEFT,
    RUNS_ALREADY,
    NOT_OPENED,
    NOT_SAVED,
    SAVED,
    UNSAVED;

    @Override
    public String room() {
        return "console";
    }
}
