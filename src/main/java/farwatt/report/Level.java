package farwatt.report;

/** How much a notice matters. Order: worst first. */
public enum Level {
    /** Stops the plan or the request from holding. */
    FAIL,
    /** Holds, but someone should look. */
    WARN,
    /** Good to know. */
    NOTE;

    /** The word used in files and on the command line. */
    public String word() {
        return switch (this) {
            case FAIL -> "fail";
            case WARN -> "warn";
            case NOTE -> "note";
        };
    }
}
