package farwatt.language;

import farwatt.report.Span;

/** A stretch of a text and what it is, for colouring. */
public record Coloured(Span span, Colour colour) {
    /** Classes of what a text is made of. */
    public enum Colour {
        NUMBER,
        UNIT,
        TEXT,
        ROW,
        NAME,
        /** A name after a point. */
        MEMBER,
        /** A word of the language. */
        WORD,
        /** A function or a gather. */
        CALL,
        TABLE,
        SIGN,
        /** Nothing the language knows. */
        STRANGE
    }
}
