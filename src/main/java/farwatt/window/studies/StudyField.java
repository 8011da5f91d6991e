package farwatt.window.studies;

/** What a person fills in for a study. */
public enum StudyField {
    VARY("Vary", "name = a, b, c  or  a .. b by c"),
    SPAN("Vary", "name = a .. b"),
    TOLERANCE("Uncertain", "name = 95 m ± 5 %  or  95 m ~ 5 %"),
    READ("Read", "a name or an expression"),
    COPY("Copy", "a device or switch"),
    UNTIL("Until", "a condition"),
    MOST("At most", "a whole number"),
    HOLDS("As long as", "a condition"),
    RUNS("Trials", "a whole number"),
    SEED("Seed", "a whole number"),
    STEP("Step", "a share, such as 5 %");

    private final String title;
    private final String hint;

    StudyField(String title, String hint) {
        this.title = title;
        this.hint = hint;
    }

    public String title() {
        return title;
    }

    /** What stands in it while it is empty. */
    public String hint() {
        return hint;
    }

    /** True where a cell and values for it are written. */
    boolean isVaried() {
        return this == VARY || this == SPAN || this == TOLERANCE;
    }

    /** True where an expression is written. */
    boolean isExpression() {
        return this == READ || this == UNTIL || this == HOLDS;
    }
}
