package farwatt.language;

import java.util.Locale;

/** How the values of many rows become one. */
public enum GatherKind {
    /** Their sum; 0 over no rows. */
    TOTAL,
    /** A fault over no rows. */
    MEAN,
    /** A fault over no rows. */
    LEAST,
    /** A fault over no rows. */
    GREATEST,
    /** Yes over no rows. */
    EVERY,
    /** No over no rows. */
    SOME,
    /** How many rows. */
    COUNT;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** As it is typed. */
    public String word() {
        return word;
    }
}
