package farwatt.review;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Predicate;

/**
 * Attempts of one kind at one place, each going further than the one before; only the first that mends is offered.
 *
 * @param what effort, place and kind: the same for the rungs of one ladder
 * @param count of rungs, at least one
 * @param rung by number from 0
 */
record Ladder(String what, int count, IntFunction<Attempt> rung, Climb climb) {
    /** How the first rung that mends is found. */
    enum Climb {
        /** One after the other. */
        STEP,
        /** By halving: what mends is mended further up as well. */
        HALVE
    }

    static Ladder of(String what, List<Attempt> rungs) {
        return new Ladder(what, rungs.size(), rungs::get, Climb.STEP);
    }

    /** The first rung that mends; empty where none does. */
    Optional<Attempt> first(Predicate<Attempt> mends) {
        if (climb == Climb.STEP) {
            for (int i = 0; i < count; i++) {
                if (mends.test(rung.apply(i))) {
                    return Optional.of(rung.apply(i));
                }
            }
            return Optional.empty();
        }
        if (!mends.test(rung.apply(count - 1))) {
            return Optional.empty();
        }
        int low = 0;
        int high = count - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (mends.test(rung.apply(middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return Optional.of(rung.apply(high));
    }

    /** The rung that goes furthest. */
    Attempt last() {
        return rung.apply(count - 1);
    }
}
