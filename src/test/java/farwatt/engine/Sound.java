package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.Name;
import farwatt.plan.Table;

/** What must hold of every calculation, whatever the plan. */
final class Sound {
    private Sound() {}

    /** Every name of every row has a finite value or a reason; texts and words are there. */
    static void check(Calculation calculation) {
        for (Table table : Table.values()) {
            for (Name name : calculation.names(table)) {
                for (int place = 0; place < calculation.rows(table); place++) {
                    check(calculation, table, name, place);
                }
            }
        }
    }

    private static void check(Calculation calculation, Table table, Name name, int place) {
        if (name.kind() instanceof farwatt.catalogue.Kind.RowOf) {
            return;
        }
        Value value = calculation.value(table, place, name.key());
        String what = calculation.id(table, place) + "." + name.key();
        if (value.isPresent()) {
            assertTrue(Double.isFinite(value.inside()), () -> what + " is " + value.inside());
            assertFalse(value.text().contains("–"), () -> what + " reads " + value.text());
        } else {
            Fault fault = value.fault().orElseThrow();
            assertFalse(fault.text().isBlank() || fault.text().contains("–"), () -> what + ": " + fault);
            assertFalse(fault.text().equals("There is no number here."), () -> what + ": " + fault);
        }
    }
}
