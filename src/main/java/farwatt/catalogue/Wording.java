package farwatt.catalogue;

import farwatt.plan.Table;
import farwatt.quantity.Decimal;

/**
 * What rooms below the language must know about expressions as texts. The room that joins both fills it in. A text that
 * cannot be read comes back as it was.
 */
public interface Wording {
    /** Knows nothing of expressions: takes blanks off the ends. */
    Wording PLAIN = new Wording() {
        @Override
        public String canonical(String text, Decimal decimal) {
            return text.strip();
        }

        @Override
        public String renamed(Table table, String text, Renaming renaming) {
            return text;
        }
    };

    /**
     * The one way in which an expression is written: decimal point, plain spellings, single spaces.
     *
     * @param decimal the sign with which the text was typed; files have the point
     */
    String canonical(String text, Decimal decimal);

    /**
     * The expression with every mention of what was renamed under its new name, all else untouched.
     *
     * @param table in whose rows the text stands, since a bare name is first the row's own; {@link Table#PLAN} for
     *     what stands in none
     */
    String renamed(Table table, String text, Renaming renaming);

    /** True when the expression mentions a row, value or column. */
    default boolean mentions(Table table, String text, Table of, String id) {
        return !renamed(table, text, new Renaming(of, id, id + " 2")).equals(text);
    }

    /**
     * A new name.
     *
     * @param of where the renamed row stands; {@link Table#VALUES} for a value, {@link Table#COLUMNS} for an own column
     */
    record Renaming(Table of, String from, String to) {}
}
