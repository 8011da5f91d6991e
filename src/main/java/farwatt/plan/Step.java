package farwatt.plan;

import java.util.Map;

/** One change that a scenario makes to what it stands on. */
public sealed interface Step {
    /**
     * Sets a cell or a value.
     *
     * @param path {@code trunk.gauge}, {@code 'cam 1'.draw}, or a bare name of a value or of the plan
     * @param to what is put there
     * @param rest keys of the file that are not known, with their JSON text
     */
    record Set(String path, Cell to, Map<String, String> rest) implements Step {
        public Set(String path, Cell to) {
            this(path, to, Map.of());
        }
    }

    /**
     * Adds a row.
     *
     * @param table key of the table
     * @param rest keys of the file that are not known, with their JSON text
     */
    record Add(String table, Row row, Map<String, String> rest) implements Step {
        public Add(String table, Row row) {
            this(table, row, Map.of());
        }
    }

    /**
     * Drops a row, and with a node the runs that touch it.
     *
     * @param rest keys of the file that are not known, with their JSON text
     */
    record Drop(String id, Map<String, String> rest) implements Step {
        public Drop(String id) {
            this(id, Map.of());
        }
    }

    /** Something that is none of the above; kept and written back. */
    record Unread(String json) implements Step {}
}
