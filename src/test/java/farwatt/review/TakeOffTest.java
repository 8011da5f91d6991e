package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Table;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What is ordered: counted kind by kind, runs cut whole from boxes. */
class TakeOffTest {
    private static final int TRIES = Boolean.getBoolean("farwatt.soak") ? 20_000 : 500;

    private static final String SITE = """
            plan | slack = 10 %
            zone quay | outdoor = yes
            source feed | type = 4 | price = 300 EUR
            switch gate | zone = quay | ports = 4 | price = 400 EUR
            device cam 1 | zone = quay | draw = 5 W
            device cam 2 | zone = quay | draw = 5 W
            device cam 3 | draw = 5 W | in_use = no
            run trunk | from = feed | to = gate | length = 95 m | cord_length = 5 m | gauge = 23 AWG | surge = yes | price_per_length = 2 EUR/m
            run line 1 | from = gate | to = cam 1 | length = 200 m
            run line 2 | from = gate | to = cam 2 | length = 150 m
            run line 3 | from = gate | to = cam 3 | length = 10 m | in_use = no
            """;

    private static TakeOff of(String site) {
        return TakeOff.of(Sketch.calc(site));
    }

    private static TakeOff.Line line(TakeOff off, TakeOff.Part part, String with) {
        return off.lines().stream()
                .filter(l -> l.part() == part && l.kind().contains(with))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyKindIsCountedOnceWithItsRows() {
        TakeOff off = of(SITE);
        TakeOff.Line trunk = line(off, TakeOff.Part.CABLE, "23 AWG");
        assertEquals("category 6, 23 AWG, copper, unscreened, indoor", trunk.kind());
        assertEquals(90, trunk.planned(), 1e-9);
        assertEquals(99, trunk.order(), 1e-9);
        assertEquals(1, trunk.boxes());
        assertEquals(198, trunk.cost().orElseThrow(), 1e-9);
        TakeOff.Line lines = line(off, TakeOff.Part.CABLE, "24 AWG");
        assertEquals(List.of("line 1", "line 2"), lines.rows());
        assertEquals(385, lines.order(), 1e-9);
        assertEquals(2, lines.boxes(), "220 m and 165 m do not come from one box");
        assertEquals(Optional.empty(), lines.cost());
        assertEquals(5.5, line(off, TakeOff.Part.CORD, "24 AWG").order(), 1e-9);
        assertEquals(6, line(off, TakeOff.Part.CONNECTOR, "").order());
        assertEquals(6, line(off, TakeOff.Part.LABEL, "").order());
        assertEquals(2, line(off, TakeOff.Part.SURGE, "").order());
        assertEquals(5, line(off, TakeOff.Part.GLAND, "").order(), "three at the switch, one at each camera");
        assertEquals(2, line(off, TakeOff.Part.DEVICE, "").order());
        assertEquals(
                "type 4, ports: 1, 90 W a port",
                line(off, TakeOff.Part.SOURCE, "").kind());
        assertEquals(
                "regulated, ports: 4, 30 W a port",
                line(off, TakeOff.Part.SWITCH, "").kind());
        assertEquals(300 + 400 + 198, off.cost(), 1e-9);
    }

    @Test
    void runsWithoutALengthOrLongerThanABoxAreNamed() {
        TakeOff.Line line =
                line(of(SITE.replace("200 m", "290 m").replace("| length = 150 m", "")), TakeOff.Part.CABLE, "24 AWG");
        assertEquals(List.of("line 2"), line.unmeasured());
        assertEquals(List.of("line 1"), line.overlong());
        assertEquals(0, line.boxes());
        assertEquals(319, line.order(), 1e-9);
    }

    @Test
    void betweenTwoPlansOnlyWhatDiffersIsListed() {
        List<TakeOff.Difference> all = of(SITE).to(of(SITE.replace("23 AWG", "24 AWG")));
        assertEquals(2, all.size(), all.toString());
        TakeOff.Difference less = all.get(0);
        assertEquals(99, less.before(), 1e-9);
        assertEquals(0, less.after());
        assertEquals(-198, less.cost().orElseThrow(), 1e-9);
        TakeOff.Difference more = all.get(1);
        assertEquals(484, more.after(), 1e-9);
        assertEquals(2, more.boxesAfter());
        assertEquals(List.of(), of(SITE).to(of(SITE)));
    }

    /** Every way to put runs into boxes that could still be better than the best so far. */
    private static int brute(double[] cuts, int at, double[] left, int used, int best) {
        if (used >= best || at == cuts.length) {
            return Math.min(used, best);
        }
        int least = best;
        for (int b = 0; b <= used; b++) {
            if (left[b] >= cuts[at]) {
                left[b] -= cuts[at];
                least = Math.min(least, brute(cuts, at + 1, left, Math.max(used, b + 1), least));
                left[b] += cuts[at];
            }
        }
        return least;
    }

    private static int brute(double[] cuts) {
        double[] left = new double[cuts.length + 1];
        Arrays.fill(left, TakeOff.BOX);
        return brute(cuts, 0, left, 0, cuts.length + 1);
    }

    @Test
    void upToTwelveRunsTakeTheFewestBoxesThereCanBeAndManyCloseToIt() {
        Random random = new Random(5);
        for (int i = 0; i < TRIES; i++) {
            double[] cuts = new double[1 + random.nextInt(12)];
            int longest = 40 + random.nextInt(265);
            for (int k = 0; k < cuts.length; k++) {
                cuts[k] = 1 + random.nextInt(longest);
            }
            int fewest = brute(cuts);
            assertEquals(fewest, Boxes.count(cuts, TakeOff.BOX), () -> Arrays.toString(cuts));
            int fit = Boxes.bestFit(cuts, TakeOff.BOX);
            assertTrue(fit >= fewest && fit <= 11.0 / 9 * fewest + 1, () -> Arrays.toString(cuts));
        }
        double[] twelve = {152, 152, 152, 152, 152, 152, 153, 153, 153, 153, 153, 153};
        assertEquals(6, Boxes.count(twelve, TakeOff.BOX));
        double[] many = new double[3000];
        Arrays.fill(many, 100);
        assertEquals(1000, Boxes.count(many, TakeOff.BOX));
        double third = 305 / 1.1 / 3 * 1.1;
        assertEquals(1, Boxes.count(new double[] {third, third, third}, TakeOff.BOX), "but for rounding");
    }

    @Test
    void totalsAreTheRunsAndTheirSlack() {
        for (long seed = 1; seed <= 20; seed++) {
            Calculation calc = Calculation.of(RandomPlans.of(seed, 12));
            double slack = calc.figures(Table.PLAN, "slack").at(0);
            double fixed = 0;
            double cords = 0;
            int measured = 0;
            for (int run = 0; run < calc.rows(Table.RUNS); run++) {
                double length = calc.figures(Table.RUNS, "length").at(run);
                if (!Double.isNaN(length)) {
                    cords += calc.figures(Table.RUNS, "cord_length").at(run);
                    fixed += length - calc.figures(Table.RUNS, "cord_length").at(run);
                    measured++;
                }
            }
            TakeOff off = TakeOff.of(calc);
            assertEquals(fixed, sum(off, TakeOff.Part.CABLE, TakeOff.Line::planned), 1e-9, "seed " + seed);
            assertEquals(fixed * (1 + slack), sum(off, TakeOff.Part.CABLE, TakeOff.Line::order), 1e-9);
            assertEquals(cords * (1 + slack), sum(off, TakeOff.Part.CORD, TakeOff.Line::order), 1e-9);
            int rows = calc.rows(Table.RUNS);
            assertEquals(
                    rows - measured,
                    sum(off, TakeOff.Part.CABLE, l -> l.unmeasured().size()),
                    1e-9);
            assertEquals(2 * rows, sum(off, TakeOff.Part.CONNECTOR, TakeOff.Line::order));
            assertEquals(calc.rows(Table.DEVICES), sum(off, TakeOff.Part.DEVICE, TakeOff.Line::order));
        }
    }

    private static double sum(TakeOff off, TakeOff.Part part, ToDoubleFunction<TakeOff.Line> figure) {
        return off.lines().stream()
                .filter(l -> l.part() == part)
                .mapToDouble(figure)
                .sum();
    }

    @Test
    void theOrderOfRowsDecidesNothing() {
        for (long seed = 1; seed <= 20; seed++) {
            var plan = RandomPlans.of(seed, 12);
            TakeOff one = TakeOff.of(Calculation.of(plan));
            TakeOff other = TakeOff.of(Calculation.of(RandomPlans.shuffled(plan, seed)));
            assertEquals(one, other, "seed " + seed);
        }
    }
}
