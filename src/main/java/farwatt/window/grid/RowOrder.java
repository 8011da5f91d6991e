package farwatt.window.grid;

import farwatt.plan.NaturalOrder;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Which rows of a table are seen and in which order: sorted and filtered, while the plan's order stays. Once found, the
 * order holds while values change, so that no row jumps away from under the person; rows that are added stand where
 * they stand in the plan.
 */
final class RowOrder {
    /** Which way rows are sorted. */
    enum Way {
        UP,
        DOWN
    }

    /** Which rows are let through besides the text. */
    enum Only {
        ALL,
        FAILING
    }

    /** A column that rows are sorted by. */
    record By(String key, Way way) {}

    private final Table table;
    private Optional<By> by = Optional.empty();
    private String text = "";
    private Only only = Only.ALL;
    private int[] places = {};
    private Rows known = Rows.NONE;

    RowOrder(Table table) {
        this.table = table;
    }

    int size() {
        return places.length;
    }

    /** The place in the plan of a row by where it is seen. */
    int place(int seen) {
        return places[seen];
    }

    /** Where a row is seen by its place in the plan; −1 where it is filtered out. */
    int seen(int place) {
        for (int i = 0; i < places.length; i++) {
            if (places[i] == place) {
                return i;
            }
        }
        return -1;
    }

    Optional<By> by() {
        return by;
    }

    String text() {
        return text;
    }

    Only only() {
        return only;
    }

    boolean isPlain() {
        return by.isEmpty() && text.isEmpty() && only == Only.ALL;
    }

    /** Sorts upwards, then downwards, then not at all. */
    void cycle(String key) {
        Optional<Way> now = by.filter(b -> b.key().equals(key)).map(By::way);
        if (now.isEmpty()) {
            by = Optional.of(new By(key, Way.UP));
        } else {
            by = now.get() == Way.UP ? Optional.of(new By(key, Way.DOWN)) : Optional.empty();
        }
    }

    void filter(String wanted, Only rows) {
        text = wanted;
        only = rows;
    }

    /** Takes a new plan; order and filter are found anew only where the rows are others. */
    void follow(Shown shown) {
        Rows rows = shown.plan().rows(table);
        if (isPlain()) {
            places = counted(rows.size());
        } else if (!sameIds(rows)) {
            merge(rows);
        }
        known = rows;
    }

    private boolean sameIds(Rows rows) {
        boolean same = rows.size() == known.size();
        for (int i = 0; same && i < rows.size(); i++) {
            same = rows.at(i).id().equals(known.at(i).id());
        }
        return same;
    }

    private static int[] counted(int size) {
        int[] all = new int[size];
        for (int i = 0; i < size; i++) {
            all[i] = i;
        }
        return all;
    }

    /** What was seen stays in its order; what is new stands after the row it follows in the plan. */
    private void merge(Rows rows) {
        Map<String, Integer> seenAt = new HashMap<>();
        for (int i = 0; i < places.length; i++) {
            seenAt.putIfAbsent(known.at(places[i]).id(), i);
        }
        Map<String, Integer> before = new HashMap<>();
        known.forEach(row -> before.merge(row.id(), 1, Integer::sum));
        List<double[]> spots = new ArrayList<>();
        double last = -1;
        for (int i = 0; i < rows.size(); i++) {
            Integer at = seenAt.get(rows.at(i).id());
            boolean fresh = !before.containsKey(rows.at(i).id());
            if (at != null) {
                last = at;
            }
            if (at != null || fresh) {
                spots.add(new double[] {at == null ? last + 0.5 : at, i});
            }
        }
        spots.sort(Comparator.comparingDouble(spot -> spot[0]));
        places = spots.stream().mapToInt(spot -> (int) spot[1]).toArray();
    }

    /** Finds order and filter anew. */
    void arrange(Shown shown, List<Column> columns) {
        Rows rows = shown.plan().rows(table);
        known = rows;
        List<Integer> kept = new ArrayList<>();
        String wanted = text.toLowerCase(Locale.ROOT);
        for (int i = 0; i < rows.size(); i++) {
            if (isLetThrough(shown, columns, i, wanted)) {
                kept.add(i);
            }
        }
        by.ifPresent(b -> columns.stream()
                .filter(c -> c.key().equals(b.key()))
                .findFirst()
                .ifPresent(column -> sort(shown, column, b.way(), kept)));
        places = kept.stream().mapToInt(Integer::intValue).toArray();
    }

    private boolean isLetThrough(Shown shown, List<Column> columns, int place, String wanted) {
        if (only == Only.FAILING
                && shown.verdict(table, place).filter(Level.FAIL::equals).isEmpty()) {
            return false;
        }
        return wanted.isEmpty()
                || columns.stream()
                        .anyMatch(column -> shown.face(table, place, column)
                                .text()
                                .toLowerCase(Locale.ROOT)
                                .contains(wanted));
    }

    private void sort(Shown shown, Column column, Way way, List<Integer> kept) {
        Map<Integer, Face> faces = new HashMap<>();
        kept.forEach(place -> faces.put(place, shown.face(table, place, column)));
        Comparator<Face> order = Comparator.comparingInt(RowOrder::group);
        Comparator<Face> inside = (a, b) -> Double.isNaN(a.figure()) || Double.isNaN(b.figure())
                ? NaturalOrder.IDS.compare(a.text(), b.text())
                : Double.compare(a.figure(), b.figure());
        Comparator<Face> whole = order.thenComparing(way == Way.UP ? inside : inside.reversed());
        kept.sort((a, b) -> whole.compare(need(faces, a), need(faces, b)));
    }

    private static Face need(Map<Integer, Face> faces, Integer place) {
        return faces.getOrDefault(place, Face.empty());
    }

    /** Figures first, then words; what has no value stands last whichever way rows are sorted. */
    private static int group(Face face) {
        if (face.text().isEmpty() || face.origin() == Face.Origin.FAULT || face.origin() == Face.Origin.WAITING) {
            return 2;
        }
        return Double.isNaN(face.figure()) ? 1 : 0;
    }
}
