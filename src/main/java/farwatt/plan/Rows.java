package farwatt.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one table in the plan's order. Immutable: every change gives a new one that shares what stayed. Ids are
 * looked up without regard to case; of rows with the same id the first is found.
 */
public final class Rows implements Iterable<Row> {
    public static final Rows NONE = new Rows(new Row[0], null);

    private final Row[] rows;
    private volatile @Nullable Map<String, Integer> places;

    private Rows(Row[] rows, @Nullable Map<String, Integer> places) {
        this.rows = rows;
        this.places = places;
    }

    public static Rows of(List<Row> rows) {
        return new Rows(rows.toArray(new Row[0]), null);
    }

    /** How ids are compared: without regard to case. */
    public static String fold(String id) {
        return id.toLowerCase(Locale.ROOT);
    }

    public int size() {
        return rows.length;
    }

    public Row at(int place) {
        return rows[place];
    }

    /** The place of the first row with this id, or −1. */
    public int place(String id) {
        Map<String, Integer> known = places;
        if (known == null) {
            known = new HashMap<>(rows.length * 2);
            for (int i = 0; i < rows.length; i++) {
                known.putIfAbsent(fold(rows[i].id()), i);
            }
            places = known;
        }
        return known.getOrDefault(fold(id), -1);
    }

    public Optional<Row> row(String id) {
        int at = place(id);
        return at < 0 ? Optional.empty() : Optional.of(rows[at]);
    }

    /** The rows with one replaced. */
    public Rows with(int place, Row row) {
        boolean sameId = rows[place].id().equals(row.id());
        Row[] changed = rows.clone();
        changed[place] = row;
        return new Rows(changed, sameId ? places : null);
    }

    /** A copy of the rows to be changed and handed to {@link #withSameIds}. */
    Row[] copy() {
        return rows.clone();
    }

    /** As many rows with the same ids, other cells. */
    Rows withSameIds(Row[] changed) {
        return new Rows(changed, places);
    }

    /** The rows with one more at a place; the ones from there on move back. */
    public Rows inserted(int place, Row row) {
        Row[] more = new Row[rows.length + 1];
        System.arraycopy(rows, 0, more, 0, place);
        more[place] = row;
        System.arraycopy(rows, place, more, place + 1, rows.length - place);
        return new Rows(more, null);
    }

    /** The rows with one more at the end. */
    public Rows and(Row row) {
        return inserted(rows.length, row);
    }

    /** The rows without the one at a place. */
    public Rows without(int place) {
        Row[] fewer = new Row[rows.length - 1];
        System.arraycopy(rows, 0, fewer, 0, place);
        System.arraycopy(rows, place + 1, fewer, place, fewer.length - place);
        return new Rows(fewer, null);
    }

    @Override
    public Iterator<Row> iterator() {
        return Arrays.asList(rows).iterator();
    }

    /** The rows as an unchangeable list in their order. */
    public List<Row> list() {
        return List.of(rows);
    }

    @Override
    public boolean equals(Object other) {
        return other == this || (other instanceof Rows o && Arrays.equals(rows, o.rows));
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(rows);
    }

    @Override
    public String toString() {
        return Arrays.toString(rows);
    }
}
