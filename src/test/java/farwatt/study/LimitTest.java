package farwatt.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Corner;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LimitTest {
    private static final String YES = Double.toHexString(1);

    private static Limited find(Plan plan, String vary, String holds) throws Refusal {
        Ground ground = Ground.of(plan);
        return Limit.find(ground, Vary.of(ground, vary), holds, Effort.quiet());
    }

    @Test
    void theConditionHoldsThereAndNotAMillionthFurther() throws Refusal {
        Units units = new Units("EUR");
        for (int seed = 1; seed <= 10; seed++) {
            Plan plan = StudyPlans.random(new Random(seed));
            String holds = "'gate 1'.reserve_share >= 15 %";
            Limited limited = find(plan, "'trunk 1'.length = 1 m .. 1001 m", holds);
            if (limited.farthest().isEmpty() || limited.beyond().isEmpty()) {
                continue;
            }
            double last = limited.farthest().get();
            double next = limited.beyond().get();
            assertTrue(next > last && next - last <= 1e-3, "seed " + seed);
            String at = Show.exact(last, units.need("m"));
            String after = Show.exact(next, units.need("m"));
            assertEquals(YES, StudyPlans.fresh(length(plan, at), Corner.MOST, holds), "seed " + seed);
            assertFalse(YES.equals(StudyPlans.fresh(length(plan, after), Corner.MOST, holds)), "seed " + seed);
        }
    }

    private static Plan length(Plan plan, String text) {
        return StudyPlans.with(plan, Table.RUNS, "trunk 1", "length", text);
    }

    @Test
    void gaugesAndCountsEndAtAWholeOne() throws Refusal {
        Limited gauge = find(FerryPlan.plan(), "trunk.gauge = 20 AWG .. 30 AWG", "gate.reserve_share >= 20 %");
        assertEquals(25, gauge.farthest().orElseThrow());
        assertEquals(26, gauge.beyond().orElseThrow());
        Limited joints = find(FerryPlan.plan(), "trunk.joints = 0 .. 40", "gate.reserve_share >= 27 %");
        assertEquals(joints.farthest().orElseThrow() + 1, joints.beyond().orElseThrow());
        assertEquals(
                Math.rint(joints.farthest().orElseThrow()), joints.farthest().orElseThrow());
    }

    @Test
    void aConditionThatComesAndGoesIsSaidToDoSo() throws Refusal {
        Plan plan = FerryPlan.plan();
        Limited limited = find(
                plan,
                "trunk.length = 1 m .. 300 m",
                "trunk.length < 50 m or (trunk.length > 100 m and trunk.length < 150 m)");
        assertFalse(limited.monotonic());
        assertEquals(150, limited.farthest().orElseThrow(), 300e-6);
        assertTrue(limited.points().size() > 64);
        Limited whole = find(plan, "trunk.length = 1 m .. 300 m", "trunk.length < 400 m");
        assertTrue(whole.monotonic());
        assertEquals(300, whole.farthest().orElseThrow());
        assertTrue(whole.beyond().isEmpty());
        Limited never = find(plan, "trunk.length = 1 m .. 300 m", "trunk.length > 400 m");
        assertTrue(never.farthest().isEmpty());
        Limited late = find(plan, "trunk.length = 1 m .. 300 m", "trunk.length > 200 m");
        assertFalse(late.monotonic());
        Limited down = find(plan, "trunk.length = 300 m .. 1 m", "trunk.length > 200 m");
        assertTrue(down.monotonic());
        assertEquals(200, down.farthest().orElseThrow(), 300e-6);
    }

    @Test
    void whatIsNoSpanOrNoConditionIsRefused() throws Refusal {
        Plan plan = FerryPlan.plan();
        assertThrows(Refusal.class, () -> find(plan, "trunk.length = 1 m, 300 m", "dark"));
        assertThrows(Refusal.class, () -> find(plan, "trunk.length = 1 m .. 300 m", "plan.lost"));
        assertThrows(Refusal.class, () -> find(plan, "trunk.length = 1 m .. 1 m", "dark"));
    }
}
