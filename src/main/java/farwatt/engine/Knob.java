package farwatt.engine;

import farwatt.plan.Table;

/**
 * A cell that a study varies.
 *
 * @param id the row's id, the name of a value or constant; "" for a setting of the plan
 * @param name of the cell; {@code is} for a value or constant
 */
public record Knob(Table table, String id, String name) {}
