package farwatt.standard;

import java.util.List;
import java.util.Optional;

/**
 * A type of power-giving port (IEEE 802.3 clauses 33 and 145). Passive feeds are no type of the standard and not here.
 *
 * @param word as typed: "1" to "4"
 * @param volts least volts at the port
 * @param watts most watts at the port
 * @param topClass largest class it can grant
 */
public record PortType(String word, double volts, double watts, int topClass) {
    private static final List<PortType> ALL = Facts.rows("port-types").stream()
            .map(row -> new PortType(
                    row.getField("type"),
                    Facts.number(row, "volts"),
                    Facts.number(row, "watts"),
                    Facts.whole(row, "top_class")))
            .toList();

    /** Types 1 to 4 in order. */
    public static List<PortType> all() {
        return ALL;
    }

    /** The type of a word; empty for a passive feed. */
    public static Optional<PortType> of(String word) {
        return ALL.stream().filter(type -> type.word.equals(word)).findFirst();
    }
}
