package farwatt.language;

import farwatt.quantity.Literal;
import farwatt.report.Span;
import java.util.Optional;

/**
 * A word of a text.
 *
 * @param text the word as it stands; of texts and rows what is between the quotes
 * @param literal of a quantity
 */
public record Token(Kind kind, Span span, String text, Optional<Literal> literal) {
    /** Kinds of words. */
    public enum Kind {
        QUANTITY,
        TEXT,
        ROW,
        NAME,
        /** A reserved word. */
        WORD,
        SIGN,
        END
    }

    /** True for this reserved word. */
    public boolean is(Keyword keyword) {
        return kind == Kind.WORD && text.equals(keyword.word());
    }

    /** True for this sign. */
    public boolean is(String sign) {
        return kind == Kind.SIGN && text.equals(sign);
    }
}
