package farwatt.script;

/** What a running script says. Called on the thread that runs it, in the order in which things were said. */
public interface ScriptListener {
    /** One printed line, which may hold line ends. */
    default void print(String text) {}

    /** A table to look at. */
    default void table(ResultTable table) {}

    /** A picture to look at. */
    default void picture(ResultPicture picture) {}

    /**
     * A table to be saved.
     *
     * @param name a plain file name with one of the endings in {@link ResultFiles#ENDINGS}
     */
    default void save(String name, ResultTable table) {}

    /**
     * How far long work is.
     *
     * @param share 0..1
     */
    default void progress(double share, String what) {}
}
