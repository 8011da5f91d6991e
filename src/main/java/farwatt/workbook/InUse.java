package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Value;
import farwatt.plan.Table;
import java.util.stream.IntStream;

/** The rows that are not left out of everything. */
final class InUse {
    private InUse() {}

    /** Their places in the plan's order. */
    static int[] places(Calculation calc, Table table) {
        return IntStream.range(0, calc.rows(table))
                .filter(place -> isIn(calc.value(table, place, "in_use")))
                .toArray();
    }

    private static boolean isIn(Value inUse) {
        return !inUse.isPresent() || inUse.inside() != 0;
    }
}
