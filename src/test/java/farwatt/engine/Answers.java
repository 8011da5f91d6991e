package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.Catalogue;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import java.util.List;

/** What a calculation answers, asked for by row and name. */
record Answers(Calculation calculation) {

    Value value(String id, String name) {
        Plan.Spot spot = calculation.plan().find(id).orElseThrow(() -> new AssertionError("no row " + id));
        return calculation.value(spot.table(), spot.place(), name);
    }

    /** A figure inside (SI); fails with the reason where there is none. */
    double number(String id, String name) {
        return number(value(id, name), id + "." + name);
    }

    private static double number(Value value, String what) {
        assertTrue(value.isPresent(), () -> what + ": " + value.fault().orElseThrow());
        return value.inside();
    }

    String words(String id, String name) {
        Value value = value(id, name);
        assertTrue(
                value.isPresent(), () -> id + "." + name + ": " + value.fault().orElseThrow());
        return value.text();
    }

    Fault fault(String id, String name) {
        Value value = value(id, name);
        return value.fault().orElseThrow(() -> new AssertionError(id + "." + name + " is " + value.text()));
    }

    double ofPlan(String name) {
        return number(calculation.value(Table.PLAN, 0, name), name);
    }

    /** One of the values a person named, a constant or a need. */
    Value named(Table table, String name) {
        int place = table == Table.PRACTICE
                ? Catalogue.of(table).indexOf(Catalogue.need(table, name))
                : calculation.plan().rows(table).place(name);
        return calculation.value(table, place, table == Table.NEEDS ? "holds" : "is");
    }

    List<Notice> notices() {
        return calculation.notices();
    }

    /** The one notice with this code; fails if there is none or more. */
    Notice notice(EngineCode code) {
        List<Notice> found =
                notices().stream().filter(n -> n.code().equals(code.key())).toList();
        assertEquals(1, found.size(), () -> code + " in " + notices());
        return found.get(0);
    }

    /** Nothing fails; a question about an unusual figure is no failure. */
    void clean() {
        assertEquals(
                List.of(),
                notices().stream().filter(n -> n.level() == Level.FAIL).toList());
    }
}
