package farwatt.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The distinct values of one column of figures, in the order in which they first come. */
final class Axis {
    private final Figures figures;
    final int column;
    private final Map<Object, Integer> places = new HashMap<>();
    private final List<Integer> first = new ArrayList<>();

    Axis(Figures figures, int column) {
        this.figures = figures;
        this.column = column;
        for (int i = 0; i < figures.size(); i++) {
            Object key = key(i);
            if (!places.containsKey(key)) {
                places.put(key, first.size());
                first.add(i);
            }
        }
    }

    private Object key(int point) {
        double inside = figures.inside(point, column);
        return Double.isNaN(inside) ? figures.text(point, column) : (Object) (inside + 0.0);
    }

    int size() {
        return first.size();
    }

    /** Which of the values a point has. */
    int place(int point) {
        return places.getOrDefault(key(point), 0);
    }

    /** A value as a person reads it. */
    String text(int place) {
        return figures.text(first.get(place), column);
    }

    String name() {
        return figures.columns().get(column).name();
    }
}
