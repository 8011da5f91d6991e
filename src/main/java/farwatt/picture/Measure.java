package farwatt.picture;

import farwatt.quantity.Show;
import farwatt.quantity.Unit;

/**
 * What is shown along an axis: a name and the unit its values are shown in. Values themselves are SI inside.
 *
 * @param name as a person asked for it
 * @param unit for showing
 */
public record Measure(String name, Unit unit) {
    private static final int DIGITS = 3;

    /** Name and unit, for an axis. */
    String label() {
        String plain = Fit.plain(name);
        return unit.symbol().isEmpty() ? plain : plain + ", " + unit.symbol();
    }

    /** A value with its unit; a dash where it is no number. */
    String text(double inside) {
        return Show.text(inside, unit, DIGITS);
    }

    /** The bare number in the unit. */
    String number(double inside) {
        return Double.isFinite(inside) ? Show.number(unit.fromInside(inside), DIGITS) : "–";
    }
}
