package farwatt.workbook;

import java.util.Optional;

/**
 * One column of a table.
 *
 * @param key by which formulas name it; unique in its table
 * @param heading in words
 * @param unit as the heading shows it after a comma, "" for none
 * @param band to which group of columns it belongs
 * @param total whether the line under the table adds it up
 * @param bounds what may be typed into it; empty where nothing is asked
 * @param says how its figures come about, for a note at the heading; "" for none
 */
public record Column(
        String key,
        String heading,
        String unit,
        Form form,
        Band band,
        Total total,
        Optional<Bounds> bounds,
        String says) {
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

    /** The least and the most that may be typed, in the column's unit. */
    public record Bounds(double low, double high) {}

    public static Column of(String key, String heading, Form form) {
        return new Column(key, heading, "", form, Band.OTHER, Total.NONE, Optional.empty(), "");
    }

    public Column in(Band other) {
        return new Column(key, heading, unit, form, other, total, bounds, says);
    }

    public Column in(String otherUnit) {
        return new Column(key, heading, otherUnit, form, band, total, bounds, says);
    }

    public Column as(Form other) {
        return new Column(key, heading, unit, other, band, total, bounds, says);
    }

    public Column within(double low, double high) {
        return new Column(key, heading, unit, form, band, total, Optional.of(new Bounds(low, high)), says);
    }

    public Column summed() {
        return new Column(key, heading, unit, form, band, Total.SUM, bounds, says);
    }

    public Column saying(String how) {
        return new Column(key, heading, unit, form, band, total, bounds, how);
    }

    /** Heading and unit: {@code length, m}. */
    public String title() {
        return unit.isEmpty() ? heading : heading + ", " + unit;
    }
}
