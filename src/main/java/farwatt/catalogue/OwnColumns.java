package farwatt.catalogue;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A person's own columns as names, in the plan's order. A column whose table, kind or unit is not known is left out. */
public final class OwnColumns {
    private final Map<Table, Map<String, Name>> names = new EnumMap<>(Table.class);

    private OwnColumns() {}

    /** The own columns of a plan. Of two of one name in one table the first holds. */
    public static OwnColumns of(Plan plan) {
        OwnColumns own = new OwnColumns();
        Units units = new Units(plan.currency());
        for (Row row : plan.rows(Table.COLUMNS)) {
            Optional<Table> table = Table.of(row.text("table"));
            Optional<Kind> kind = kind(row, units);
            if (table.isPresent() && kind.isPresent()) {
                own.names
                        .computeIfAbsent(table.get(), t -> new LinkedHashMap<>())
                        .putIfAbsent(row.id(), name(table.get(), row, kind.get()));
            }
        }
        return own;
    }

    /** The own columns of a table, input and derived, by name. */
    public Map<String, Name> of(Table table) {
        return names.getOrDefault(table, Map.of());
    }

    private static Name name(Table table, Row row, Kind kind) {
        String formula = row.text("is");
        return new Name(
                table,
                row.id(),
                kind,
                formula.isBlank() ? Stage.GIVEN : Stage.DERIVED,
                Name.Fallback.NONE,
                Optional.empty(),
                row.text("note"),
                formula,
                "");
    }

    private static Optional<Kind> kind(Row row, Units units) {
        String unit = row.text("unit").strip();
        return switch (row.text("kind").strip()) {
            case "", "quantity" ->
                units.of(unit).map(u -> u.isGauge() ? new Kind.Gauge() : new Kind.Quantity(u.symbol()));
            case "yes/no" -> Optional.of(new Kind.YesNo());
            case "text" -> Optional.of(new Kind.Text());
            default -> Optional.empty();
        };
    }
}
