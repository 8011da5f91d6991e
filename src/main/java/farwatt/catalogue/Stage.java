package farwatt.catalogue;

/** When a name gets its value. A stage may use the ones before it. */
public enum Stage {
    /** A person fills it in, or a default takes its place. */
    GIVEN("given"),
    /** The circuit's answer. */
    SOLVED("solved"),
    /** Worked out from both. */
    DERIVED("derived");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
