package farwatt.picture;

import java.util.Arrays;

/**
 * The upper and lower edge of a part of a tree over columns of cards and the gutters between them. Slot 2c is column
 * c, slot 2c + 1 the gutter right of it.
 */
final class Skyline {
    private double[] upper = {};
    private double[] lower = {};
    private final int first;

    /** @param first the leftmost slot it may cover */
    Skyline(int first) {
        this.first = first;
    }

    private void reach(int slots) {
        int before = upper.length;
        if (slots > before) {
            upper = Arrays.copyOf(upper, slots);
            lower = Arrays.copyOf(lower, slots);
            Arrays.fill(upper, before, slots, Double.POSITIVE_INFINITY);
            Arrays.fill(lower, before, slots, Double.NEGATIVE_INFINITY);
        }
    }

    /** Covers a slot from a height down to another. */
    void cover(int slot, double top, double bottom) {
        int at = slot - first;
        reach(at + 1);
        upper[at] = Math.min(upper[at], top);
        lower[at] = Math.max(lower[at], bottom);
    }

    /** How far another part must be let down to lie wholly below this one; −∞ if they share no slot. */
    double clearance(Skyline other) {
        double down = Double.NEGATIVE_INFINITY;
        int shift = other.first - first;
        for (int i = 0; i < other.upper.length; i++) {
            int at = i + shift;
            if (at >= 0 && at < lower.length) {
                down = Math.max(down, lower[at] - other.upper[i]);
            }
        }
        return down;
    }

    /** Takes another part in, let down so far. */
    void join(Skyline other, double down) {
        reach(other.first - first + other.upper.length);
        for (int i = 0; i < other.upper.length; i++) {
            int at = i + other.first - first;
            upper[at] = Math.min(upper[at], other.upper[i] + down);
            lower[at] = Math.max(lower[at], other.lower[i] + down);
        }
    }

    double top() {
        return Arrays.stream(upper).min().orElse(0);
    }

    double bottom() {
        return Arrays.stream(lower).max().orElse(0);
    }

    /** One past the last slot covered. */
    int end() {
        return first + upper.length;
    }
}
