package farwatt.language;

/**
 * How quantities are compared: two that differ by less than a billionth of the larger one are the same, so that what
 * is equal on paper is equal here: 0.1 + 0.2 is 0.3, and 30.000000000000004 W is at most 30 W but not less than it. A
 * difference that should be zero is never within a billionth of zero: compare the two values, not their difference.
 */
final class Tolerance {
    static final double RELATIVE = 1e-9;
    /** Temperatures are compared on the scale that starts at no heat at all. */
    static final double KELVIN_AT_ZERO = 273.15;

    private Tolerance() {}

    static boolean same(double a, double b) {
        return a == b || Math.abs(a - b) <= RELATIVE * Math.max(Math.abs(a), Math.abs(b));
    }
}
