package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.catalogue.Name;
import farwatt.plan.Table;
import farwatt.report.Notice;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Everything a calculation says in every corner, by row and name: numbers to the last bit, texts as texts, faults with
 * all they carry. What stands in rows of one id twice cannot be told apart and is not looked at.
 */
record Snapshot(Map<String, Object> values, List<String> notices) {
    static Snapshot of(Calculation calculation) {
        Map<String, Object> values = new TreeMap<>();
        Corner before = calculation.corner();
        for (Corner corner : Corner.values()) {
            calculation.look(corner);
            for (Table table : Table.values()) {
                for (Name name : calculation.names(table)) {
                    for (int place = 0; place < calculation.rows(table); place++) {
                        String key = corner.word() + " " + table.key() + " " + calculation.id(table, place) + "."
                                + name.key();
                        values.put(key, said(calculation.value(table, place, name.key())));
                    }
                }
            }
        }
        calculation.look(before);
        List<String> notices =
                calculation.notices().stream().map(Notice::toString).sorted().toList();
        return new Snapshot(values, notices);
    }

    private static Object said(Value value) {
        if (value.fault().isPresent()) {
            return value.fault().get();
        }
        boolean number = value.isNumber() || value.words().isEmpty();
        return number ? Double.toHexString(value.inside()) + " " + value.type() : value.words();
    }

    void assertSame(Snapshot other, String when) {
        assertEquals(notices, other.notices, when);
        assertEquals(values.keySet(), other.values.keySet(), when);
        values.forEach((key, value) -> assertEquals(value, other.values.get(key), () -> when + ", " + key));
    }
}
