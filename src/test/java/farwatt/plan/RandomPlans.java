package farwatt.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Random plans and changes for tests: sound and odd, the same for the same seed. */
public final class RandomPlans {
    private static final List<String> IDS = List.of(
            "trunk",
            "cam 1",
            "cam 01",
            "it's",
            "quay.east",
            "Größe Ω",
            "\"quoted\"",
            "tab\there",
            "line\nbreak",
            "𝔸 mast",
            "half \ud800",
            " ",
            "5",
            "yes",
            "back\\slash");
    private static final List<String> NAMES = List.of(
            "length",
            "gauge",
            "from",
            "to",
            "zone",
            "draw",
            "class",
            "category",
            "outdoor",
            "note",
            "in_use",
            "price",
            "is",
            "ports",
            "ambient",
            "asset_tag",
            "own_watts",
            "colour",
            "",
            "lenght");
    private static final List<Cell> CELLS = List.of(
            Cell.text("60 m"),
            Cell.text("295"),
            Cell.text("  12.50  EUR "),
            Cell.text("5 ft 3 in"),
            Cell.text("23 AWG"),
            Cell.text("-5 degF"),
            Cell.text("38 °C"),
            Cell.text("if dark then 9 W else 5 W"),
            Cell.text("tray"),
            Cell.text("6A"),
            Cell.text("yes"),
            Cell.text("84,2 m"),
            Cell.text("quay"),
            Cell.text(""),
            Cell.text("\u2028 \u0001 \ud834\udd1e"),
            Cell.YES,
            Cell.NO,
            Cell.number("3"),
            Cell.number("1e400"),
            Cell.number("0.1000000000000000055511151231257827"),
            Cell.number("-0"),
            new Cell(Cell.Form.OTHER, "null"),
            new Cell(Cell.Form.OTHER, "{\"a\": [1, {\"b\": 2.50}], \"a\": \"twice\"}"));
    private static final List<String> JSON =
            List.of("[]", "[1, {\"x\": \"y\"}]", "{}", "\"text\"", "12345678901234567890.0", "null", "true");

    private final Random random;

    public RandomPlans(long seed) {
        random = new Random(seed);
    }

    /** A plan with a few rows in every table. */
    public Plan plan() {
        Plan plan = Plan.EMPTY.with(Table.PLAN, Rows.of(List.of(cells(Row.of("")))));
        for (Table table : Table.values()) {
            if (table != Table.PLAN) {
                plan = plan.with(table, rows(table));
            }
        }
        plan = plan.and(
                Table.COLUMNS, Row.of("asset_tag").with("table", "devices").with("kind", "text"));
        plan = plan.and(Table.COLUMNS, Row.of("own_watts").with("table", "runs").with("unit", "W"));
        return plan.withScenarios(scenarios()).withRest(rest("studies", "mappings", "more", "café"));
    }

    /** A change that can be made on the plan. */
    public Change change(Plan plan) {
        return change(plan, 2);
    }

    private Change change(Plan plan, int depth) {
        Table table = Table.values()[1 + random.nextInt(Table.values().length - 1)];
        Rows rows = plan.rows(table);
        int kind = random.nextInt(depth > 0 ? 8 : 7);
        if (rows.size() == 0 && kind <= 3) {
            kind = 4;
        }
        return switch (kind) {
            case 0, 1 ->
                new Change.SetCell(table, rows.at(random.nextInt(rows.size())).id(), pick(NAMES), maybe(pick(CELLS)));
            case 2 -> drop(table, rows, random.nextInt(rows.size()));
            case 3 -> new Change.ReplaceRow(table, random.nextInt(rows.size()), row());
            case 4 -> new Change.AddRow(table, random.nextInt(rows.size() + 1), row());
            case 5 -> new Change.SetScenarios(scenarios());
            case 6 ->
                random.nextBoolean()
                        ? new Change.SetRest(pick(List.of("studies", "mappings", "more", "new")), maybe(pick(JSON)))
                        : new Change.SetCell(Table.PLAN, "", pick(NAMES), maybe(pick(CELLS)));
            default -> batch(plan, depth);
        };
    }

    private Change batch(Plan plan, int depth) {
        List<Change> changes = new ArrayList<>();
        Plan now = plan;
        for (int i = random.nextInt(4); i >= 0; i--) {
            Change change = change(now, depth - 1);
            now = Edit.apply(now, change).plan();
            changes.add(change);
        }
        return new Change.Batch("step " + random.nextInt(100), changes);
    }

    private static Change drop(Table table, Rows rows, int place) {
        return new Change.DropRow(table, place, rows.at(place).id());
    }

    private Rows rows(Table table) {
        List<Row> rows = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            Row row = row();
            rows.add(table.isSite() || random.nextBoolean() ? row : row.renamed("value_" + i));
        }
        return Rows.of(rows);
    }

    private Row row() {
        return cells(Row.of(pick(IDS)));
    }

    private Row cells(Row row) {
        Row filled = row;
        for (int i = random.nextInt(6); i > 0; i--) {
            filled = filled.with(pick(NAMES), pick(CELLS));
        }
        return filled;
    }

    private List<Scenario> scenarios() {
        List<Scenario> all = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            List<Step> steps = new ArrayList<>();
            for (int j = random.nextInt(4); j > 0; j--) {
                steps.add(step());
            }
            all.add(new Scenario("case " + i, i == 2 ? "case 1" : "", steps, rest("remark", "by")));
        }
        return all;
    }

    private Step step() {
        return switch (random.nextInt(4)) {
            case 0 ->
                new Step.Set(
                        pick(List.of("trunk.length", "'cam 1'.draw", "dark", "slack", "x.y.z")),
                        pick(CELLS),
                        rest("why"));
            case 1 ->
                new Step.Add(pick(List.of("devices", "runs", "values", "boats")), row().renamed("new 1"), rest("why"));
            case 2 -> new Step.Drop("cam 1", rest("why"));
            default ->
                new Step.Unread(pick(List.of("5", "{\"set\": \"trunk.length\"}", "{\"drop\": \"a\", \"set\": \"b\"}")));
        };
    }

    private Map<String, String> rest(String... keys) {
        Map<String, String> rest = new LinkedHashMap<>();
        for (String key : keys) {
            if (random.nextBoolean()) {
                rest.put(key, pick(JSON));
            }
        }
        return rest;
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextInt(3) == 0 ? Optional.empty() : Optional.of(value);
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
