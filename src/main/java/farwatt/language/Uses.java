package farwatt.language;

import java.util.ArrayList;
import java.util.List;

/**
 * All that a formula may look at. What it looks at inside a gather stands with that gather.
 *
 * @param reads columns read
 * @param ways rows it goes to, with or without reading a column there, those on the way to others as well
 * @param gathers gathers worked out within it, not those that were lifted out
 */
public record Uses(List<Read> reads, List<Way> ways, List<GatherPlan> gathers) {
    public Uses {
        reads = List.copyOf(reads);
        ways = List.copyOf(ways);
        gathers = List.copyOf(gathers);
    }

    /** True if any part, inner gathers included, looks at the row whose cell it is from inside a gather. */
    boolean needsSelf() {
        return ways.stream().anyMatch(way -> way.start() == Way.Start.SELF)
                || gathers.stream().anyMatch(gather -> gather.uses().needsSelf());
    }

    /** Collects uses while an expression is checked. */
    static final class Builder {
        private final List<Read> reads = new ArrayList<>();
        private final List<Way> ways = new ArrayList<>();
        private final List<GatherPlan> gathers = new ArrayList<>();

        void read(Read read) {
            reads.add(read);
        }

        void way(Way way) {
            ways.add(way);
        }

        void gather(GatherPlan gather) {
            gathers.add(gather);
        }

        Uses build() {
            return new Uses(reads, ways, gathers);
        }
    }
}
