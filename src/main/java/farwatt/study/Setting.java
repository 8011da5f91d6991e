package farwatt.study;

import farwatt.plan.Cell;

/**
 * One value that a cell can take.
 *
 * @param cell as typed into a plan, canonical
 * @param inside SI, a gauge, 1 or 0, the place of a word; NaN for texts and rows
 */
public record Setting(Cell cell, double inside) {}
