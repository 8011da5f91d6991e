package farwatt.language;

/**
 * A name that could be typed, for completion and for near names.
 *
 * @param name as the host spells it, without quotes
 * @param what it names
 * @param type of its value
 * @param unit plain spelling of the unit it is shown in, "" for none
 * @param sentence what it is
 */
public record Item(String name, What what, Type type, String unit, String sentence) {
    /** What a name stands for, in the order in which completion offers them. */
    public enum What {
        /** A word of a list of choices. */
        CHOICE,
        COLUMN,
        RELATION,
        VALUE,
        PLAN,
        UNIT,
        WORD,
        TABLE,
        FUNCTION,
        ROW
    }
}
