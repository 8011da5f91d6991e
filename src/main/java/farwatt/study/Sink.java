package farwatt.study;

import java.io.IOException;

/** Takes points one after the other, so that a long study need not be kept whole. */
@FunctionalInterface
public interface Sink {
    /**
     * Takes one point; the object is used again for the next.
     *
     * @throws IOException if it cannot be written on
     */
    void take(Point point) throws IOException;
}
