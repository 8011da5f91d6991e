package farwatt.engine;

import java.util.List;

/**
 * How one value came about.
 *
 * @param title what it is: {@code gate · available}, or an expression
 * @param value the value with its unit, or why there is none
 * @param how what was typed, the default that took its place, or the formula in names
 * @param source the standard, table or practice it rests on; "" where it is only arithmetic
 * @param inputs the values that came in
 * @param more how many further inputs are not listed
 */
public record Explanation(String title, String value, String how, String source, List<Explanation> inputs, int more) {
    public Explanation {
        inputs = List.copyOf(inputs);
    }
}
