package farwatt.window.desk;

import farwatt.engine.Corner;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import java.util.Optional;

/**
 * What the desk wants worked out.
 *
 * @param plan with the scenario looked at put in
 * @param step the one change that leads from the plan wanted before to this one; empty where more may differ
 */
record Wanted(Plan plan, Optional<Change> step, Corner corner) {}
