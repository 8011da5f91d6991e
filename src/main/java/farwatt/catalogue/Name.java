package farwatt.catalogue;

import farwatt.plan.Table;
import java.util.Optional;

/**
 * One name of the catalogue.
 *
 * @param table whose rows have it; {@link Table#PRACTICE} for the named constants
 * @param key the name in expressions, files and answers
 * @param kind what it holds
 * @param stage when it gets its value
 * @param fallback what takes the place of an empty cell
 * @param plausible outside it a typed value is asked about; empty where anything goes
 * @param sentence what it is, one sentence
 * @param formula how it comes about, in names; "" for what is filled in
 * @param source where formula or default come from
 */
public record Name(
        Table table,
        String key,
        Kind kind,
        Stage stage,
        Fallback fallback,
        Optional<Range> plausible,
        String sentence,
        String formula,
        String source) {

    /**
     * What an empty cell means.
     *
     * @param literal canonical text of the default, "" if it is no fixed value
     * @param rule how the default is found, "" if there is none beyond the literal
     */
    public record Fallback(String literal, String rule) {
        public static final Fallback NONE = new Fallback("", "");

        /** As the catalogue shows it: the literal, or the rule in words. */
        public String text() {
            return literal.isEmpty() ? rule : literal;
        }
    }

    /**
     * Bounds in the unit of the column, both allowed.
     */
    public record Range(double low, double high) {}

    /** {@code runs.length}: unique in the catalogue. */
    public String path() {
        return table.key() + "." + key;
    }
}
