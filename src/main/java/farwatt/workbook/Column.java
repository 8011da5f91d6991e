package farwatt.workbook;

/**
 * One column of a table.
 *
 * @param key by which formulas name it; unique in its table
 * @param heading in words
 * @param unit as the heading shows it after a comma, "" for none
 * @param band to which group of columns it belongs
 * @param total whether the line under the table adds it up
 */
public record Column(String key, String heading, String unit, Form form, Band band, Total total) {
    /** Groups of columns, told apart by a word above them and a tint. */
    public enum Band {
        /** Filled in by a person, or a default in its place. */
        PLANNED,
        /** Worked out. */
        ANSWER,
        /** To be read on site. */
        READ,
        /** What neither of these is. */
        OTHER
    }

    /** What the line under the table says. */
    public enum Total {
        NONE,
        SUM
    }

    public static Column of(String key, String heading, Form form) {
        return new Column(key, heading, "", form, Band.OTHER, Total.NONE);
    }

    public Column in(Band other) {
        return new Column(key, heading, unit, form, other, total);
    }

    public Column in(String otherUnit) {
        return new Column(key, heading, otherUnit, form, band, total);
    }

    public Column summed() {
        return new Column(key, heading, unit, form, band, Total.SUM);
    }

    /** Heading and unit: {@code length, m}. */
    public String title() {
        return unit.isEmpty() ? heading : heading + ", " + unit;
    }
}
