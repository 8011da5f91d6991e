package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Place;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers every row of a plan: table after table in one sequence, so that a row of any table is one int. Practice has
 * a row for every constant of the catalogue, whether the plan replaces it or not.
 */
final class Layout {
    private static final List<Table> ORDER = List.of(
            Table.ZONES,
            Table.BUNDLES,
            Table.SOURCES,
            Table.SWITCHES,
            Table.RUNS,
            Table.DEVICES,
            Table.VALUES,
            Table.PRACTICE,
            Table.PLAN,
            Table.NEEDS);

    private final int[] bases = new int[Table.values().length];
    private final int[] sizes = new int[Table.values().length];
    private final String[] ids;
    private final byte[] tables;
    private final Map<String, Integer> siteRows = new HashMap<>();
    private final Map<String, Integer> values = new HashMap<>();
    private final Map<String, Integer> practice = new HashMap<>();

    Layout(Plan plan) {
        int rows = 0;
        for (Table table : ORDER) {
            int size = table == Table.PRACTICE
                    ? Catalogue.of(table).size()
                    : plan.rows(table).size();
            bases[table.ordinal()] = rows;
            sizes[table.ordinal()] = size;
            rows += size;
        }
        ids = new String[rows];
        tables = new byte[rows];
        for (Table table : ORDER) {
            Arrays.fill(tables, base(table), base(table) + size(table), (byte) table.ordinal());
            name(table, plan);
        }
    }

    private void name(Table table, Plan plan) {
        int at = base(table);
        if (table == Table.PRACTICE) {
            for (var constant : Catalogue.of(table)) {
                ids[at] = constant.key();
                practice.put(constant.key(), at++);
            }
            return;
        }
        for (var row : plan.rows(table)) {
            ids[at] = row.id();
            if (table.isSite()) {
                siteRows.putIfAbsent(Rows.fold(row.id()), at);
            } else if (table == Table.VALUES) {
                values.putIfAbsent(row.id(), at);
            }
            at++;
        }
    }

    int base(Table table) {
        return bases[table.ordinal()];
    }

    int size(Table table) {
        return sizes[table.ordinal()];
    }

    int end(Table table) {
        return base(table) + size(table);
    }

    int rows() {
        return ids.length;
    }

    String id(int row) {
        return ids[row];
    }

    /** The row as a place. */
    Place place(int row) {
        return Place.row(table(row).key(), id(row));
    }

    /**
     * The cell of a row as a place. A value, constant or need is what its name stands for; its note and the like are
     * cells beside it.
     */
    Place place(int row, String key) {
        if (row >= rows()) {
            // a gather that stands alone has a cell behind all rows
            return new Place("", "", key);
        }
        Table table = table(row);
        if (table == Table.PLAN) {
            return new Place(table.key(), "", key);
        }
        boolean itself = !table.isSite() && (key.equals("is") || key.equals("holds"));
        return itself ? new Place(table.key(), "", id(row)) : new Place(table.key(), id(row), key);
    }

    Table table(int row) {
        return Table.values()[tables[row]];
    }

    boolean isIn(int row, Table table) {
        return row >= 0 && tables[row] == table.ordinal();
    }

    /** The row on the site with this id, −1 if there is none; of several the first. */
    int siteRow(String id) {
        return siteRows.getOrDefault(Rows.fold(id), -1);
    }

    /** The row of a person's value, −1 if there is none. */
    int value(String name) {
        return values.getOrDefault(name, -1);
    }

    /** The row of a constant of practice, −1 if there is none. */
    int practice(String name) {
        return practice.getOrDefault(name, -1);
    }

    /** The table and place of a row. */
    Plan.Spot spot(int row) {
        Table table = table(row);
        return new Plan.Spot(table, row - base(table));
    }
}
