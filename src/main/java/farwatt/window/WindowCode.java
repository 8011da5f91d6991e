package farwatt.window;

import farwatt.report.Code;

/** What the window says; sentences in the message catalogue. */
public enum WindowCode implements Code {
    OUT_OF_MEMORY,
    NOT_WORKED_OUT,
    SCENARIO_TAKEN,
    SCENARIO_UNNAMED,
    SCENARIO_STOOD_ON,
    IN_SCENARIO,
    SAVED,
    SAVE_FAILED,
    OPEN_ELSEWHERE,
    CHANGED_UNDERNEATH,
    READ_ONLY,
    RECOVERED,
    RECOVERED_OTHER,
    JOURNAL_FAILED,
    UNSAVED,
    WRITTEN,
    STOPPED,
    WORK_FAILED,
    NO_DISPLAY,
    NOT_UNDERSTOOD,
    TRIED,
    TAKEN_IN,
    MAPPING_KEPT,
    COPIED,
    NOT_PRINTED,
    REMEDY_GONE,
    TAKEN_BACK,
    WHICH_SHEETS,
    STUDY_STALE;

    @Override
    public String room() {
        return "window";
    }
}
