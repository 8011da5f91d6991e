package farwatt.review;

/** Comparisons with the one tolerance of the house: 1e-9 relative, so that 30.000000000000004 fits 30. */
final class Near {
    private static final double REL = 1e-9;

    private Near() {}

    /** True if a figure lies above a limit by more than rounding; never for what is no number. */
    static boolean over(double value, double limit) {
        return value - limit > REL * Math.max(Math.abs(value), Math.abs(limit));
    }

    /** True if a figure lies below a limit by more than rounding; never for what is no number. */
    static boolean under(double value, double limit) {
        return over(limit, value);
    }

    /** True if a figure reaches a limit, give or take rounding; never for what is no number. */
    static boolean reaches(double value, double limit) {
        return !Double.isNaN(value) && !Double.isNaN(limit) && !under(value, limit);
    }
}
