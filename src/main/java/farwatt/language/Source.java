package farwatt.language;

import java.util.Set;

/**
 * A table that a gather may go over.
 *
 * @param set its rows
 * @param kind of its rows
 * @param nodes kinds of rows that may stand after {@code on} and {@code under}; none where rows of this table hang on
 *     nothing
 */
public record Source(RowSet set, String kind, Set<String> nodes) {
    public Source {
        nodes = Set.copyOf(nodes);
    }
}
