package farwatt.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold of any plan: watts balance, nothing is no number, the order of rows and of edits decides nothing. */
class RandomPlansTest {

    @Test
    void whatASourceSendsIsLostOrArrives() {
        long seed = 20_261_125L;
        RandomPlans plans = new RandomPlans(new Random(seed));
        int balanced = 0;
        for (int turn = 0; turn < Soak.times(60, 3_000); turn++) {
            Answers answers = plans.any().solved();
            for (Corner corner : Corner.values()) {
                answers.calculation().look(corner);
                balanced += balance(answers, "seed " + seed + ", turn " + turn + ", " + corner.word());
            }
        }
        assertTrue(balanced > 100, balanced + " trees had an operating point");
    }

    /** Balances every tree that has an operating point. */
    private static int balance(Answers answers, String when) {
        Calculation calculation = answers.calculation();
        int balanced = 0;
        for (int source = 0; source < calculation.rows(Table.SOURCES); source++) {
            Value sent = calculation.value(Table.SOURCES, source, "sent");
            if (!sent.isPresent()) {
                continue;
            }
            String id = calculation.id(Table.SOURCES, source);
            double spent = ask(answers, "total(loss of runs under '%s')", id)
                    + ask(answers, "total(watts of devices under '%s')", id)
                    + ask(answers, "total(received - sent of switches under '%s')", id);
            assertEquals(sent.inside(), spent, Math.max(1e-12, 1e-9 * sent.inside()), when + ", " + id);
            balanced++;
        }
        return balanced;
    }

    private static double ask(Answers answers, String text, String id) {
        Value value = answers.calculation().ask(text.replace("%s", id)).value().orElseThrow();
        assertTrue(value.isPresent(), () -> id + ": " + value.fault().orElseThrow());
        return value.inside();
    }

    @Test
    void theOrderOfRowsDecidesNothing() {
        long seed = 11L;
        Random random = new Random(seed);
        RandomPlans plans = new RandomPlans(random);
        for (int turn = 0; turn < Soak.times(15, 500); turn++) {
            Plan plan = spoiled(plans.any().plan(), random, 4);
            Snapshot before = Snapshot.of(Calculation.of(plan));
            for (int k = 0; k < 2; k++) {
                Plan mixed = plan;
                for (Table table : Table.values()) {
                    if (table != Table.PLAN) {
                        List<Row> rows = new ArrayList<>(mixed.rows(table).list());
                        Collections.shuffle(rows, random);
                        mixed = mixed.with(table, Rows.of(rows));
                    }
                }
                before.assertSame(Snapshot.of(Calculation.of(mixed)), "seed " + seed + ", turn " + turn);
            }
        }
    }

    @Test
    void noPlanHasANumberThatIsNone() {
        long seed = 12L;
        Random random = new Random(seed);
        RandomPlans plans = new RandomPlans(random);
        for (int turn = 0; turn < Soak.times(60, 3_000); turn++) {
            Calculation calculation = Calculation.of(spoiled(plans.any().plan(), random, 6));
            for (Corner corner : Corner.values()) {
                calculation.look(corner);
                Sound.check(calculation);
            }
        }
    }

    private static Plan spoiled(Plan plan, Random random, int cells) {
        Plan now = plan;
        for (int k = 0; k < cells; k++) {
            now = farwatt.plan.Edit.apply(now, edit(now, random)).plan();
        }
        return now;
    }

    private static final String[] QUANTITIES = {
        "",
        "",
        "0",
        "1",
        "3",
        "1e9",
        "1e300",
        "1e-300",
        "7 apples",
        "-4",
        "night * 0 / 1 W",
        "1 / 0",
        "sum / 1 W",
        "dark",
        "mean(draw of devices) / 1 W",
        "total(length of runs) / 1 m",
        "count(devices where draw > 5 W)",
        "this.zone.sun / 1 K"
    };

    /** Any cell of any row: a figure, an extreme, gibberish, an expression that may or may not fit. */
    private static Change edit(Plan plan, Random random) {
        while (true) {
            Table table = Table.values()[random.nextInt(Table.values().length)];
            List<Name> names = Catalogue.cells(table);
            Rows rows = plan.rows(table);
            if (table == Table.COLUMNS || rows.size() == 0 || names.isEmpty()) {
                continue;
            }
            Name name = names.get(random.nextInt(names.size()));
            String id = rows.at(random.nextInt(rows.size())).id();
            String text = text(name, plan, random);
            boolean risky = name.key().equals("from")
                    || name.key().equals("to")
                    || name.key().equals("in_use");
            if (risky && random.nextInt(4) > 0) {
                continue;
            }
            return new Change.SetCell(
                    table, id, name.key(), text.isEmpty() ? Optional.empty() : Optional.of(Cell.text(text)));
        }
    }

    private static String text(Name name, Plan plan, Random random) {
        if (name.kind() instanceof Kind.Quantity quantity) {
            String unit = quantity.symbol().replace("¤", "EUR");
            String figure = QUANTITIES[random.nextInt(QUANTITIES.length)];
            if (figure.isEmpty()) {
                return "";
            }
            boolean number = figure.matches("[-0-9e.]+");
            boolean scale = unit.equals("degC");
            return number ? figure + " " + unit : scale ? "20 degC + (" + figure + ") * 1 K" : times(figure, unit);
        }
        if (name.kind() instanceof Kind.Choice choice) {
            int at = random.nextInt(choice.words().size() + 2);
            return at < choice.words().size()
                    ? choice.words().get(at)
                    : at == choice.words().size() ? "" : "some";
        }
        if (name.kind() instanceof Kind.YesNo) {
            return List.of("yes", "no", "dark", "not dark", "maybe", "").get(random.nextInt(6));
        }
        if (name.kind() instanceof Kind.RowOf) {
            List<String> ids = plan.ids();
            int at = random.nextInt(ids.size() + 2);
            return at < ids.size() ? ids.get(at) : at == ids.size() ? "" : "nowhere";
        }
        if (name.kind() instanceof Kind.Gauge) {
            return List.of("22 AWG", "28 AWG", "", "thick", "24").get(random.nextInt(5));
        }
        if (name.key().equals("is") || name.key().equals("holds")) {
            return List.of(
                            "yes",
                            "7 W",
                            "sum",
                            "night",
                            "dark",
                            "",
                            "sum > 20 W",
                            "3 W + night",
                            "'source 1'.reserve > 1 W")
                    .get(random.nextInt(9));
        }
        return "";
    }

    private static String times(String figure, String unit) {
        return unit.isEmpty() ? figure : "(" + figure + ") * 1 " + unit;
    }

    @Test
    void editAfterEditIsTheSameAsAtOnce() {
        long seed = 13L;
        Random random = new Random(seed);
        RandomPlans plans = new RandomPlans(random);
        int edits = Soak.times(300, 10_000);
        Calculation calculation = Calculation.of(plans.any().plan());
        for (int k = 0; k < edits; k++) {
            if (k % 60 == 0) {
                calculation = Calculation.of(plans.any().plan());
                for (Corner corner : Corner.values()) {
                    calculation.look(corner);
                }
                calculation.look(Corner.MOST);
            }
            Change change = edit(calculation.plan(), random);
            calculation.apply(change);
            Snapshot.of(Calculation.of(calculation.plan()))
                    .assertSame(Snapshot.of(calculation), "seed " + seed + ", edit " + k + ": " + change);
        }
    }
}
