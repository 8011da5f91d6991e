package farwatt.review;

import farwatt.engine.Corner;
import farwatt.report.Place;

/**
 * Whether the plan stands, in one sentence.
 *
 * @param holds true if nothing fails in any corner reviewed
 * @param text the sentence: the worst corner, the place, the figure, the limit that binds
 * @param corner the worst failing one, else the one with the least reserve
 * @param place the row and name that decide
 */
public record Verdict(boolean holds, String text, Corner corner, Place place) {}
