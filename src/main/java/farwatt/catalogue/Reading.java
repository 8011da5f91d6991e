package farwatt.catalogue;

import farwatt.report.Notice;
import java.util.Optional;

/**
 * What stands in a cell, understood.
 *
 * @param form which of the other parts counts
 * @param inside SI value, 1/0 for yes/no, place of a word in its list
 * @param text canonical text; of an expression the text as typed
 * @param notice a question or mistake
 */
public record Reading(Form form, double inside, String text, Optional<Notice> notice) {
    /** What a cell turned out to hold. */
    public enum Form {
        /** A quantity, a yes/no or a word: {@link #inside} has it. */
        NUMBER,
        /** A text as it stands. */
        TEXT,
        /** No literal; may be an expression. */
        EXPRESSION,
        /** Cannot be; {@link #notice} says why. */
        WRONG
    }

    static Reading number(double inside, String text, Optional<Notice> question) {
        return new Reading(Form.NUMBER, inside, text, question);
    }

    static Reading text(String text) {
        return new Reading(Form.TEXT, 0, text, Optional.empty());
    }

    static Reading expression(String text) {
        return new Reading(Form.EXPRESSION, 0, text, Optional.empty());
    }

    static Reading wrong(String text, Notice why) {
        return new Reading(Form.WRONG, 0, text, Optional.of(why));
    }
}
