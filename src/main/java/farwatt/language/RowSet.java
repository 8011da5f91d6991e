package farwatt.language;

/** The rows of a table that a gather goes over, in a fixed order. The arrays are never modified by the reader. */
public interface RowSet {
    /** All rows in use. */
    int[] rows();

    /** The rows directly on a node. */
    int[] on(int node);

    /** The rows anywhere below a node. */
    int[] under(int node);
}
