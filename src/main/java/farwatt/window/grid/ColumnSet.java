package farwatt.window.grid;

import farwatt.catalogue.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which columns of a table are seen, which of them are held in place, and how wide they are. */
final class ColumnSet {
    /** Widths in letters, one letter being half the height of the type. */
    private static final double LEAST = 4;

    private static final double MOST = 80;
    private static final double USUAL_TEXT = 16;
    private static final double USUAL_FIGURE = 12;

    private final Set<String> hidden = new HashSet<>();
    private final Set<String> held = new HashSet<>();
    private final Map<String, Double> widths = new HashMap<>();
    private List<Column> all = List.of();
    private List<Column> seen = List.of();
    private int heldCount;

    /** Takes the columns that the table has now; what was chosen about them by name stays. */
    void update(List<Column> columns) {
        if (all.isEmpty() && !columns.isEmpty() && columns.get(0).tint() == Column.Tint.IDENTITY) {
            held.add(columns.get(0).key());
        }
        all = List.copyOf(columns);
        arrange();
    }

    private void arrange() {
        List<Column> first = new ArrayList<>();
        List<Column> rest = new ArrayList<>();
        for (Column column : all) {
            if (!hidden.contains(column.key())) {
                (held.contains(column.key()) ? first : rest).add(column);
            }
        }
        heldCount = first.size();
        first.addAll(rest);
        seen = List.copyOf(first);
    }

    List<Column> all() {
        return all;
    }

    /** The columns on the screen: the held ones, then the others. */
    List<Column> seen() {
        return seen;
    }

    /** How many of the seen columns are held in place. */
    int held() {
        return heldCount;
    }

    int indexOf(String key) {
        for (int i = 0; i < seen.size(); i++) {
            if (seen.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    boolean isSeen(String key) {
        return !hidden.contains(key);
    }

    boolean isHeld(String key) {
        return held.contains(key);
    }

    /** Shows a hidden column or hides one; the last one seen stays. */
    void toggleSeen(String key) {
        if (!hidden.remove(key) && seen.size() > 1) {
            hidden.add(key);
        }
        arrange();
    }

    void seeAll() {
        hidden.clear();
        arrange();
    }

    void toggleHeld(String key) {
        if (!held.remove(key)) {
            held.add(key);
        }
        arrange();
    }

    /** In letters. */
    double width(Column column) {
        Double chosen = widths.get(column.key());
        if (chosen != null) {
            return chosen;
        }
        double heading = column.key().length() + column.unit().length() + 5;
        double usual = column.unit().isEmpty() && isWordy(column) ? USUAL_TEXT : USUAL_FIGURE;
        return Math.max(usual, heading);
    }

    private static boolean isWordy(Column column) {
        return column.name().kind() instanceof Kind.Text || column.name().kind() instanceof Kind.RowOf;
    }

    void width(Column column, double letters) {
        widths.put(column.key(), Math.max(LEAST, Math.min(MOST, letters)));
    }
}
