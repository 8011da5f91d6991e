package farwatt.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Inside values as text in a unit. A decimal point always; the window puts in the person's own sign. */
public final class Show {
    private static final int USUAL = 4;
    private static final int MOST = 17;

    private Show() {}

    /** With four significant digits, whole numbers whole: {@code 71.9 W}. */
    public static String text(double inside, Unit unit) {
        return text(inside, unit, USUAL);
    }

    /** With so many significant digits, trailing zeros dropped. A value that is no number is shown as a dash. */
    public static String text(double inside, Unit unit, int digits) {
        if (!Double.isFinite(inside)) {
            return "–";
        }
        String number = number(unit.fromInside(inside), digits);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** The shortest number that reads back as the same inside value, with its unit. */
    public static String exact(double inside, Unit unit) {
        double shown = unit.fromInside(inside);
        for (int digits = USUAL; digits < MOST; digits++) {
            String number = number(shown, digits);
            if (unit.toInside(Double.parseDouble(number)) == inside) {
                return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
            }
        }
        return text(inside, unit, MOST);
    }

    /**
     * Two values that are compared, with enough digits that the texts differ whenever the values do: 30.05 beside 30
     * is never shown as 30 beside 30.
     */
    public static String[] apart(double one, double other, Unit unit) {
        int digits = USUAL;
        boolean same = Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
        while (!same && digits < MOST && text(one, unit, digits).equals(text(other, unit, digits))) {
            digits++;
        }
        return new String[] {text(one, unit, digits), text(other, unit, digits)};
    }

    /** A number with so many significant digits; integers up to a million keep all of theirs. */
    public static String number(double value, int digits) {
        if (value == 0 || !Double.isFinite(value)) {
            return value == 0 ? "0" : "–";
        }
        BigDecimal exact = new BigDecimal(value);
        int whole = exact.precision() - exact.scale();
        BigDecimal rounded = exact.round(new MathContext(Math.max(digits, Math.min(whole, 7)), RoundingMode.HALF_EVEN));
        BigDecimal plain = rounded.stripTrailingZeros();
        int exponent = plain.precision() - plain.scale() - 1;
        if (exponent >= -5 && exponent < 9) {
            return plain.toPlainString();
        }
        return plain.toString().replace("E+", "e").replace('E', 'e');
    }
}
