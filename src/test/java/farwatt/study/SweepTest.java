package farwatt.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Corner;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class SweepTest {
    private static final List<String> READS =
            List.of("'gate 1'.reserve_share", "least(volts of devices)", "plan.lost", "count(devices where powered)");
    private static final int PLANS = Boolean.getBoolean("farwatt.soak") ? 300 : 12;

    private static Sweep sweep(Ground ground, List<String> over, List<String> reads) throws Refusal {
        List<Vary> all = new ArrayList<>();
        for (String text : over) {
            all.add(Vary.of(ground, text));
        }
        return Sweep.of(ground, all, reads);
    }

    private static String said(Points points, int point, int column) {
        return points.why(point, column).orElseGet(() -> Double.toHexString(points.inside(point, column)));
    }

    @Test
    void everyPointIsWhatACalculationOfItsOwnSays() throws Refusal {
        String[] ambients = {"-20 degC", "24 degC", "68 degC"};
        String[] lengths = {"20 m", "95 m", "260 m", "-20 m"};
        String[] nights = {"3 W", "9 W", "21 W"};
        String[] used = {"yes", "no"};
        for (int p = 0; p < PLANS; p++) {
            long seed = 70L + p;
            Plan plan = StudyPlans.random(new Random(seed));
            Corner corner = Corner.values()[p % Corner.values().length];
            Points points = sweep(
                            Ground.of(plan, corner),
                            List.of(
                                    "yard.ambient = " + String.join(", ", ambients),
                                    "'trunk 1'.length = " + String.join(", ", lengths),
                                    "'cam 1.1'.in_use = yes, no",
                                    "night = " + String.join(", ", nights)),
                            READS)
                    .points(Effort.quiet());
            assertEquals(3 * 4 * 2 * 3, points.size());
            for (int i = 0; i < points.size(); i++) {
                Plan now = StudyPlans.with(plan, Table.ZONES, "yard", "ambient", ambients[i / 24]);
                now = StudyPlans.with(now, Table.RUNS, "trunk 1", "length", lengths[i / 6 % 4]);
                now = StudyPlans.with(now, Table.DEVICES, "cam 1.1", "in_use", used[i / 3 % 2]);
                now = StudyPlans.with(now, Table.VALUES, "night", "is", nights[i % 3]);
                for (int r = 0; r < READS.size(); r++) {
                    String where = "seed " + seed + " point " + i + " " + READS.get(r);
                    assertEquals(StudyPlans.fresh(now, corner, READS.get(r)), said(points, i, 4 + r), where);
                }
            }
        }
    }

    @Test
    void threadsChangeNothing() throws Refusal, IOException {
        Ground ground = Ground.of(FerryPlan.plan());
        List<String> over = List.of(
                "quay.ambient = -20 degC .. 60 degC by 4 K",
                "trunk.gauge = 22 AWG, 24 AWG, 26 AWG, 28 AWG",
                "camera_day = 3 W .. 9 W by 0.25 W");
        List<String> reads = List.of("gate.reserve_share", "'cam 4'.volts", "plan.lost");
        long[] first = {};
        for (int threads : new int[] {1, 2, 4}) {
            List<Long> bits = new ArrayList<>();
            sweep(ground, over, reads).run(Effort.of(threads), point -> {
                assertEquals(bits.size() / 6, point.number());
                for (int c = 0; c < 6; c++) {
                    bits.add(Double.doubleToLongBits(point.inside(c)));
                }
            });
            long[] now = bits.stream().mapToLong(Long::longValue).toArray();
            assertEquals(21 * 4 * 25 * 6, now.length);
            assertTrue(first.length == 0 || Arrays.equals(first, now), threads + " threads");
            first = now;
        }
    }

    @Test
    void aPointWithoutAValueSaysWhy() throws Refusal {
        Points points = sweep(
                        Ground.of(FerryPlan.plan()),
                        List.of("trunk.length = 20 m, 0 m, -20 m"),
                        List.of("gate.reserve_share"))
                .points(Effort.quiet());
        assertTrue(points.why(1, 1).isEmpty());
        assertTrue(points.why(2, 1).orElseThrow().contains("trunk · length: -20 m is below zero"));
        assertEquals("–", points.text(2, 1));
    }

    @Test
    void stepsAreTheDigitsThatWereTyped() throws Refusal {
        Ground ground = Ground.of(FerryPlan.plan());
        Values.Span span = (Values.Span)
                Vary.of(ground, "trunk.length = 0.1 m .. 1 m by 0.1 m").values();
        double[] steps = span.steps().orElseThrow();
        assertEquals(10, steps.length);
        assertEquals(0.3, steps[2]);
        assertEquals(0.7, steps[6]);
        Values.Span down = (Values.Span)
                Vary.of(ground, "quay.ambient = 40 degC .. -20 degC by 20 K").values();
        assertEquals(
                List.of(40.0, 20.0, 0.0, -20.0),
                Arrays.stream(down.steps().orElseThrow()).boxed().toList());
    }

    @Test
    void whatMakesNoSenseIsSaidInOneSentence() throws Refusal {
        Ground ground = Ground.of(FerryPlan.plan());
        String[][] calls = {
            {"trunk.length 5 m", "does not say what to vary"},
            {"trunk.lenght = 5 m", "trunk.lenght names no cell"},
            {"trunk.loss = 5 W", "worked out"},
            {"trunk.length = 5 W", "5 W does not fit trunk.length, which is given in m"},
            {"trunk.length = ", "is no value for trunk.length"},
            {"trunk.length = 1 m .. 5 m by 2 W", "2 W is no step"},
            {"trunk.length = 1 m .. 5 m by 0 m", "0 m is no step"},
            {"trunk.length = 1 m .. 5 m", "is a span without steps"},
            {"trunk.length = 0 m .. 300 km by 1 mm", "more than 10000000 values"},
            {"camera_day = 12,95 W", "may be one number or several"},
            {"camera_day = NaN", "NaN is no value"},
            {"gate.mode = regulatd", "Write one such as regulated, direct"},
            {"trunk.length = 95 m ± 5 %", "trunk.length"},
            {"nobody.length = 5 m", "nobody.length names no cell"}
        };
        for (String[] call : calls) {
            Refusal refusal =
                    assertThrows(Refusal.class, () -> sweep(ground, List.of(call[0]), List.of("plan.lost")), call[0]);
            String line = refusal.notice().line();
            assertTrue(line.contains(call[1]), line);
        }
        Refusal twice = assertThrows(
                Refusal.class, () -> sweep(ground, List.of("dark = yes", "dark = no"), List.of("plan.lost")));
        assertTrue(twice.notice().line().contains("varied twice"));
        assertThrows(Refusal.class, () -> sweep(ground, List.of("dark = yes"), List.of("gate.nothing")));
    }

    @Test
    void cancelStopsWithinABlock() throws Refusal {
        for (int threads : new int[] {1, 2}) {
            Cancel cancel = new Cancel();
            AtomicInteger seen = new AtomicInteger();
            Sweep sweep = sweep(
                    Ground.of(FerryPlan.plan()),
                    List.of("quay.ambient = -20 degC .. 60 degC by 0.001 K", "camera_day = 3 W .. 9 W by 0.01 W"),
                    List.of("gate.reserve_share"));
            assertTrue(sweep.size() > 40_000_000);
            Effort effort = new Effort(threads, Progress.SILENT, cancel, () -> 0);
            assertThrows(
                    CancellationException.class,
                    () -> sweep.run(effort, point -> {
                        if (seen.incrementAndGet() == 1_000) {
                            cancel.ask();
                        }
                    }));
            assertTrue(seen.get() < 2_000, "went on for " + seen.get());
        }
    }

    @Test
    void aSinkThatCannotGoOnEndsTheSweep() throws Refusal {
        Sweep sweep = sweep(
                Ground.of(FerryPlan.plan()),
                List.of("quay.ambient = -20 degC .. 60 degC by 0.01 K"),
                List.of("plan.lost"));
        IOException full = assertThrows(
                IOException.class,
                () -> sweep.run(Effort.of(2), point -> {
                    throw new IOException("disk full");
                }));
        assertEquals("disk full", full.getMessage());
    }

    @Test
    void progressTellsHowManyAndHowLongStill() throws Refusal, IOException {
        List<String> told = new ArrayList<>();
        long[] clock = {0};
        Effort effort = new Effort(1, (share, what) -> told.add(what), new Cancel(), () -> clock[0] += 2_000_000_000L);
        sweep(Ground.of(FerryPlan.plan()), List.of("trunk.length = 1 m .. 1024 m by 1 m"), List.of("plan.lost"))
                .run(effort, point -> {});
        assertEquals("256 of 1024, about 6 s left", told.get(0));
        assertEquals("1024 of 1024", told.get(told.size() - 1));
    }
}
