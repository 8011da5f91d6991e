package farwatt.plan;

import java.util.List;
import java.util.Map;

/**
 * A tried change of a plan: steps applied in order to the plan (base) or to another scenario.
 *
 * @param id its name
 * @param on the scenario it stands on, "" for base
 * @param steps in the order in which they apply
 * @param rest keys of the file that are not known, with their JSON text
 */
public record Scenario(String id, String on, List<Step> steps, Map<String, String> rest) {
    public Scenario {
        steps = List.copyOf(steps);
    }

    public Scenario(String id, String on, List<Step> steps) {
        this(id, on, steps, Map.of());
    }
}
