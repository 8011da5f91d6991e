package farwatt.intake;

/** How a value came out of a cell. */
public enum Source {
    /** As it stood there. */
    TYPED,
    /** An upper bound, taken as the most. */
    BOUND,
    /** The upper end of a range. */
    RANGE,
    /** Said to be approximate. */
    APPROXIMATE,
    /** One of several modes, such as day and night. */
    MODES,
    /** The right of a named class or type. */
    CLASS,
    /** Worked out, such as volts times amps. */
    COMPUTED
}
