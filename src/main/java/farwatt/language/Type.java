package farwatt.language;

import farwatt.quantity.Dimension;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import java.util.List;

/** What kind of value an expression gives, and with it how the number inside is to be read. Immutable. */
public sealed interface Type {
    /** A quantity; inside in SI. */
    record Amount(Dimension dimension) implements Type {}

    /** One word of a list; inside its place in the list, counted from 0. */
    record Choice(List<String> words) implements Type {
        public Choice {
            words = List.copyOf(words);
        }
    }

    /**
     * A row; inside its number.
     *
     * @param kind what may be asked of it, in the host's words
     */
    record RowOf(String kind) implements Type {}

    /** The types that need nothing more said. */
    enum Plain implements Type {
        /** A point on the scale; inside in °C. Differences are amounts in kelvin. */
        TEMPERATURE,
        /** A conductor's gauge; inside the AWG number. */
        GAUGE,
        /** Inside 1 for yes, 0 for no. */
        YES_NO,
        /** Inside the number that the host's pool of texts gave. */
        TEXT,
        /** Something is wrong already, or nothing in particular is wanted. */
        UNKNOWN
    }

    /** The type of values typed in a unit. */
    static Type of(Unit unit) {
        if (unit.isAbsoluteTemperature()) {
            return Plain.TEMPERATURE;
        }
        return unit.isGauge() ? Plain.GAUGE : new Amount(unit.dimension());
    }

    /** The unit in which a value is shown when nothing else says one. */
    default Unit unit(Units units) {
        if (this instanceof Amount amount) {
            return units.plain(amount.dimension());
        }
        if (this == Plain.TEMPERATURE) {
            return units.need("degC");
        }
        return this == Plain.GAUGE ? units.need("AWG") : Unit.ONE;
    }
}
