package farwatt.plan;

/**
 * What stands in a cell, as typed.
 *
 * @param form how the file holds it
 * @param text what was typed; "yes" or "no" for a yes/no; the digits of a number; the JSON text of anything else
 */
public record Cell(Form form, String text) {
    /** How the file holds a cell. */
    public enum Form {
        TEXT,
        YES_NO,
        NUMBER,
        /** A JSON value that no cell should hold (null, a list, an object); kept as it is. */
        OTHER
    }

    public static final Cell YES = new Cell(Form.YES_NO, "yes");
    public static final Cell NO = new Cell(Form.YES_NO, "no");

    public static Cell text(String text) {
        return new Cell(Form.TEXT, text);
    }

    /** A number by its digits, decimal point. */
    public static Cell number(String digits) {
        return new Cell(Form.NUMBER, digits);
    }
}
