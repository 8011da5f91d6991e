package farwatt.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SensitivityTest {
    @Test
    void everyEffectIsWhatACalculationOfItsOwnSays() throws Refusal {
        for (int seed = 1; seed <= 6; seed++) {
            Plan plan = StudyPlans.random(new Random(seed));
            Ground ground = Ground.of(plan);
            Effects effects = Sensitivity.of(ground, "plan.lost", 0.05, Effort.of(1 + seed % 2));
            Effect trunk = effects.effects().stream()
                    .filter(e -> e.input().name().equals("'trunk 1'.length"))
                    .findFirst()
                    .orElseThrow();
            for (boolean up : new boolean[] {false, true}) {
                double metres = trunk.now() + (up ? 1 : -1) * trunk.now() * 0.05;
                Plan now = StudyPlans.with(plan, Table.RUNS, "trunk 1", "length", metres + " m");
                assertEquals(
                        StudyPlans.fresh(now, ground.corner(), "plan.lost"),
                        Double.toHexString(up ? trunk.up() : trunk.down()),
                        "seed " + seed);
            }
            double before = Double.POSITIVE_INFINITY;
            for (Effect effect : effects.effects()) {
                assertTrue(effect.size() <= before && effect.size() > 0);
                before = effect.size();
            }
        }
    }

    @Test
    void stepsFitWhatMoves() throws Refusal {
        Effects effects = Sensitivity.of(Ground.of(FerryPlan.plan()), "gate.reserve_share", 0.05, Effort.quiet());
        for (Effect effect : effects.effects()) {
            double step = effect.high() - effect.now();
            switch (effect.input().name()) {
                case "trunk.gauge" -> assertEquals(1, step);
                case "quay.ambient" -> assertEquals(5, step, 1e-12);
                case "camera_day" -> assertEquals(0.25, step, 1e-12);
                default -> assertTrue(step > 0);
            }
        }
        assertEquals("gate.efficiency", effects.effects().get(0).input().name());
        assertTrue(effects.without() > 0);
    }

    @Test
    void wordsAndSillyStepsAreRefused() throws Refusal {
        Ground ground = Ground.of(FerryPlan.plan());
        assertThrows(Refusal.class, () -> Sensitivity.of(ground, "gate.bound_by", 0.05, Effort.quiet()));
        for (double step : List.of(0.0, -0.1, 1.0, Double.NaN)) {
            assertThrows(Refusal.class, () -> Sensitivity.of(ground, "plan.lost", step, Effort.quiet()));
        }
    }
}
