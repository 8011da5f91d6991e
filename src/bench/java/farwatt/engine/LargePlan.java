package farwatt.engine;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/** A plan of 10,000 runs in 400 trees with 12 own columns and 20 gathers. */
final class LargePlan {
    static final int TREES = 400;
    static final int DEVICES = 24;

    private LargePlan() {}

    static Plan plan() {
        List<Row> sources = new ArrayList<>();
        List<Row> switches = new ArrayList<>();
        List<Row> runs = new ArrayList<>();
        List<Row> devices = new ArrayList<>();
        for (int t = 1; t <= TREES; t++) {
            sources.add(Row.of("feed " + t).with("type", "4").with("volts", "55 V"));
            switches.add(Row.of("edge " + t)
                    .with("zone", "site")
                    .with("ports", "24")
                    .with("volts", "54 V")
                    .with("uplink_right", "extended")
                    .with("grants_by", "measured"));
            runs.add(run("trunk " + t, "feed " + t, "edge " + t, 60 + t % 30).with("gauge", "22 AWG"));
            for (int d = 1; d <= DEVICES; d++) {
                String id = "cam " + t + "." + d;
                devices.add(Row.of(id)
                        .with("zone", "site")
                        .with("class", "1")
                        .with("draw", 1 + (d % 5) * 0.2 + " W")
                        .with("bitrate", "4 Mb/s"));
                runs.add(run("run " + id, "edge " + t, id, 10 + d));
            }
        }
        Plan plan = Plan.EMPTY
                .with(
                        Table.ZONES,
                        Rows.of(List.of(
                                Row.of("site").with("ambient", "20 degC").with("hottest", "35 degC"))))
                .with(Table.SOURCES, Rows.of(sources))
                .with(Table.SWITCHES, Rows.of(switches))
                .with(Table.RUNS, Rows.of(runs))
                .with(Table.DEVICES, Rows.of(devices));
        return withOwn(plan);
    }

    private static Row run(String id, String from, String to, int metres) {
        return Row.of(id).with("from", from).with("to", to).with("zone", "site").with("length", metres + " m");
    }

    private static Plan withOwn(Plan plan) {
        String[][] columns = {
            {"runs", "loss_share", "loss / sent"},
            {"runs", "loss_per_length", "loss / length"},
            {"runs", "drop_left", "drop_share / 10 %"},
            {"runs", "spare_length", "reach - length"},
            {"runs", "warm", "wire_temp - zone.ambient"},
            {"runs", "feeding", "from.reserve / from.available"},
            {"devices", "volts_share", "volts / run.volts_near"},
            {"devices", "amps_per_watt", "amps / watts"},
            {"devices", "head_share", "headroom / volts_floor"},
            {"devices", "cost_of_loss", "run.loss * 1 h"},
            {"devices", "part", "watts / feeder.sent"},
            {"devices", "busy", "if watts > 1.5 W then 1 else 0"}
        };
        Plan out = plan;
        for (String[] c : columns) {
            out = out.and(Table.COLUMNS, Row.of(c[1]).with("table", c[0]).with("is", c[2]));
        }
        String[] needs = {
            "total(loss of runs) < 5 kW",
            "total(draw of devices) < 50 kW",
            "greatest(drop of runs) < 10 V",
            "least(headroom of devices) > 1 V",
            "every(powered of devices)",
            "count(devices where busy > 0) < 20000",
            "mean(volts of devices) > 40 V",
            "least(reserve_share of switches) > 1 %",
            "greatest(wire_temp of runs) < 60 degC",
            "total(length of runs) > 1 m",
            "total(amps of devices) > 0.1 A",
            "greatest(cliff_share of runs) < 80 %",
            "some(powered of devices)",
            "mean(loss of runs) < 5 W",
            "total(sent of sources) < 40 kW",
            "greatest(loss_share of runs) < 50 %",
            "least(spare_length of runs) > 0 m",
            "total(watts of devices where volts > 50 V) > 1 W",
            "count(runs where drop_share > 5 %) < 9999",
            "greatest(received of switches) < 90 W"
        };
        for (int i = 0; i < needs.length; i++) {
            out = out.and(Table.NEEDS, Row.of("need " + i).with("holds", needs[i]));
        }
        return out;
    }
}
