package farwatt.circuit;

/**
 * How warm a bundle of cables gets for each watt it gives off per metre.
 *
 * <p>The model is our own calibration (rms error 9 % against 15 published open-air measurements): a film at the surface
 * of the bundle and an even source of heat within it. Every figure is passed in; the constants here are the named
 * starting values. Pure functions, safe from any thread. Diameters and thicknesses in metres, thermal resistances in
 * K·m/W of the <em>whole</em> bundle's heat.
 */
public final class BundleHeat {

    /** Bundle diameter over the root of the sum of squared cable diameters. */
    public static final double PACKING = 1.15;

    /** Conductivity of the packed cables, W/(m·K). */
    public static final double CORE_CONDUCTIVITY = 0.15;

    /** Surface film in free air, W/(m²·K). */
    public static final double OPEN_FILM = 10;

    /** Surface film in a lidded tray, W/(m²·K). */
    public static final double TRAY_FILM = 7;

    /** Surface film in a closed conduit, W/(m²·K). */
    public static final double CONDUIT_FILM = 5;

    /** A cable counts for no more than this diameter in a closed conduit, m. */
    public static final double CONDUIT_DIAMETER = 0.0058;

    /** Conductivity of common insulation, W/(m·K). */
    public static final double INSULATION_CONDUCTIVITY = 0.04;

    /** Thickness of insulation where none is given, m. */
    public static final double INSULATION_THICKNESS = 0.1;

    private BundleHeat() {}

    /**
     * Diameter of a bundle.
     *
     * @param sumOfSquares the sum of the squared cable diameters, m²
     * @param packing see {@link #PACKING}
     * @return metres
     */
    public static double diameter(double sumOfSquares, double packing) {
        return packing * Math.sqrt(sumOfSquares);
    }

    /**
     * Heat of a cable whose loaded conductors all carry the same current.
     *
     * @param conductors how many are loaded
     * @param amps in each of them
     * @param ohmsPerMetre of one conductor at the temperature looked at
     * @return W/m
     */
    public static double wattsPerMetre(int conductors, double amps, double ohmsPerMetre) {
        return conductors * amps * amps * ohmsPerMetre;
    }

    /**
     * Thermal resistance of a bundle in air: 1/(π·D·h) + (1 − 1/N)/(4·π·k), our calibration.
     *
     * @param diameter of the bundle, D
     * @param cables in the bundle, N, at least 1
     * @param film see {@link #OPEN_FILM}, h
     * @param core see {@link #CORE_CONDUCTIVITY}, k
     * @param margin factor on the whole: above 1 for design, 1 to compare with measurement, 0 leaves heat out
     * @return K·m/W
     */
    public static double inAir(double diameter, int cables, double film, double core, double margin) {
        return margin * (1 / (Math.PI * diameter * film) + within(cables, core));
    }

    /**
     * Thermal resistance of a bundle under insulation of even thickness:
     * ln((D + 2t)/D)/(2·π·λ) + 1/(π·(D + 2t)·h) + (1 − 1/N)/(4·π·k), our calibration.
     *
     * @param diameter of the bundle, D
     * @param cables in the bundle, N, at least 1
     * @param thickness of the insulation, t
     * @param insulation its conductivity, λ
     * @param film at its outer surface, h
     * @param core see {@link #CORE_CONDUCTIVITY}, k
     * @param margin as for {@link #inAir}
     * @return K·m/W
     */
    public static double insulated(
            double diameter, int cables, double thickness, double insulation, double film, double core, double margin) {
        double outer = diameter + 2 * thickness;
        double layer = Math.log(outer / diameter) / (2 * Math.PI * insulation);
        return margin * (layer + 1 / (Math.PI * outer * film) + within(cables, core));
    }

    private static double within(int cables, double core) {
        return (1 - 1.0 / cables) / (4 * Math.PI * core);
    }
}
