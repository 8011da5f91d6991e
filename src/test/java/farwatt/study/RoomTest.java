package farwatt.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoomTest {
    @Test
    void aNodeWithoutAFreePortHasNoRoom() throws Refusal {
        List<Fit> fits = Room.of(Ground.of(FerryPlan.plan()), Effort.quiet());
        assertTrue(
                fits.stream().allMatch(fit -> fit.more() == 0 && fit.stoppedBy().contains("no port left")));
    }

    @Test
    void oneMoreThanFitsBreaksTheReserve() throws Refusal {
        Plan plan = StudyPlans.with(FerryPlan.plan(), Table.SWITCHES, "gate", "ports", "40");
        Ground ground = Ground.of(plan);
        Fit fit = Room.of(ground, Effort.quiet()).stream()
                .filter(f -> f.node().equals("gate") && f.kind().equals("sensor"))
                .findFirst()
                .orElseThrow();
        assertEquals(28, fit.ports());
        assertTrue(fit.more() > 0 && fit.more() < 28, fit.toString());
        assertEquals("tide gauge", fit.pattern());
        for (int more : new int[] {fit.more(), fit.more() + 1}) {
            Plan now = plan;
            Row device = plan.rows(Table.DEVICES).row("tide gauge").orElseThrow();
            Row run = plan.rows(Table.RUNS).row("run tide gauge").orElseThrow();
            for (int i = 1; i <= more; i++) {
                now = now.and(Table.DEVICES, device.renamed("tide gauge " + (i + 1)))
                        .and(
                                Table.RUNS,
                                run.renamed("run tide gauge " + (i + 1))
                                        .without("port")
                                        .with("to", Cell.text("tide gauge " + (i + 1))));
            }
            String holds = StudyPlans.fresh(now, ground.corner(), "gate.reserve_share >= reserve_target");
            assertEquals(Double.toHexString(more == fit.more() ? 1 : 0), holds);
        }
    }
}
