package farwatt.window.desk;

import farwatt.quantity.Unit;
import farwatt.quantity.Units;

/** In which units people read lengths and temperatures; what is typed and kept says its own. */
public enum UnitsShown {
    METRIC("metric"),
    IMPERIAL("imperial");

    private final String word;

    UnitsShown(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The unit in which a column is shown that has another of its own. */
    public Unit shown(Unit own, Units units) {
        if (this == METRIC) {
            return own;
        }
        return switch (own.symbol()) {
            case "m" -> units.need("ft");
            case "mm" -> units.need("in");
            case "degC", "°C" -> units.need("degF");
            default -> own;
        };
    }
}
