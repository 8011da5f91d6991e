package farwatt.plan;

/** One change that a scenario makes to what it stands on. */
public sealed interface Step {
    /**
     * Sets a cell or a value.
     *
     * @param path {@code trunk.gauge}, {@code 'cam 1'.draw}, or a bare name of a value or of the plan
     * @param to what is put there
     */
    record Set(String path, Cell to) implements Step {}

    /**
     * Adds a row.
     *
     * @param table key of the table
     */
    record Add(String table, Row row) implements Step {}

    /** Drops a row, and with a node the runs that touch it. */
    record Drop(String id) implements Step {}

    /** Something that is none of the above; kept and written back. */
    record Unread(String json) implements Step {}
}
