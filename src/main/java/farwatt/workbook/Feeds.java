package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.HashMap;
import java.util.Map;

/** Which run feeds what, by ids without regard to case. */
final class Feeds {
    private final Map<String, String> runs = new HashMap<>();
    private final Map<String, String> nodes = new HashMap<>();

    private final Plan plan;

    Feeds(Calculation calc) {
        plan = calc.plan();
        for (int place = 0; place < calc.rows(Table.RUNS); place++) {
            Row row = plan.rows(Table.RUNS).at(place);
            String to = row.text("to");
            if (calc.value(Table.RUNS, place, "in_use").inside() != 0 && !to.isBlank()) {
                runs.putIfAbsent(Rows.fold(to.strip()), row.id());
                nodes.putIfAbsent(Rows.fold(to.strip()), id(row.text("from")));
            }
        }
    }

    /** A row's id as its own row spells it. */
    String id(String typed) {
        String name = typed.strip();
        return plan.find(name)
                .map(spot -> plan.rows(spot.table()).at(spot.place()).id())
                .orElse(name);
    }

    /** The run that feeds a switch or device, "" if none does. */
    String run(String id) {
        return runs.getOrDefault(Rows.fold(id), "");
    }

    /** The source or switch at the other end of it, "" if there is none. */
    String from(String id) {
        return nodes.getOrDefault(Rows.fold(id), "");
    }
}
