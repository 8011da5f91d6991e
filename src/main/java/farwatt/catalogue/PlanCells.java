package farwatt.catalogue;

import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The readers of all columns that a plan has, the catalogue's and a person's own. One thread at a time. */
public final class PlanCells {
    private final OwnColumns own;
    private final Units units;
    private final Map<Table, Map<String, Optional<CellReader>>> readers = new EnumMap<>(Table.class);

    private PlanCells(OwnColumns own, Units units) {
        this.own = own;
        this.units = units;
    }

    public static PlanCells of(Plan plan) {
        return new PlanCells(OwnColumns.of(plan), new Units(plan.currency()));
    }

    public OwnColumns own() {
        return own;
    }

    /**
     * The reader of a cell.
     *
     * @param row id of its row; what a practice row's value means depends on it
     * @return empty where no column has that name, or one that is not filled in by hand
     */
    public Optional<CellReader> reader(Table table, String row, String key) {
        Map<String, Optional<CellReader>> known = readers.computeIfAbsent(table, t -> new HashMap<>());
        String column = table == Table.PRACTICE && key.equals("is") ? "is " + row : key;
        Optional<CellReader> reader = known.get(column);
        if (reader == null) {
            reader = name(table, row, key).map(name -> CellReader.of(name, units));
            known.put(column, reader);
        }
        return reader;
    }

    private Optional<Name> name(Table table, String row, String key) {
        Optional<Name> mine = Optional.ofNullable(own.of(table).get(key));
        if (mine.isPresent()) {
            return mine.filter(name -> name.stage() == Stage.GIVEN);
        }
        if (table == Table.PRACTICE && key.equals("is")) {
            Optional<Name> constant = Catalogue.find(table, row);
            if (constant.isPresent()) {
                return constant;
            }
        }
        return Catalogue.cells(table).stream()
                .filter(name -> name.key().equals(key))
                .findFirst();
    }
}
