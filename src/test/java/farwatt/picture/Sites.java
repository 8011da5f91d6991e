package farwatt.picture;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Plans to draw, of every shape. */
final class Sites {
    private final List<Row> sources = new ArrayList<>();
    private final List<Row> switches = new ArrayList<>();
    private final List<Row> runs = new ArrayList<>();
    private final List<Row> devices = new ArrayList<>();

    Sites source(String id) {
        sources.add(Row.of(id)
                .with("type", "4")
                .with("ports", "96")
                .with("volts", "55 V")
                .with("budget", "4000 W"));
        return this;
    }

    Sites edge(String id, String from, String length) {
        switches.add(Row.of(id).with("ports", "96").with("volts", "54 V").with("uplink_right", "extended"));
        return run("run " + id, from, id, length);
    }

    Sites device(String id, String from, String length, String watts) {
        devices.add(Row.of(id).with("kind", "fixed camera").with("draw", watts));
        return from.isEmpty() ? this : run("run " + id, from, id, length);
    }

    Sites run(String id, String from, String to, String length) {
        runs.add(Row.of(id).with("from", from).with("to", to).with("length", length));
        return this;
    }

    Plan plan() {
        return Plan.EMPTY
                .with(Table.PLAN, Rows.of(List.of(Row.of("").with("name", "Ferry landing"))))
                .with(Table.SOURCES, Rows.of(sources))
                .with(Table.SWITCHES, Rows.of(switches))
                .with(Table.RUNS, Rows.of(runs))
                .with(Table.DEVICES, Rows.of(devices));
    }

    Calculation calc() {
        return Calculation.of(plan());
    }

    /** One source, one switch, so many devices. */
    static Sites star(int devices) {
        Sites site = new Sites().source("feed").edge("gate", "feed", "20 m");
        for (int i = 1; i <= devices; i++) {
            site.device("cam " + i, "gate", (5 + i % 60) + " m", i % 5 == 0 ? "0.4 W" : "0.2 W");
        }
        return site;
    }

    /** Switches in a row, each with so many devices. */
    static Sites chain(int switches, int each) {
        Sites site = new Sites().source("feed");
        String before = "feed";
        for (int i = 1; i <= switches; i++) {
            String id = "switch " + i;
            site.edge(id, before, "8 m");
            for (int k = 1; k <= each; k++) {
                site.device("cam " + i + "." + k, id, "12 m", "0.1 W");
            }
            before = id;
        }
        return site;
    }

    /** Trees of any shape with so many nodes in all; a few nodes hang on nothing. */
    static Sites random(Random random, int nodes) {
        Sites site = new Sites();
        List<String> feeders = new ArrayList<>();
        double switchShare = random.nextDouble() * 0.6;
        int sources = 1 + random.nextInt(3);
        int reach = 1 + random.nextInt(12);
        for (int i = 0; i < nodes; i++) {
            String id = "n" + i;
            if (i < sources) {
                site.source(id);
                feeders.add(id);
                continue;
            }
            int last = feeders.size() - 1;
            String from = feeders.get(Math.max(0, last - random.nextInt(reach)));
            if (random.nextDouble() < switchShare) {
                site.edge(id, from, "10 m");
                feeders.add(id);
            } else {
                site.device(id, random.nextInt(40) == 0 ? "" : from, "10 m", "0.1 W");
            }
        }
        return site;
    }
}
