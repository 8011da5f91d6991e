package farwatt.language;

/** Which rows of a table a gather goes over. */
public enum Reach {
    ALL(""),
    /** Directly on a node. */
    ON("on"),
    /** Anywhere below a node. */
    UNDER("under");

    private final String word;

    Reach(String word) {
        this.word = word;
    }

    /** As it is typed; "" for all. */
    public String word() {
        return word;
    }
}
