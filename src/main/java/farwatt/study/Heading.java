package farwatt.study;

import farwatt.language.Type;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;

/**
 * What stands above a column of points.
 *
 * @param name a path such as {@code trunk.gauge}, or an expression as typed
 * @param type how the inside values are to be read
 * @param unit in which a quantity is shown
 */
public record Heading(String name, Type type, Unit unit) {
    /** Shown with this many digits: enough for small steps, no noise of rounding. */
    private static final int DIGITS = 6;

    /** True for a quantity, a temperature or a gauge. */
    public boolean isNumber() {
        return type instanceof Type.Amount || type == Type.Plain.TEMPERATURE || type == Type.Plain.GAUGE;
    }

    /** True where values are words that have no number: texts and rows. */
    public boolean isText() {
        return type == Type.Plain.TEXT || type instanceof Type.RowOf;
    }

    /** An inside value as a person reads it, without the words of texts and rows. */
    public String text(double inside) {
        if (Double.isNaN(inside)) {
            return "–";
        }
        if (type == Type.Plain.YES_NO) {
            return inside == 0 ? "no" : "yes";
        }
        if (type instanceof Type.Choice choice) {
            return choice.words().get((int) inside);
        }
        return Show.text(inside, unit, DIGITS);
    }
}
