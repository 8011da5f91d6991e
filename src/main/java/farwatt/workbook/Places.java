package farwatt.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where everything stands, known before the first cell is written, so that formulas can refer ahead. In a formula
 * {@code {key}} is the cell of a column in the same line, {@code {key:all}} a column's cells in all lines,
 * {@code {key@2}} the one in the line counted so from 0, {@code {#key}} a fact above the table, and {@code {Name!key:all}} or {@code {Name!#key}} the same in the table of
 * that name.
 */
final class Places {
    private final Map<String, Place> places = new HashMap<>();

    /** Rows counted from 0: of the headings, the first line and one past the last. */
    record Place(Schedule schedule, String sheet, int headings, int first, int end) {
        int column(String key) {
            List<Column> columns = schedule.columns();
            for (int i = 0; i < columns.size(); i++) {
                if (columns.get(i).key().equals(key)) {
                    return i;
                }
            }
            throw new IllegalArgumentException("no column " + key + " in " + schedule.name());
        }

        int fact(String key) {
            for (int i = 0; i < schedule.facts().size(); i++) {
                if (schedule.facts().get(i).key().equals(key)) {
                    return firstFact() + i;
                }
            }
            throw new IllegalArgumentException("no fact " + key + " in " + schedule.name());
        }

        /** The row of the first fact. */
        int firstFact() {
            return 2;
        }

        /** The row of the groups of columns; without groups the one of the headings. */
        int bands() {
            return schedule.isBanded() ? headings - 1 : headings;
        }
    }

    /** Takes a table in; its title, note, facts and groups of columns stand above its headings. */
    Place put(Schedule schedule, String sheet) {
        int facts = schedule.facts().size();
        int headings = 2 + (facts > 0 ? facts + 1 : 0) + (schedule.isBanded() ? 1 : 0);
        int first = headings + 1;
        Place place = new Place(
                schedule, sheet, headings, first, first + schedule.lines().size());
        places.putIfAbsent(schedule.name(), place);
        return place;
    }

    /** The table of that name, if it is in this workbook. */
    Optional<Place> find(String schedule) {
        return Optional.ofNullable(places.get(schedule));
    }

    /** True where every table that a formula looks into is in this workbook. */
    boolean holds(String formula) {
        for (int open = formula.indexOf('{'); open >= 0; open = formula.indexOf('{', open + 1)) {
            int mark = formula.indexOf('!', open);
            boolean elsewhere = mark > 0 && mark < formula.indexOf('}', open);
            if (elsewhere && !places.containsKey(formula.substring(open + 1, mark))) {
                return false;
            }
        }
        return true;
    }

    Place of(String schedule) {
        Place place = places.get(schedule);
        if (place == null) {
            throw new IllegalArgumentException("no table " + schedule);
        }
        return place;
    }

    /** The formula of a cell that is on no table's line. */
    String resolve(String formula) {
        int mark = formula.indexOf('!');
        return resolve(formula, of(formula.substring(formula.indexOf('{') + 1, mark)), 0);
    }

    /** The formula with cells in place of names, as workbooks want it. */
    String resolve(String formula, Place here, int row) {
        StringBuilder out = new StringBuilder(formula.length() + 16);
        int at = 0;
        for (int open = formula.indexOf('{'); open >= 0; open = formula.indexOf('{', at)) {
            int close = formula.indexOf('}', open);
            out.append(formula, at, open).append(cell(formula.substring(open + 1, close), here, row));
            at = close + 1;
        }
        return out.append(formula, at, formula.length()).toString();
    }

    private String cell(String name, Place here, int row) {
        int mark = name.indexOf('!');
        Place place = mark < 0 ? here : of(name.substring(0, mark));
        String key = name.substring(mark + 1);
        String prefix = mark < 0 ? "" : quoted(place.sheet()) + "!";
        if (key.startsWith("#")) {
            return prefix + "$B$" + (place.fact(key.substring(1)) + 1);
        }
        int line = key.indexOf('@');
        if (line >= 0) {
            int at = place.first() + Integer.parseInt(key.substring(line + 1));
            return prefix + "$" + letters(place.column(key.substring(0, line))) + "$" + (at + 1);
        }
        if (key.endsWith(":all")) {
            String letters = letters(place.column(key.substring(0, key.length() - ":all".length())));
            int last = Math.max(place.end(), place.first() + 1);
            return prefix + letters + "$" + (place.first() + 1) + ":" + letters + "$" + last;
        }
        return letters(place.column(key)) + (row + 1);
    }

    private static String quoted(String sheet) {
        return "'" + sheet.replace("'", "''") + "'";
    }

    /** The letters by which workbooks know a column counted from 0. */
    static String letters(int column) {
        StringBuilder out = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
            out.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return out.toString();
    }
}
