package farwatt.report;

/**
 * One thing to tell a person: how much it matters, which kind it is, where, and the sentence.
 *
 * @param level how much it matters
 * @param code key of the kind, such as {@code file.not_json}
 * @param place where
 * @param text one sentence that says what is wrong and the way out
 */
public record Notice(Level level, String code, Place place, String text) {
    /** A notice with the catalogue's sentence for the code. */
    public static Notice of(Level level, Code code, Place place, Object... parts) {
        return new Notice(level, code.key(), place, Messages.text(code, parts));
    }

    /** Place and sentence on one line. */
    public String line() {
        String where = place.text();
        return where.isEmpty() ? text : where + ": " + text;
    }
}
