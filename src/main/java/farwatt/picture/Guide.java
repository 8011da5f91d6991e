package farwatt.picture;

/**
 * A straight line across a chart that marks a value.
 *
 * @param way level for a value of the upright axis, upright for one of the level axis
 * @param at SI
 * @param label what it marks
 */
public record Guide(Way way, double at, String label) {
    /** How a guide runs. */
    public enum Way {
        LEVEL,
        UPRIGHT
    }
}
