package farwatt.circuit;

/**
 * A round conductor known by its American wire gauge: diameter, area and ohms per metre.
 *
 * <p>Pure functions; safe from any thread.
 */
public final class Conductor {

    /** Resistivity of annealed copper at 20 °C in ohm metres (the international annealed copper standard). */
    public static final double COPPER_OHM_METRES = 1.7241e-8;

    /** Change of copper's resistance per kelvin, taken from 20 °C. */
    public static final double COPPER_PER_KELVIN = 0.00393;

    private static final double GAUGE_36_METRES = 0.127e-3;
    private static final double RATIO_OVER_THE_SERIES = 92;
    private static final double STEPS_IN_THE_SERIES = 39;

    private Conductor() {}

    /**
     * Diameter by gauge, ASTM B258: 0.127 mm · 92^((36 − gauge)/39).
     *
     * @param gauge the gauge number
     * @return metres
     */
    public static double diameter(double gauge) {
        return GAUGE_36_METRES * Math.pow(RATIO_OVER_THE_SERIES, (36 - gauge) / STEPS_IN_THE_SERIES);
    }

    /**
     * Cross-section of a round wire of that gauge.
     *
     * @param gauge the gauge number
     * @return square metres
     */
    public static double area(double gauge) {
        double diameter = diameter(gauge);
        return Math.PI * diameter * diameter / 4;
    }

    /**
     * Resistance at 20 °C of one conductor per metre of cable.
     *
     * @param gauge the gauge number
     * @param ohmMetres resistivity at 20 °C, for copper {@link #COPPER_OHM_METRES}
     * @param layFactor how much longer the twisted conductor is than the cable; 1 for a straight wire
     * @return ohms per metre
     */
    public static double ohmsPerMetre(double gauge, double ohmMetres, double layFactor) {
        return ohmMetres / area(gauge) * layFactor;
    }
}
