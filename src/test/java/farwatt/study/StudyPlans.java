package farwatt.study;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.util.Optional;
import java.util.Random;

/** Small plans by chance, and what a calculation of its own says of them. */
final class StudyPlans {
    private StudyPlans() {}

    static Plan random(Random random) {
        Plan plan = Plan.EMPTY
                .and(Table.ZONES, Row.of("yard").with("ambient", "24 degC").with("hottest", "41 degC"))
                .and(Table.VALUES, Row.of("night").with("is", "7 W"))
                .and(
                        Table.SOURCES,
                        Row.of("feed").with("type", "4").with("volts", "55 V").with("ports", "4"));
        String above = "feed";
        int switches = 1 + random.nextInt(2);
        for (int s = 1; s <= switches; s++) {
            String id = "gate " + s;
            plan = plan.and(
                            Table.SWITCHES,
                            Row.of(id)
                                    .with("zone", "yard")
                                    .with("own_draw", "4 W")
                                    .with("mode", random.nextInt(4) == 0 ? "direct" : "regulated")
                                    .with("grants_by", "measured"))
                    .and(Table.RUNS, run("trunk " + s, above, id, 20 + random.nextInt(40)));
            for (int d = 1; d <= 1 + random.nextInt(4); d++) {
                String device = "cam " + s + "." + d;
                String draw = random.nextBoolean() ? "night" : 2 + random.nextInt(5) + " W";
                plan = plan.and(
                                Table.DEVICES,
                                Row.of(device).with("zone", "yard").with("draw", draw))
                        .and(Table.RUNS, run("run " + device, id, device, 10 + random.nextInt(50)));
            }
            above = id;
        }
        return plan;
    }

    private static Row run(String id, String from, String to, int metres) {
        return Row.of(id).with("from", from).with("to", to).with("length", metres + " m");
    }

    static Plan with(Plan plan, Table table, String id, String name, String text) {
        return Edit.apply(plan, new Change.SetCell(table, id, name, Optional.of(Cell.text(text))))
                .plan();
    }

    /** An expression in a plan worked out afresh: the bits of its value, or why it has none. */
    static String fresh(Plan plan, Corner corner, String expression) {
        Calculation calculation = Calculation.of(plan);
        calculation.look(corner);
        Value value = calculation.ask(expression).value().orElseThrow();
        return value.fault().map(f -> f.text()).orElseGet(() -> Double.toHexString(value.inside()));
    }
}
