package farwatt.language;

/** A column of values, as the host holds them. */
@FunctionalInterface
public interface Column {
    /** The value of a row, or the host's fault (a NaN that carries its origin). */
    double at(int row);
}
