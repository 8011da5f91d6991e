package farwatt.review;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Plans of many kinds from a seed: trees two switches deep, zones, bundles, start draws, odd cells. */
final class RandomPlans {
    private static final String[] CLASSES = {"1", "2", "3", "4", "5", "6", "8"};
    private static final String[] GRANTS = {"class", "declared", "measured"};

    private final Random random;
    private final StringBuilder text = new StringBuilder();
    private int runs;

    private RandomPlans(Random random) {
        this.random = random;
    }

    static Plan of(long seed, int devices) {
        RandomPlans plans = new RandomPlans(new Random(seed));
        return Sketch.plan(plans.text(devices));
    }

    /** The same plan with the rows of every table in another order. */
    static Plan shuffled(Plan plan, long seed) {
        Random random = new Random(seed);
        Plan other = plan;
        for (Table table : Table.site()) {
            List<Row> rows = new ArrayList<>(plan.rows(table).list());
            Collections.shuffle(rows, random);
            other = other.with(table, Rows.of(rows));
        }
        return other;
    }

    private String pick(String... some) {
        return some[random.nextInt(some.length)];
    }

    private double between(double low, double high) {
        return Math.round((low + (high - low) * random.nextDouble()) * 100) / 100.0;
    }

    private String text(int devices) {
        text.append("plan | reserve_target = ").append(random.nextInt(30)).append(" %\n");
        text.append("zone hall | building = hall | ambient = 21 degC\n");
        text.append("zone quay | outdoor = yes | hottest = 38 degC | coldest = -15 degC | sun = 10 K");
        text.append(" | ingress_need = IP66\n");
        text.append("bundle duct | others = ").append(random.nextInt(30)).append(" | others_amps = 0.2 A\n");
        int sources = 1 + devices / 60;
        int switches = 1 + devices / 6;
        for (int i = 1; i <= sources; i++) {
            text.append("source feed ").append(i).append(" | zone = hall | type = 4 | volts = 55 V | ports = 16\n");
        }
        for (int i = 1; i <= switches; i++) {
            String feeder = i > 4 && random.nextInt(5) == 0
                    ? "post " + (1 + random.nextInt(4))
                    : "feed " + (1 + random.nextInt(sources));
            text.append("switch post ")
                    .append(i)
                    .append(" | zone = quay | volts = 55 V | grants_by = ")
                    .append(pick(GRANTS))
                    .append(random.nextInt(4) == 0 ? " | mode = direct" : "")
                    .append(random.nextInt(3) == 0 ? " | budget = 60 W" : "")
                    .append('\n');
            run(feeder, "post " + i, between(5, 110));
        }
        for (int i = 1; i <= devices; i++) {
            device(i, switches);
        }
        return text.toString();
    }

    private void device(int i, int switches) {
        double draw = between(1, 12);
        text.append("device cam ")
                .append(i)
                .append(" | zone = quay | draw = ")
                .append(draw)
                .append(" W");
        text.append(random.nextInt(3) == 0 ? " | draw_start = " + between(draw, draw * 2) + " W" : "");
        text.append(random.nextInt(3) == 0 ? " | class = " + pick(CLASSES) : "");
        text.append(random.nextInt(2) == 0 ? " | ingress = " + pick("IP65", "IP66", "IP67") : "");
        text.append(random.nextInt(4) == 0 ? " | bitrate = 200 Mb/s" : "").append('\n');
        run("post " + (1 + random.nextInt(switches)), "cam " + i, between(2, 100));
    }

    private void run(String from, String to, double metres) {
        runs++;
        text.append("run line ")
                .append(runs)
                .append(" | from = ")
                .append(from)
                .append(" | to = ")
                .append(to);
        text.append(" | length = ").append(metres).append(random.nextInt(60) == 0 ? " n" : " m");
        text.append(random.nextInt(10) == 0 ? " | bundle = duct" : "");
        text.append(random.nextInt(3) == 0 ? " | sheath = outdoor" : "");
        text.append(random.nextInt(6) == 0 ? " | leaves_building = yes" : "").append('\n');
    }
}
