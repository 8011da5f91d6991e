package farwatt.language;

/** An expression ready to be worked out. Immutable; allocates nothing; safe for any thread with a frame of its own. */
@FunctionalInterface
public interface Formula {
    /** The value at the frame's row, or the first fault met (a NaN), handed on untouched. */
    double value(Frame frame);
}
