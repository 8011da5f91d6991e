package farwatt.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {
    private static final List<String> READS = List.of("gate.reserve_share", "gate.reserve_share > 28 %");

    private static Spread spread(Ground ground, int runs, long seed, String... vary) throws Refusal {
        List<Vary> all = new ArrayList<>();
        for (String text : vary) {
            all.add(Vary.of(ground, text));
        }
        return Spread.of(ground, all, READS, runs, seed);
    }

    private static List<Double> drawn(int threads, int runs, long seed, String... vary) throws Refusal, IOException {
        List<Double> all = new ArrayList<>();
        spread(Ground.of(FerryPlan.plan()), runs, seed, vary).run(Effort.of(threads), point -> {
            for (int c = 0; c < vary.length + READS.size(); c++) {
                all.add(point.inside(c));
            }
        });
        return all;
    }

    @Test
    void everyRunIsWhatACalculationOfItsOwnSays() throws Refusal, IOException {
        Units units = new Units("EUR");
        Plan plan = FerryPlan.plan();
        Ground ground = Ground.of(plan);
        spread(
                        ground,
                        40,
                        7,
                        "trunk.length = 95 m ± 5 %",
                        "quay.ambient = 24 degC ~ 8 K",
                        "trunk.gauge = 22 AWG, 24 AWG")
                .run(Effort.quiet(), point -> {
                    Plan now = StudyPlans.with(
                            plan, Table.RUNS, "trunk", "length", Show.exact(point.inside(0), units.need("m")));
                    now = StudyPlans.with(
                            now, Table.ZONES, "quay", "ambient", Show.exact(point.inside(1), units.need("degC")));
                    now = StudyPlans.with(
                            now, Table.RUNS, "trunk", "gauge", Show.exact(point.inside(2), units.need("AWG")));
                    assertEquals(
                            StudyPlans.fresh(now, ground.corner(), READS.get(0)), Double.toHexString(point.inside(3)));
                });
    }

    @Test
    void theSeedAloneDecides() throws Refusal, IOException {
        String[] vary = {"trunk.length = 95 m ± 5 %", "camera_day = 5 W ~ 10 %"};
        List<Double> one = drawn(1, 3_000, 7, vary);
        assertEquals(one, drawn(2, 3_000, 7, vary));
        assertEquals(one, drawn(4, 3_000, 7, vary));
        assertTrue(!one.equals(drawn(1, 3_000, 8, vary)));
        assertEquals(one.subList(0, 400), drawn(1, 100, 7, vary));
    }

    @Test
    void valuesSpreadAsTheySay() throws Refusal, IOException {
        double[] sums = new double[4];
        int runs = 20_000;
        spread(Ground.of(FerryPlan.plan()), runs, 3, "trunk.length = 100 m +- 10 m", "camera_day = 5 W ~ 10 %")
                .run(Effort.of(2), point -> {
                    double length = point.inside(0);
                    assertTrue(length >= 90 && length <= 110);
                    sums[0] += length - 100;
                    sums[1] += (length - 100) * (length - 100);
                    sums[2] += point.inside(1) - 5;
                    sums[3] += (point.inside(1) - 5) * (point.inside(1) - 5);
                });
        assertEquals(0, sums[0] / runs, 0.2);
        assertEquals(100.0 / 3, sums[1] / runs, 0.8);
        assertEquals(0, sums[2] / runs, 0.02);
        assertEquals(0.25, sums[3] / runs, 0.012);
    }

    @Test
    void percentilesAndTheFailingShareAreThoseOfTheRuns() {
        Heading number =
                new Heading("x", farwatt.language.Type.of(farwatt.quantity.Unit.ONE), farwatt.quantity.Unit.ONE);
        double[] values = new double[102];
        for (int i = 0; i <= 100; i++) {
            values[i] = 100 - i;
        }
        values[101] = Double.NaN;
        Scatter scatter = Scatter.of(number, values);
        assertEquals(List.of(0.0, 1.0, 5.0, 25.0, 50.0, 75.0, 95.0, 99.0, 100.0), scatter.levels());
        assertEquals(50, scatter.mean(), 1e-12);
        assertEquals(1, scatter.without());
        // Wilson's interval for 10 of 100, worked out apart
        assertArrayEquals(new double[] {0.05522914, 0.17436566}, Scatter.interval(10, 100), 1e-7);
        assertEquals(0, Scatter.interval(0, 100)[0]);
        assertEquals(1, Scatter.interval(100, 100)[1]);
    }

    @Test
    void whatCannotSpreadIsRefused() throws Refusal {
        Ground ground = Ground.of(FerryPlan.plan());
        for (String text : List.of(
                "quay.ambient = 24 degC ± 5 %",
                "trunk.length = 95 m ± 5 W", "trunk.length = 95 m ± ", "dark = yes ± 5 %")) {
            assertThrows(Refusal.class, () -> spread(ground, 10, 1, text), text);
        }
        assertThrows(Refusal.class, () -> spread(ground, 1, 1, "dark = yes, no"));
        assertThrows(
                Refusal.class,
                () -> Spread.of(ground, List.of(Vary.of(ground, "dark = yes, no")), List.of("gate.bound_by"), 10, 1));
    }
}
