package farwatt.engine;

/** The inside values of one column by place in its table. */
@FunctionalInterface
public interface Figures {
    /** The value, a NaN where there is none. */
    double at(int place);
}
