package farwatt.script;

import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a script changed, in order; of several settings of one cell in a row only the last is kept. */
final class Steps {
    private final List<Step> steps = new ArrayList<>();
    /** Where a cell was set, since rows last came or went. */
    private final Map<String, Integer> places = new HashMap<>();

    void set(Step.Set step) {
        Integer place = places.putIfAbsent(Rows.fold(step.path()), steps.size());
        if (place == null) {
            steps.add(step);
        } else {
            steps.set(place, step);
        }
    }

    /** A row that came or went. */
    void add(Step step) {
        steps.add(step);
        places.clear();
    }

    /** Takes the last step back; rows must have come or gone by it. */
    Step removeLast() {
        return steps.remove(steps.size() - 1);
    }

    boolean isEmpty() {
        return steps.isEmpty();
    }

    List<Step> list() {
        return List.copyOf(steps);
    }

    /** A copy with more at the end. */
    Steps and(List<Step> more) {
        Steps all = new Steps();
        all.steps.addAll(steps);
        all.steps.addAll(more);
        return all;
    }

    /** The steps of a scenario and of what it stands on; the plan is known to have them. */
    static List<Step> chain(Plan plan, String scenario) {
        List<Step> all = new ArrayList<>();
        Optional<Scenario> next = plan.scenario(scenario);
        while (next.isPresent()) {
            all.addAll(0, next.get().steps());
            next = plan.scenario(next.get().on());
        }
        return all;
    }
}
