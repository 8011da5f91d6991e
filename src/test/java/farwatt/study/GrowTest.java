package farwatt.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GrowTest {
    @Test
    void copiesAreAddedUntilTheConditionIsMet() throws Refusal {
        Ground ground = Ground.of(FerryPlan.plan());
        Grown grown = Grow.until(ground, "cam 1", "gate.reserve_share < reserve_target", 50, Effort.quiet());
        assertEquals(1, grown.fitted());
        assertTrue(grown.reached());
        assertTrue(grown.stoppedBy().contains("With 2 more"));
        Plan plan = FerryPlan.plan();
        for (int copies = 0; copies <= 2; copies++) {
            double expected = copies < 2 ? 0 : 1;
            assertEquals(
                    Double.toHexString(expected),
                    StudyPlans.fresh(plan, ground.corner(), "gate.reserve_share < reserve_target"));
            assertEquals(expected, grown.points().inside(copies, 1));
            Row camera = plan.rows(Table.DEVICES).row("cam 1").orElseThrow();
            Row run = plan.rows(Table.RUNS).row("run cam 1").orElseThrow();
            plan = plan.and(Table.DEVICES, camera.renamed("more " + copies))
                    .and(Table.RUNS, run.renamed("to more " + copies).with("to", Cell.text("more " + copies)));
        }
    }

    @Test
    void theFirstOneLeftDarkIsNamed() throws Refusal {
        Grown grown =
                Grow.until(Ground.of(FerryPlan.plan()), "cam 4", "some(not powered of devices)", 50, Effort.quiet());
        assertTrue(grown.firstDark().isPresent());
        assertEquals(Optional.of(grown.fitted() + 1), grown.firstDark());
        assertFalse(grown.darkId().isEmpty());
    }

    @Test
    void nothingInTheWayIsSaidAsWell() throws Refusal {
        Grown grown = Grow.until(Ground.of(FerryPlan.plan()), "cam 1", "plan.lost > 1000 W", 3, Effort.quiet());
        assertEquals(3, grown.fitted());
        assertFalse(grown.reached());
        Grown lost = Grow.until(Ground.of(FerryPlan.plan()), "cam 1", "plan.lost > 1000 W", 500, Effort.quiet());
        assertTrue(lost.reached());
        assertTrue(lost.stoppedBy().contains("has no value"));
    }

    @Test
    void whatCannotBeCopiedIsRefused() throws Refusal {
        Ground ground = Ground.of(FerryPlan.plan());
        for (String id : List.of("nobody", "quay", "trunk", "feed")) {
            assertThrows(Refusal.class, () -> Grow.until(ground, id, "dark", 5, Effort.quiet()), id);
        }
        assertThrows(Refusal.class, () -> Grow.until(ground, "cam 1", "plan.lost", 5, Effort.quiet()));
        assertThrows(Refusal.class, () -> Grow.until(ground, "cam 1", "dark", 0, Effort.quiet()));
    }
}
