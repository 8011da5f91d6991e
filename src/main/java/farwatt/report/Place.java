package farwatt.report;

/**
 * Where something was seen: a table, a row and a name, each of them "" where it does not apply.
 *
 * @param table key of the table in the plan file, such as "runs"
 * @param row id of the row as typed
 * @param name name of the column or of the value
 */
public record Place(String table, String row, String name) {
    /** No place in particular. */
    public static final Place NONE = new Place("", "", "");

    /** A row as a whole. */
    public static Place row(String table, String row) {
        return new Place(table, row, "");
    }

    /** The place as people read it: {@code trunk · length}. */
    public String text() {
        String left = row.isEmpty() ? table : row;
        if (left.isEmpty() || name.isEmpty()) {
            return left + name;
        }
        return left + " · " + name;
    }
}
