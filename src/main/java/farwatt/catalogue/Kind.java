package farwatt.catalogue;

import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import java.util.List;

/** What a column holds. */
public sealed interface Kind {
    /**
     * A quantity shown in one unit.
     *
     * @param symbol spelling of the unit; {@code ¤} stands for the plan's currency, "" for a bare number
     */
    record Quantity(String symbol) implements Kind {
        /** The unit, with the plan's currency put in. */
        public Unit unit(Units units) {
            return units.need(symbol.replace("¤", units.currency()));
        }
    }

    /** A conductor's gauge (AWG); a larger number is a thinner conductor. */
    record Gauge() implements Kind {}

    record YesNo() implements Kind {}

    /** One word of a list. Words are never read as numbers. */
    record Choice(List<String> words) implements Kind {
        public Choice {
            words = List.copyOf(words);
        }
    }

    /** The id of a row of one of these tables. */
    record RowOf(List<Table> tables) implements Kind {
        public RowOf {
            tables = List.copyOf(tables);
        }
    }

    record Text() implements Kind {}

    /** The unit symbol as headings show it, "" where there is none. */
    default String symbol(Units units) {
        if (this instanceof Quantity q) {
            return q.unit(units).symbol();
        }
        return this instanceof Gauge ? "AWG" : "";
    }
}
