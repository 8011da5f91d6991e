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
        /** The same, each of another row, so that two of them can be made together. */
        EACH,
        /** By halving: what mends is mended further up as well. */
        HALVE
    }

    static Ladder of(String what, List<Attempt> rungs) {
        return new Ladder(what, rungs.size(), rungs::get, Climb.STEP);
    }

    /**
     * The first rung that mends; empty where none does.
     *
     * @param may false only for what does not mend, and quicker to ask
     */
    Optional<Attempt> first(Predicate<Attempt> may, Predicate<Attempt> mends) {
        if (climb != Climb.HALVE) {
            for (int i = 0; i < count; i++) {
                Attempt attempt = rung.apply(i);
                if (may.test(attempt) && mends.test(attempt)) {
                    return Optional.of(attempt);
                }
            }
            return Optional.empty();
        }
        int low = halved(may, 0);
        if (low < count && !mends.test(rung.apply(low))) {
            low = halved(mends, low + 1);
        }
        return low < count ? Optional.of(rung.apply(low)) : Optional.empty();
    }

    /** The first from a rung on for which something holds, the number of rungs where it does not hold for the last. */
    private int halved(Predicate<Attempt> holds, int from) {
        if (from >= count || !holds.test(last())) {
            return count;
        }
        int low = from;
        int high = count - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (holds.test(rung.apply(middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }

    /** The rung that goes furthest. */
    Attempt last() {
        return rung.apply(count - 1);
    }
}
