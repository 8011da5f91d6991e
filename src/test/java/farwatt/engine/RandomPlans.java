package farwatt.engine;

import farwatt.plan.Cell;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Plans of some trees with everything in them that a plan can have. */
final class RandomPlans {
    private static final String[] SETTINGS = {"open", "tray", "conduit", "insulated"};
    private static final String[] BASES = {"wire", "limit", "datasheet", "measured", "pair"};

    private final Random random;

    RandomPlans(Random random) {
        this.random = random;
    }

    /** A plan that has an operating point more often than not. */
    Draft any() {
        Draft draft = new Draft().settings("heat_margin", one("1.25", "1", "0"), "slack", "10 %");
        for (int z = 1; z <= 3; z++) {
            draft.zone("zone " + z, "ambient", number(-10, 40) + " degC", "hottest", number(20, 50) + " degC")
                    .cell(Table.ZONES, "zone " + z, "setting", Cell.text(one(SETTINGS)));
        }
        draft.bundle("duct 1", "others", whole(0, 20), "others_amps", number(0, 0.2) + " A")
                .bundle("duct 2");
        draft.value("dark", one("yes", "no"))
                .value("night", number(3, 9) + " W")
                .value("sum", "total(draw of devices)");
        draft.column(Table.RUNS, "share", "loss / sent", "%")
                .column(Table.SWITCHES, "below", "total(watts of devices under this)", "W")
                .column(Table.SWITCHES, "way", "if hop > 1 then feeder.way + run.length else run.length", "m")
                .column(Table.DEVICES, "far", "run.volts_near - volts", "V")
                .input(Table.DEVICES, "tag", "W")
                .need("reserve", "least(reserve_share of switches) > reserve_target");
        int trees = 1 + random.nextInt(4);
        for (int t = 1; t <= trees; t++) {
            tree(draft, t);
        }
        return draft;
    }

    private void tree(Draft draft, int t) {
        String source = "source " + t;
        draft.source(source, "type", one("3", "4"), "volts", number(48, 57) + " V", "ports", "8", "grants_by", by());
        zoned(draft, Table.SOURCES, source);
        List<String> nodes = new ArrayList<>(List.of(source));
        int switches = random.nextInt(4);
        for (int s = 1; s <= switches; s++) {
            String id = "switch " + t + "." + s;
            draft.edge(id, "mode", random.nextInt(4) == 0 ? "direct" : "regulated", "own_draw", number(0, 4) + " W");
            draft.cell(Table.SWITCHES, id, "efficiency", Cell.text(number(80, 98) + " %"));
            draft.cell(Table.SWITCHES, id, "grants_by", Cell.text(by()));
            draft.cell(Table.SWITCHES, id, "type", Cell.text(one("2", "3", "4")));
            zoned(draft, Table.SWITCHES, id);
            run(draft, nodes.get(random.nextInt(nodes.size())), id, 60);
            nodes.add(id);
        }
        int devices = 1 + random.nextInt(6);
        for (int d = 1; d <= devices; d++) {
            String id = "device " + t + "." + d;
            draft.device(id, "draw", one(number(1, 8) + " W", "if dark then night else 3 W", "night * 0.5"));
            if (random.nextInt(3) == 0) {
                draft.cell(Table.DEVICES, id, "class", Cell.text(one("2", "3", "4")));
                draft.cell(Table.DEVICES, id, "draw_typical", Cell.text("draw * 0.6"));
                draft.cell(Table.DEVICES, id, "draw_start", Cell.text("draw + 2 W"));
            }
            zoned(draft, Table.DEVICES, id);
            run(draft, nodes.get(random.nextInt(nodes.size())), id, 40);
        }
    }

    private void zoned(Draft draft, Table table, String id) {
        if (random.nextInt(3) > 0) {
            draft.cell(table, id, "zone", Cell.text("zone " + whole(1, 3)));
        }
    }

    private void run(Draft draft, String from, String to, int most) {
        String basis = one(BASES);
        String loop = number(0.2, 4) + " ohm";
        String id = "run to " + to;
        draft.run(id, from, to, "length", number(2, most) + " m", "basis", basis, "cord_length", number(0, 2) + " m")
                .cell(Table.RUNS, id, "conductor_ohms", Cell.text(number(60, 140) + " ohm/km"))
                .cell(Table.RUNS, id, "measured_loop", Cell.text(loop))
                .cell(Table.RUNS, id, "pair_loop", Cell.text(loop))
                .cell(Table.RUNS, id, "gauge", Cell.text(one("22", "23", "24", "26") + " AWG"))
                .cell(Table.RUNS, id, "metal", Cell.text(one("copper", "clad")))
                .cell(Table.RUNS, id, "category", Cell.text(one("5e", "6", "6A")));
        if (random.nextInt(3) == 0) {
            draft.cell(Table.RUNS, id, "bundle", Cell.text("duct " + whole(1, 2)));
        }
        zoned(draft, Table.RUNS, id);
    }

    String by() {
        return one("class", "declared", "measured");
    }

    String one(String... of) {
        return of[random.nextInt(of.length)];
    }

    String whole(int low, int high) {
        return String.valueOf(low + random.nextInt(high - low + 1));
    }

    String number(double low, double high) {
        return String.valueOf(Math.rint((low + random.nextDouble() * (high - low)) * 1000) / 1000);
    }
}
