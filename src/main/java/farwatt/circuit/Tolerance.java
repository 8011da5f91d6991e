package farwatt.circuit;

/**
 * The one place for the tolerances that decide whether something fits.
 *
 * <p>Without state; safe from any thread.
 */
public final class Tolerance {

    /** Relative slack of every comparison of a draw against a limit: far above rounding, far below any figure typed. */
    public static final double REL = 1e-9;

    /**
     * Watts by which a class's port watts may exceed a port's limit. The class table's own watts are rounded: computed
     * from volts, loop and right they differ by up to 0.07 W (IEEE 802.3 clauses 33 and 145).
     */
    public static final double CLASS_WATTS = 0.1;

    private Tolerance() {}

    /**
     * Whether a need fits a limit, both in the same unit; a limit that is not a number fits nothing.
     *
     * @param need what is asked for
     * @param limit what there is; may be infinite
     * @return true if the need is at most the limit, give or take {@link #REL}
     */
    public static boolean fits(double need, double limit) {
        return need <= limit || need - limit <= REL * Math.abs(limit);
    }

    /**
     * Whether a class's port watts fit what a port can give.
     *
     * @param portWatts the class's watts at the port
     * @param limit the port's watts
     * @return true if they fit, give or take {@link #CLASS_WATTS}
     */
    public static boolean fitsClass(double portWatts, double limit) {
        return portWatts <= limit + CLASS_WATTS;
    }

    /**
     * Whether two figures are the same within {@link #REL} of the larger; an infinite one is the same as its like only.
     *
     * @param a one figure
     * @param b the other
     * @return true if they differ by no more than the tolerance
     */
    static boolean same(double a, double b) {
        double apart = Math.abs(a - b);
        return a == b || (apart < Double.POSITIVE_INFINITY && apart <= REL * Math.max(Math.abs(a), Math.abs(b)));
    }
}
