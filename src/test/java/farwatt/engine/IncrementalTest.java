package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What is worked out step by step is what is worked out at once, and the order of rows decides nothing. */
class IncrementalTest {
    private static final int EDITS = Boolean.getBoolean("farwatt.soak") ? 10_000 : 300;
    private static final List<Table> TABLES =
            List.of(Table.PLAN, Table.SOURCES, Table.SWITCHES, Table.RUNS, Table.DEVICES, Table.VALUES, Table.NEEDS);

    /** Every value of every corner by id, to the last bit; a fault by what it says. */
    private static Map<String, String> values(Calculation calculation) {
        Map<String, String> all = new TreeMap<>();
        Corner before = calculation.corner();
        for (Corner corner : Corner.values()) {
            calculation.look(corner);
            for (Table table : TABLES) {
                for (var name : calculation.names(table)) {
                    for (int place = 0; place < calculation.rows(table); place++) {
                        Value value = calculation.value(table, place, name.key());
                        String said = value.fault()
                                .map(f -> f.kind() + " " + f.text())
                                .orElse(value.words());
                        String key = corner + " " + table + " " + calculation.id(table, place) + "." + name.key();
                        all.put(key, value.isNumber() && value.isPresent() ? Double.toHexString(value.inside()) : said);
                    }
                }
            }
        }
        calculation.look(before);
        return all;
    }

    static Plan plan() {
        Plan plan = Plan.EMPTY
                .and(Table.ZONES, Row.of("yard").with("ambient", "22 degC").with("hottest", "38 degC"))
                .and(
                        Table.ZONES,
                        Row.of("roof")
                                .with("ambient", "30 degC")
                                .with("sun", "12 K")
                                .with("setting", "conduit"))
                .and(Table.BUNDLES, Row.of("duct").with("others", "4").with("others_amps", "0.2 A"))
                .and(Table.VALUES, Row.of("dark").with("is", Cell.NO))
                .and(Table.VALUES, Row.of("night_draw").with("is", "9 W"))
                .and(Table.COLUMNS, Row.of("loss_share").with("table", "runs").with("is", "loss / sent"))
                .and(
                        Table.COLUMNS,
                        Row.of("way")
                                .with("table", "switches")
                                .with("is", "if hop > 1 then feeder.way + run.length else run.length"))
                .and(
                        Table.COLUMNS,
                        Row.of("below").with("table", "switches").with("is", "total(watts of devices under this)"))
                .and(Table.NEEDS, Row.of("reserve").with("holds", "least(reserve_share of switches) > reserve_target"))
                .and(Table.NEEDS, Row.of("losses").with("holds", "total(loss of runs) < 0.1 * plan.sent"));
        for (int t = 1; t <= 3; t++) {
            plan = tree(plan, t);
        }
        return plan;
    }

    private static Plan tree(Plan before, int t) {
        Plan plan = before.and(Table.SOURCES, Row.of("s" + t).with("type", "4").with("volts", "55 V"))
                .and(
                        Table.SWITCHES,
                        Row.of("w" + t).with("zone", "yard").with("type", "3").with("uplink_right", "extended"))
                .and(
                        Table.SWITCHES,
                        Row.of("x" + t)
                                .with("zone", "roof")
                                .with("mode", t == 2 ? "direct" : "regulated")
                                .with("grants_by", "declared"))
                .and(Table.RUNS, run("trunk " + t, "s" + t, "w" + t, "60 m").with("bundle", t < 3 ? "duct" : ""))
                .and(Table.RUNS, run("link " + t, "w" + t, "x" + t, "25 m"));
        for (int d = 1; d <= 4; d++) {
            String id = "d" + t + "." + d;
            plan = plan.and(
                            Table.DEVICES,
                            Row.of(id)
                                    .with("zone", d % 2 == 0 ? "roof" : "yard")
                                    .with("draw", 2 + d + " W"))
                    .and(Table.RUNS, run("run " + id, (d < 3 ? "w" : "x") + t, id, 10 + d + " m"));
        }
        return plan;
    }

    private static Row run(String id, String from, String to, String length) {
        return Row.of(id).with("from", from).with("to", to).with("length", length);
    }

    private static final String[][] EDITABLE = {
        {"devices", "draw", "3 W", "7.5 W", "if dark then night_draw else 4 W", "night_draw * 0.5", "x W", "", "90 W"},
        {"devices", "class", "3", "4", "2", ""},
        {"devices", "draw_start", "11 W", "", "draw * 1.5"},
        {"devices", "priority", "1", "2", ""},
        {"devices", "in_use", "no", "yes", "not dark", ""},
        {"runs", "length", "30 m", "12 m", "95 m", "", "-3 m", "from.ports * 2 m"},
        {"runs", "gauge", "22 AWG", "24 AWG", "26 AWG", ""},
        {"runs", "basis", "limit", "wire", ""},
        {"runs", "bundle", "duct", ""},
        {"switches", "own_draw", "4 W", "9 W", ""},
        {"switches", "efficiency", "90 %", "0 %", ""},
        {"switches", "mode", "direct", "regulated", ""},
        {"switches", "grants_by", "class", "measured", "declared"},
        {"sources", "port_limit", "60 W", "90 W", ""},
        {"sources", "volts", "50 V", "57 V", ""},
        {"zones", "ambient", "-5 degC", "24 degC", "35 degC", ""},
        {"zones", "setting", "tray", "open", ""},
        {"bundles", "others", "0", "12", ""},
        {"values", "is", "yes", "no", "6 W", "night_draw", "12 W"},
        {"plan", "heat_margin", "0", "1", ""},
        {"plan", "reserve_target", "5 %", ""}
    };

    private static Change edit(Plan plan, Random random) {
        if (random.nextInt(12) == 0) {
            return rows(plan, random);
        }
        String[] what = EDITABLE[random.nextInt(EDITABLE.length)];
        Table table = Table.of(what[0]).orElseThrow();
        Rows rows = plan.rows(table);
        String id = rows.at(random.nextInt(rows.size())).id();
        String text = what[2 + random.nextInt(what.length - 2)];
        return new Change.SetCell(table, id, what[1], text.isEmpty() ? Optional.empty() : Optional.of(Cell.text(text)));
    }

    private static Change rows(Plan plan, Random random) {
        Rows runs = plan.rows(Table.RUNS);
        int place = random.nextInt(runs.size());
        if (random.nextBoolean() && runs.size() > 8) {
            return new Change.DropRow(Table.RUNS, place, runs.at(place).id());
        }
        String id = "n" + random.nextInt(1_000_000);
        return new Change.Batch(
                "add",
                List.of(
                        new Change.AddRow(Table.DEVICES, 0, Row.of(id).with("draw", "2 W")),
                        new Change.AddRow(Table.RUNS, place, run("run " + id, "w1", id, "5 m"))));
    }

    @Test
    void stepByStepIsTheSameAsAtOnceToTheLastBit() {
        long seed = 20_261_125L;
        Random random = new Random(seed);
        Calculation calculation = Calculation.of(plan());
        values(calculation);
        for (int i = 0; i < EDITS; i++) {
            Change change = edit(calculation.plan(), random);
            calculation.apply(change);
            if (i % 3 == 0 || i > EDITS - 20) {
                Calculation fresh = Calculation.of(calculation.plan());
                assertEquals(values(fresh), values(calculation), "seed " + seed + ", edit " + i + ": " + change);
            }
        }
    }

    @Test
    void theOrderOfRowsDecidesNothing() {
        long seed = 4_711L;
        Random random = new Random(seed);
        Map<String, String> before = values(Calculation.of(plan()));
        for (int i = 0; i < 10; i++) {
            Plan mixed = plan();
            for (Table table :
                    List.of(Table.ZONES, Table.SOURCES, Table.SWITCHES, Table.RUNS, Table.DEVICES, Table.VALUES)) {
                List<Row> rows = new ArrayList<>(mixed.rows(table).list());
                Collections.shuffle(rows, random);
                mixed = mixed.with(table, Rows.of(rows));
            }
            assertEquals(before, values(Calculation.of(mixed)), "seed " + seed);
        }
    }

    @Test
    void aHundredThousandValuesInARowAreWorkedOut() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            rows.add(Row.of("v" + i).with("is", i == 0 ? "1 W" : "v" + (i - 1) + " + 1 W"));
        }
        Calculation calculation = Calculation.of(Plan.EMPTY.with(Table.VALUES, Rows.of(rows)));
        assertEquals(100_000, calculation.value(Table.VALUES, 99_999, "is").inside());
    }

    @Test
    void aLoopListsItsMembersAndTheRestIsWorkedOut() {
        Plan plan = plan().and(Table.VALUES, Row.of("a").with("is", "b + 1 W"))
                .and(Table.VALUES, Row.of("b").with("is", "c * 2"))
                .and(Table.VALUES, Row.of("c").with("is", "a"))
                .and(Table.VALUES, Row.of("reader").with("is", "a + 1 W"));
        Calculation calculation = Calculation.of(plan);
        Fault loop = calculation.ask("reader").value().orElseThrow().fault().orElseThrow();
        assertEquals(Fault.Kind.LOOP, loop.kind());
        assertTrue(
                loop.text().contains("a")
                        && loop.text().contains("b")
                        && loop.text().contains("c"),
                loop.text());
        assertTrue(calculation.ask("plan.sent").value().orElseThrow().isPresent());
    }
}
