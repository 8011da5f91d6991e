package farwatt.quantity;

/**
 * A unit a person may type. {@code SI = typed · factor / divisor}, for temperatures on a scale
 * {@code °C = (typed − zero) · factor / divisor}; gauges are their own form.
 *
 * @param symbol plain spelling, such as {@code ohm/km}; "" for a bare number
 * @param dimension of the quantity; for gauges none
 * @param factor multiplies what was typed
 * @param divisor divides it (apart from the factor so that 350 mA is 0.35 A to the last bit)
 * @param form how the number is to be read
 */
public record Unit(String symbol, Dimension dimension, double factor, double divisor, Form form) {
    /** How a typed number becomes the inside value. */
    public enum Form {
        /** A factor. */
        PLAIN,
        /** An absolute temperature in °C. */
        CELSIUS,
        /** An absolute temperature in °F. */
        FAHRENHEIT,
        /** A conductor's gauge number (AWG); the inside value is that number. */
        AWG,
        /** A conductor's area in mm²; the inside value is the AWG number of that area (ASTM B258). */
        AREA
    }

    /** No unit: a count or a ratio. */
    public static final Unit ONE = new Unit("", Dimension.NONE, 1, 1, Form.PLAIN);

    /** What was typed as the value used inside: SI, °C for absolute temperatures, AWG numbers for gauges. */
    public double toInside(double typed) {
        return switch (form) {
            case PLAIN -> typed * factor / divisor;
            case CELSIUS, AWG -> typed;
            case FAHRENHEIT -> (typed - 32) * 5 / 9;
            case AREA -> 36 - 39 * Math.log(Math.sqrt(4 * typed / Math.PI) / 0.127) / Math.log(92);
        };
    }

    /** The inside value as a number in this unit. */
    public double fromInside(double inside) {
        return switch (form) {
            case PLAIN -> inside * divisor / factor;
            case CELSIUS, AWG -> inside;
            case FAHRENHEIT -> inside * 9 / 5 + 32;
            case AREA -> {
                double d = 0.127 * Math.pow(92, (36 - inside) / 39);
                yield Math.PI * d * d / 4;
            }
        };
    }

    /** True for °C and °F: a point on the scale, not a difference. */
    public boolean isAbsoluteTemperature() {
        return form == Form.CELSIUS || form == Form.FAHRENHEIT;
    }

    public boolean isGauge() {
        return form == Form.AWG || form == Form.AREA;
    }

    /** True when a value in one unit may be shown in the other. */
    public boolean sameMeasure(Unit other) {
        return isGauge() == other.isGauge()
                && isAbsoluteTemperature() == other.isAbsoluteTemperature()
                && dimension.equals(other.dimension);
    }

    Unit over(Unit o) {
        return new Unit(
                symbol + "/" + o.symbol,
                dimension.over(o.dimension),
                factor * o.divisor,
                divisor * o.factor,
                Form.PLAIN);
    }
}
