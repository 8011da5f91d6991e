package farwatt.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Studies on plans by chance against the dullest way there is: every plan written out and calculated by itself. */
class BruteForceTest {
    private static final int PLANS = Boolean.getBoolean("farwatt.soak") ? 200 : 10;
    private static final String YES = Double.toHexString(1);

    private static Corner corner(int seed) {
        return Corner.values()[seed % Corner.values().length];
    }

    /** A plan with so many copies of a device on a node, each with a run of the device's own kind. */
    private static Plan copies(Plan plan, String device, String node, int count) {
        Row pattern = plan.rows(Table.DEVICES).row(device).orElseThrow();
        Row run = plan.rows(Table.RUNS).row("run " + device).orElseThrow();
        Plan now = plan;
        for (int i = 1; i <= count; i++) {
            String id = "copy " + i;
            now = now.and(Table.DEVICES, pattern.renamed(id))
                    .and(Table.RUNS, run.renamed("run " + id).with("from", node).with("to", Cell.text(id)));
        }
        return now;
    }

    private static Calculation calculated(Plan plan, Corner corner) {
        Calculation calculation = Calculation.of(plan);
        calculation.look(corner);
        return calculation;
    }

    @Test
    void growingIsWritingOutEveryCopy() throws Refusal {
        int stopped = 0;
        for (int seed = 1; seed <= PLANS; seed++) {
            Plan plan = StudyPlans.random(new Random(seed));
            String until = seed % 2 == 0 ? "'gate 1'.reserve_share < 20 %" : "some(not powered of devices)";
            Ground ground = Ground.of(plan, corner(seed));
            Grown grown = Grow.until(ground, "cam 1.1", until, 12, Effort.quiet());
            int fitted = -1;
            for (int copies = 0; copies < grown.points().size(); copies++) {
                Plan now = copies(plan, "cam 1.1", "gate 1", copies);
                String where = "seed " + seed + " copies " + copies;
                String said = grown.points()
                        .why(copies, 1)
                        .orElse(Double.toHexString(grown.points().inside(copies, 1)));
                assertEquals(
                        StudyPlans.fresh(now, corner(seed), until).replace("copy ", ""),
                        said.replaceAll("cam 1\\.(?=[2-9]|1[0-9])", ""),
                        where);
                Value dark = calculated(now, corner(seed))
                        .ask("count(devices where not powered) + count(switches where not powered)")
                        .value()
                        .orElseThrow();
                assertEquals(dark.inside(), grown.points().inside(copies, 2), where);
                fitted = said.equals(Double.toHexString(0)) ? copies : fitted;
            }
            assertEquals(Math.max(0, fitted), grown.fitted(), "seed " + seed);
            stopped += grown.reached() ? 1 : 0;
        }
        assertTrue(stopped > PLANS / 2, "only " + stopped + " were stopped");
    }

    /** True if nothing that had power lost it, every copy has some, and every node up to the source keeps its share. */
    private static boolean fits(Calculation before, Calculation after, String node) {
        for (Table table : List.of(Table.SWITCHES, Table.DEVICES)) {
            for (int place = 0; place < after.rows(table); place++) {
                boolean isNew = place >= before.rows(table);
                if ((isNew || before.value(table, place, "powered").inside() == 1)
                        && after.value(table, place, "powered").inside() != 1) {
                    return false;
                }
            }
        }
        for (String at = node; !at.isEmpty(); ) {
            Value share = after.ask("'" + at + "'.reserve_share").value().orElseThrow();
            if (share.isPresent() && share.inside() < 0.15 * (1 - 1e-9)) {
                return false;
            }
            at = at.equals("feed")
                    ? ""
                    : after.ask("'" + at + "'.feeder").value().orElseThrow().text();
        }
        return true;
    }

    @Test
    void roomIsTryingEveryCount() throws Refusal {
        int some = 0;
        int full = 0;
        for (int seed = 1; seed <= PLANS; seed++) {
            Plan plan = StudyPlans.with(StudyPlans.random(new Random(seed)), Table.PLAN, "", "reserve_target", "15 %");
            Corner corner = corner(seed);
            Calculation before = calculated(plan, corner);
            for (Fit fit : Room.of(Ground.of(plan, corner), Effort.quiet())) {
                int most = Math.min(fit.ports(), fit.more() + 3);
                for (int count = 1; count <= most; count++) {
                    Calculation after = calculated(copies(plan, fit.pattern(), fit.node(), count), corner);
                    assertEquals(
                            count <= fit.more(),
                            fits(before, after, fit.node()),
                            "seed " + seed + " " + fit + " with " + count);
                }
                some += fit.more() > 0 ? 1 : 0;
                full += fit.more() < fit.ports() ? 1 : 0;
            }
        }
        assertTrue((some > 0) && (full > 0), some + " with room, " + full + " stopped before the ports were");
    }

    @Test
    void everyEffectAndEveryInputWithoutOneIsWhatItsOwnPlanSays() throws Refusal {
        int all = 0;
        for (int seed = 1; seed <= PLANS; seed++) {
            Plan plan = StudyPlans.random(new Random(seed));
            Ground ground = Ground.of(plan, corner(seed));
            String read = "least(volts of devices)";
            Effects effects = Sensitivity.of(ground, read, 0.04, Effort.of(1 + seed % 3));
            int moved = 0;
            for (Inputs input : Inputs.of(ground)) {
                double step = input.step(0.04);
                String down = moved(plan, input, input.now() - step, corner(seed), read);
                String up = moved(plan, input, input.now() + step, corner(seed), read);
                String where = "seed " + seed + " " + input.heading().name();
                var effect = effects.effects().stream()
                        .filter(e -> e.input().equals(input.heading()))
                        .findFirst();
                if (effect.isEmpty()) {
                    assertEquals(Double.toHexString(effects.now()), down, where);
                    assertEquals(Double.toHexString(effects.now()), up, where);
                    continue;
                }
                moved++;
                assertEquals(down, said(effect.get().down(), effect.get().why()), where);
                assertEquals(up, said(effect.get().up(), effect.get().why()), where);
            }
            assertEquals(moved, effects.effects().size());
            assertEquals(Inputs.of(ground).size() - moved, effects.without());
            all += moved;
        }
        assertTrue(all > 3 * PLANS, "only " + all + " inputs had an effect");
    }

    private static String said(double inside, String why) {
        return Double.isNaN(inside) ? why : Double.toHexString(inside);
    }

    private static String moved(Plan plan, Inputs input, double inside, Corner corner, String read) {
        String text = Show.exact(inside, input.heading().unit());
        return StudyPlans.fresh(
                StudyPlans.with(
                        plan,
                        input.knob().table(),
                        input.knob().id(),
                        input.knob().name(),
                        text),
                corner,
                read);
    }

    @Test
    void aSpreadIsItsRunsCountedByHand() throws Refusal, IOException {
        for (int seed = 1; seed <= PLANS; seed++) {
            Plan plan = StudyPlans.random(new Random(seed));
            Ground ground = Ground.of(plan, corner(seed));
            List<String> reads = List.of("least(volts of devices)", "'gate 1'.reserve_share >= 20 %");
            List<Vary> vary =
                    List.of(Vary.of(ground, "'trunk 1'.length = 200 m ~ 60 %"), Vary.of(ground, "night = 3 W .. 12 W"));
            double[] volts = new double[30];
            int[] failing = {0};
            List<Scatter> all = Spread.of(ground, vary, reads, volts.length, seed)
                    .run(Effort.of(2), point -> {
                        Plan now = StudyPlans.with(
                                plan,
                                Table.RUNS,
                                "trunk 1",
                                "length",
                                Show.exact(
                                        point.inside(0), vary.get(0).heading().unit()));
                        now = StudyPlans.with(
                                now,
                                Table.VALUES,
                                "night",
                                "is",
                                Show.exact(
                                        point.inside(1), vary.get(1).heading().unit()));
                        Calculation own = calculated(now, ground.corner());
                        volts[(int) point.number()] =
                                own.ask(reads.get(0)).value().orElseThrow().inside();
                        Value enough = own.ask(reads.get(1)).value().orElseThrow();
                        failing[0] += enough.isPresent() && enough.inside() == 1 ? 0 : 1;
                    });
            double[] there =
                    Arrays.stream(volts).filter(v -> !Double.isNaN(v)).sorted().toArray();
            assertEquals(volts.length - there.length, all.get(0).without(), "seed " + seed);
            assertEquals(failing[0] / 30.0, all.get(1).failing(), 1e-12, "seed " + seed);
            if (there.length > 0) {
                assertEquals(there[0], all.get(0).levels().get(0));
                assertEquals(there[there.length - 1], all.get(0).levels().get(8));
                assertEquals(
                        Arrays.stream(there).average().orElseThrow(), all.get(0).mean(), 1e-9);
            }
        }
    }

    @Test
    void nothingBeyondTheLimitHoldsOnAFinerGrid() throws Refusal {
        int edges = 0;
        for (int seed = 1; seed <= PLANS; seed++) {
            Plan plan = StudyPlans.random(new Random(seed));
            String holds = seed % 2 == 0 ? "every(powered of devices)" : "'gate 1'.reserve_share >= 15 %";
            Ground ground = Ground.of(plan, corner(seed));
            Vary vary = Vary.of(ground, "'trunk 1'.length = 2 m .. 1502 m");
            Limited limited = Limit.find(ground, vary, holds, Effort.quiet());
            edges += limited.farthest().isPresent() && limited.beyond().isPresent() ? 1 : 0;
            for (int metres = 2; metres <= 1502; metres += 30) {
                Plan now = StudyPlans.with(plan, Table.RUNS, "trunk 1", "length", metres + " m");
                boolean held = StudyPlans.fresh(now, corner(seed), holds).equals(YES);
                boolean within = limited.farthest().isPresent()
                        && metres <= limited.farthest().get();
                assertEquals(within, held || (within && !limited.monotonic()), "seed " + seed + " at " + metres);
            }
        }
        assertTrue(edges > PLANS / 2, "only " + edges + " had an edge");
    }

    @Test
    void theCountOfThreadsChangesNoStudy() throws Refusal, IOException {
        List<String> first = new ArrayList<>();
        for (int threads : new int[] {1, 2, 3, 7}) {
            List<String> said = new ArrayList<>();
            for (int seed = 1; seed <= 3; seed++) {
                Ground ground = Ground.of(StudyPlans.random(new Random(seed)));
                Effort effort = Effort.of(threads);
                String share = "'gate 1'.reserve_share";
                Vary length = Vary.of(ground, "'trunk 1'.length = 1 m .. 900 m by 3 m");
                said.add(Sensitivity.of(ground, share, 0.05, effort).toString());
                said.add(Room.of(ground, effort).toString());
                said.add(points(Grow.until(ground, "cam 1.1", share + " < 20 %", 9, effort)
                        .points()));
                said.add(points(
                        Limit.find(ground, length, share + " > 20 %", effort).points()));
                said.add(
                        points(Sweep.of(ground, List.of(length), List.of(share)).points(effort)));
                Vary bell = Vary.of(ground, "'trunk 1'.length = 95 m ~ 30 %");
                said.add(Spread.of(ground, List.of(bell), List.of(share), 500, seed)
                        .run(effort, point -> said.add(Double.toHexString(point.inside(1))))
                        .toString());
            }
            first = first.isEmpty() ? said : first;
            assertEquals(first, said, threads + " threads");
        }
    }

    private static String points(Points points) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < points.size(); i++) {
            for (int c = 0; c < points.columns().size(); c++) {
                all.append(points.why(i, c).orElse(Double.toHexString(points.inside(i, c))))
                        .append(' ');
            }
        }
        return all.toString();
    }
}
