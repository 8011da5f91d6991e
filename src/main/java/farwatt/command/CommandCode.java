package farwatt.command;

import farwatt.report.Code;

/** What the command line says; sentences in the message catalogue. */
enum CommandCode implements Code {
    BAD_CORNER,
    BAD_OUTPUT,
    OUT_OF_MEMORY,
    BUG,
    BAD_POLICY,
    BAD_MAPPING,
    TAKEN_IN,
    WRITTEN,
    DRAWN,
    BAD_PALETTE,
    NO_NAME,
    NOTHING_WRITTEN,
    NO_ARGUMENT_FILE,
    HELD_BACK,
    NEW_PLAN,
    DEMO_END;

    @Override
    public String room() {
        return "command";
    }
}
