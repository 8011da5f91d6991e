package farwatt.workbook;

import farwatt.quantity.Unit;

/** How the cells of a column are written and shown. Format codes do not depend on a locale. */
public enum Form {
    /** An identifier or a word of a list: text as it stands, never a number or a formula. */
    WORD("@", 34),
    /** A sentence, wrapped. */
    SENTENCE("General", 44),
    /** A sentence that a formula says, so that its length is not known; has room for two lines. */
    ADVICE("General", 58),
    /** A long sentence in a table that has little else, wrapped. */
    PARAGRAPH("General", 110),
    /** What is cut out of the paper: in a box, wrapped. */
    TAG("General", 30),
    /** A number without decimals. */
    WHOLE("0", 14),
    ONE("0.0", 14),
    TWO("0.00", 14),
    THREE("0.000", 14),
    FOUR("0.0000", 14),
    /** A ratio 0..1 shown in per cent. */
    SHARE("0.0%", 14),
    /** A number of no known size. */
    FREE("General", 14),
    DAY("yyyy-mm-dd", 12),
    /** An empty cell to write a reading in; two decimals. */
    READING("0.00", 9),
    /** The same with three decimals. */
    READING_FINE("0.000", 9);

    private final String code;
    private final int widest;

    Form(String code, int widest) {
        this.code = code;
        this.widest = widest;
    }

    String code() {
        return code;
    }

    /** The most characters a column of this form is wide. */
    int widest() {
        return widest;
    }

    boolean isNumber() {
        return !isWrapped() && this != WORD && this != DAY;
    }

    boolean isReading() {
        return this == READING || this == READING_FINE;
    }

    boolean isWrapped() {
        return this == SENTENCE || this == ADVICE || this == PARAGRAPH || this == TAG;
    }

    int decimals() {
        return switch (this) {
            case ONE, SHARE -> 1;
            case TWO, READING -> 2;
            case THREE, READING_FINE -> 3;
            case FOUR -> 4;
            default -> 0;
        };
    }

    /** The decimals that make sense for quantities in a unit; for a bare number none are known. */
    public static Form of(Unit unit) {
        return switch (unit.symbol()) {
            case "%" -> SHARE;
            case "W", "m", "ft", "K", "degC", "degF", "mm", "Mb/s", "Gb/s", "ohm/km", "min" -> ONE;
            case "V", "h", "%/K", "mm2" -> TWO;
            case "A", "ohm", "kW" -> THREE;
            case "AWG", "Wh", "mA", "mW", "mV", "BTU/h" -> WHOLE;
            default -> FREE;
        };
    }
}
