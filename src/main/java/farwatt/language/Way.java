package farwatt.language;

import java.util.ArrayList;
import java.util.List;

/**
 * How a formula gets to a row.
 *
 * @param start where it sets out
 * @param row the row it sets out from with {@link Start#FIXED}, else −1
 * @param links the relations it follows from there, in order
 */
public record Way(Start start, int row, List<Link> links) {
    /** Where a way sets out. */
    public enum Start {
        /** The row at hand; inside a gather each of its rows. */
        HERE,
        /** The row whose cell it is, also inside a gather. */
        SELF,
        /** One row known by its id. */
        FIXED,
        /** A row that only the calculation tells. */
        ANY
    }

    public Way {
        links = List.copyOf(links);
    }

    static Way from(Start start) {
        return new Way(start, -1, List.of());
    }

    static Way at(int row) {
        return new Way(Start.FIXED, row, List.of());
    }

    Way and(Link link) {
        List<Link> more = new ArrayList<>(links);
        more.add(link);
        return new Way(start, row, more);
    }
}
