package farwatt.file;

import java.util.function.Predicate;

/** Names under which things are kept whose own name is taken or means something else. */
final class Kept {
    static final String VERSION = "farwatt";
    static final String SCENARIOS = "scenarios";

    private Kept() {}

    /** The key itself if it is free, else {@code key (2)} and so on. */
    static String name(String key, Predicate<String> taken) {
        String name = key;
        for (int number = 2; taken.test(name); number++) {
            name = key + " (" + number + ")";
        }
        return name;
    }
}
