package farwatt.catalogue;

import farwatt.quantity.Dimension;
import farwatt.quantity.Unit;
import java.util.Optional;
import java.util.Set;

/** What a quantity of the catalogue cannot be, whatever is meant; beyond what is only unusual. SI inside. */
public record Bounds(double least, boolean leastAllowed, double most, boolean whole) {
    private static final double ABSOLUTE_ZERO = -273.15;
    private static final Set<String> COUNTS = Set.of("ports", "port", "joints", "others", "priority");
    /** Shares of what goes in that comes out. */
    private static final Set<String> EFFICIENCIES = Set.of("efficiency", "load_efficiency", "efficiency_ac");
    /** What something is divided by. */
    private static final Set<String> DIVISORS = Set.of("volts", "link", "cable_diameter", "others_diameter");

    private static final Bounds ANYTHING = new Bounds(Double.NEGATIVE_INFINITY, true, Double.POSITIVE_INFINITY, false);

    /** The bounds of a column; a person's own column has none but those of nature. */
    public static Bounds of(Name name, Unit unit) {
        if (unit.isAbsoluteTemperature()) {
            return new Bounds(ABSOLUTE_ZERO, true, Double.POSITIVE_INFINITY, false);
        }
        boolean signed = unit.isGauge()
                || unit.dimension().equals(Dimension.KELVIN)
                || unit.dimension().money() != 0
                || Catalogue.find(name.table(), name.key()).filter(name::equals).isEmpty();
        if (signed) {
            return ANYTHING;
        }
        boolean efficiency = EFFICIENCIES.contains(name.key());
        boolean positive = efficiency || DIVISORS.contains(name.key());
        return new Bounds(0, !positive, efficiency ? 1 : Double.POSITIVE_INFINITY, COUNTS.contains(name.key()));
    }

    /** Which bound an inside value breaks. */
    public Optional<CatalogueCode> broken(double inside) {
        if (inside < least) {
            return Optional.of(least < 0 ? CatalogueCode.TOO_COLD : CatalogueCode.NEGATIVE);
        }
        if (inside == least && !leastAllowed) {
            return Optional.of(CatalogueCode.ZERO);
        }
        if (inside > most) {
            return Optional.of(CatalogueCode.MORE_THAN_WHOLE);
        }
        return whole && inside != Math.rint(inside) ? Optional.of(CatalogueCode.NOT_WHOLE) : Optional.empty();
    }
}
