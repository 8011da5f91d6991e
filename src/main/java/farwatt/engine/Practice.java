package farwatt.engine;

import farwatt.plan.Table;
import java.util.HashMap;
import java.util.Map;

/** The named constants as this plan has them. */
final class Practice {
    private final Col column;
    private final Map<String, Integer> places = new HashMap<>();

    Practice(Layout layout, Columns columns) {
        column = columns.need(Table.PRACTICE, "is");
        for (int place = 0; place < layout.size(Table.PRACTICE); place++) {
            places.put(layout.id(layout.base(Table.PRACTICE) + place), place);
        }
    }

    Col column() {
        return column;
    }

    /** A constant's value inside; a fault where the plan's replacement cannot be read. */
    double value(String name) {
        return column.v[place(name)];
    }

    /** A constant by its place. */
    double at(int place) {
        return column.v[place];
    }

    int place(String name) {
        Integer place = places.get(name);
        if (place == null) {
            throw new IllegalArgumentException("no constant " + name);
        }
        return place;
    }
}
