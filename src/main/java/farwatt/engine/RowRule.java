package farwatt.engine;

/** Works out one value from others: a default, or an answer beside the circuit. */
@FunctionalInterface
interface RowRule {
    /** The value for the row at a place of its table. */
    double at(int place);
}
