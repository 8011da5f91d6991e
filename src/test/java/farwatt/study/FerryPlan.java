package farwatt.study;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import java.nio.file.Path;

/** The demo plan, as the program carries it. */
final class FerryPlan {
    private FerryPlan() {}

    static Plan plan() throws Refusal {
        Path root = Path.of(System.getProperty("farwatt.root", ""));
        return PlanReader.read(root.resolve("scenarios/ferry-landing.farwatt.json"))
                .plan();
    }
}
