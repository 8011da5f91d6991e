package farwatt.study;

import java.util.List;
import java.util.Optional;

/** What a varied cell is to take on. */
public sealed interface Values {
    /** Values one by one. */
    record Listed(List<Setting> settings) implements Values {
        public Listed {
            settings = List.copyOf(settings);
        }
    }

    /**
     * From one value to another.
     *
     * @param from inside
     * @param to inside, may lie below
     * @param steps all values in order if a step was named, both ends included where the step meets them
     */
    record Span(double from, double to, Optional<double[]> steps) implements Values {}

    /**
     * Around a value by chance.
     *
     * @param width inside: half the width of a uniform spread, the standard deviation of a normal one
     */
    record Band(Law law, double centre, double width) implements Values {}

    /** How chance spreads. */
    enum Law {
        /** Everything within the width alike. */
        UNIFORM,
        /** By the bell curve. */
        NORMAL
    }
}
