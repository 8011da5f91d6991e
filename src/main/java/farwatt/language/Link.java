package farwatt.language;

/** A relation that leads from a row to another one, such as the feeder of a device. */
public interface Link {
    /** The row it leads to; negative where it leads nowhere. */
    int follow(int row);

    /** The host's fault (a NaN that carries its origin) that says why the relation of this row leads nowhere. */
    double why(int row);
}
