package farwatt.picture;

import java.util.List;
import java.util.stream.Stream;

/**
 * The ports of a source or switch: from its card a little to the right, and along all runs that leave it.
 *
 * @param id of the node
 * @param stub from the card to the rail
 * @param bar the rail itself
 */
public record Rail(String id, List<Point> stub, List<Point> bar) {
    /** Width of both lines. */
    public static final double WIDTH = 4;

    public Rail {
        stub = List.copyOf(stub);
        bar = List.copyOf(bar);
    }

    /** Where it is. */
    Box reach() {
        return Box.around(Stream.concat(stub.stream(), bar.stream()).toList(), WIDTH);
    }
}
