package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

/** Plans that fail, from a seed: random ones with more kinds of cable, gear, settings and prices. */
final class FailingPlans {
    private final Random random;

    private FailingPlans(Random random) {
        this.random = random;
    }

    /** So many plans that fail, each with the seed it came from. */
    static List<Seeded> first(int count, long seed) {
        List<Seeded> plans = new ArrayList<>();
        for (long at = seed; plans.size() < count; at++) {
            Plan plan = new FailingPlans(new Random(at)).plan(at);
            if (Reviewer.review(Calculation.of(plan)).fails() > 0) {
                plans.add(new Seeded(at, plan));
            }
        }
        return plans;
    }

    record Seeded(long seed, Plan plan) {}

    private Plan plan(long seed) {
        Plan plan = RandomPlans.of(seed, 3 + random.nextInt(7));
        plan = each(plan, Table.RUNS, this::run);
        plan = each(plan, Table.SWITCHES, this::gear);
        plan = each(plan, Table.SWITCHES, this::uplink);
        plan = each(plan, Table.SOURCES, this::source);
        plan = each(plan, Table.DEVICES, row -> some(row, 5, "priority", "1", "2", "4"));
        return each(plan, Table.ZONES, row -> some(row, 2, "setting", "conduit", "tray"));
    }

    private static Plan each(Plan plan, Table table, UnaryOperator<Row> change) {
        List<Row> rows = new ArrayList<>();
        plan.rows(table).forEach(row -> rows.add(change.apply(row)));
        return plan.with(table, Rows.of(rows));
    }

    /** One time in so many one of some words in a cell. */
    private Row some(Row row, int in, String name, String... words) {
        return random.nextInt(in) == 0 ? row.with(name, words[random.nextInt(words.length)]) : row;
    }

    private Row run(Row row) {
        Row run = some(row, 2, "gauge", "22 AWG", "23 AWG", "26 AWG");
        run = some(run, 4, "pairs", "2");
        run = some(run, 8, "basis", "limit");
        run = some(run, 12, "metal", "clad");
        return some(run, 2, "price_per_length", "0.8 EUR/m", "1.4 EUR/m");
    }

    private Row gear(Row row) {
        Row gear = some(row, 4, "guard", "15 %");
        gear = some(gear, 5, "ports", "2", "5");
        gear = some(gear, 6, "port_limit", "15.4 W");
        return some(gear, 2, "price", "240 EUR", "310 EUR");
    }

    private Row uplink(Row row) {
        return some(some(row, 2, "uplink_right", "extended"), 3, "uplink_class", "4", "6");
    }

    private Row source(Row row) {
        Row source = some(row, 4, "type", "3");
        source = some(source, 3, "port_limit", "30 W", "60 W");
        source = some(source, 3, "budget", "60 W", "120 W");
        return some(source, 2, "price", "180 EUR");
    }
}
