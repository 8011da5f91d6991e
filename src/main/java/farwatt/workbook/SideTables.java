package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.review.Reviewer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All scenarios of a plan beside the plan itself: what comes of each, and what each has to order. */
public final class SideTables {
    private SideTables() {}

    /**
     * Calculates every scenario; none where the plan has none.
     *
     * @param corner the one to show; the plan's own if empty
     * @throws Refusal if a scenario cannot be applied
     * @throws java.util.concurrent.CancellationException when cancelled
     */
    public static List<ScenarioTable.Side> of(Plan base, Optional<Corner> corner, Progress progress, Cancel cancel)
            throws Refusal {
        if (base.scenarios().isEmpty()) {
            return List.of();
        }
        List<ScenarioTable.Side> sides = new ArrayList<>();
        sides.add(side("base", base, corner, cancel));
        for (Scenario scenario : base.scenarios()) {
            progress.at(sides.size() / (1.0 + base.scenarios().size()), scenario.id());
            Plan applied = ScenarioPlans.of(base, scenario.id()).plan();
            sides.add(side(scenario.id(), applied, corner, cancel));
        }
        return sides;
    }

    private static ScenarioTable.Side side(String id, Plan plan, Optional<Corner> corner, Cancel cancel) {
        cancel.check();
        Calculation calculation = Calculation.of(plan);
        corner.ifPresent(calculation::look);
        return new ScenarioTable.Side(id, calculation, Reviewer.review(calculation, cancel));
    }

    /** The tables of these; without the one of orders where all order the same. */
    static List<Schedule> tables(List<ScenarioTable.Side> sides) {
        if (sides.isEmpty()) {
            return List.of();
        }
        Schedule orders = TakeOffTable.differences(sides);
        return orders.lines().size() == 0 ? List.of(ScenarioTable.of(sides)) : List.of(ScenarioTable.of(sides), orders);
    }
}
