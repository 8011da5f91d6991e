package farwatt.intake;

/**
 * A cell of a customer's list as it stood there.
 *
 * @param text as typed; of a number in a workbook its digits with a decimal point, of a date its ISO form
 * @param form what kind of content it was
 * @param filled true when it stands for the rest of a merged area above
 */
record RawCell(String text, Form form, boolean filled) {
    /** What kind of content a cell was. */
    enum Form {
        /** Text as typed; a number in it follows its column's decimal habit. */
        TEXT,
        /** A workbook's number: decimal point, no grouping. */
        NUMBER,
        /** A number that no result was stored for and that was worked out from its formula. */
        WORKED_OUT,
        DATE,
        /** A result that is an error, such as a failed look-up. */
        ERROR,
        /** A formula without a stored result that could not be worked out; the text is the formula. */
        MISSING
    }

    static final RawCell EMPTY = new RawCell("", Form.TEXT, false);

    static RawCell text(String text) {
        return text.isEmpty() ? EMPTY : new RawCell(text, Form.TEXT, false);
    }

    static RawCell of(Form form, String text) {
        return new RawCell(text, form, false);
    }

    /** The same content standing in another row of a merged area. */
    RawCell filledDown() {
        return new RawCell(text, form, true);
    }

    boolean isBlank() {
        if (text.isEmpty()) {
            return true;
        }
        char first = text.charAt(0);
        boolean seen = first > ' ' && first < 127;
        return !seen && Spelling.strip(text).isBlank();
    }

    /** True when its digits are certain: no decimal habit to find out. */
    boolean isExact() {
        return form == Form.NUMBER || form == Form.WORKED_OUT;
    }
}
