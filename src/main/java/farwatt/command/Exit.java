package farwatt.command;

/** What a verb leaves behind for the shell. */
final class Exit {
    static final int DONE = 0;
    /** A failing finding or need. */
    static final int FAILS = 1;
    /** The file or the call is wrong. */
    static final int WRONG = 2;
    /** A limit was reached, or someone cancelled. */
    static final int STOPPED = 3;

    private Exit() {}
}
