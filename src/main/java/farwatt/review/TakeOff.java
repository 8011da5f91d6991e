package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.NaturalOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What to order for a plan: everything that is in use. Reckoned once; holds no calculation. Safe for any thread.
 *
 * @param lines in the order of {@link Part}, then by kind
 */
public record TakeOff(List<Line> lines) {
    /** Length of cable in a box, m (practice: 1,000 ft). */
    public static final double BOX = 305;

    /** What is ordered. */
    public enum Part {
        CABLE("cable"),
        CORD("cord"),
        CONNECTOR("connector"),
        LABEL("cable label"),
        SURGE("surge protection"),
        GLAND("cable gland"),
        SOURCE("source"),
        SWITCH("edge switch"),
        DEVICE("device");

        private final String word;

        Part(String word) {
            this.word = word;
        }

        /** As people call it. */
        public String word() {
            return word;
        }

        /** True where it is ordered in metres, else in pieces. */
        public boolean isLength() {
            return this == CABLE || this == CORD;
        }
    }

    /**
     * One kind of thing.
     *
     * @param kind what tells it from others of its part, "" where there is only one
     * @param rows ids of the rows it is for, in natural order
     * @param planned metres or pieces
     * @param order the same with slack; pieces have none
     * @param boxes of {@link #BOX} that hold the runs whole; 0 for what comes in no boxes
     * @param unmeasured rows without a length, which count as none
     * @param overlong rows that no box holds, to be cut from a reel; their metres are in planned and order
     * @param cost by the prices filled in, in the plan's currency; empty where a row has none
     */
    public record Line(
            Part part,
            String kind,
            List<String> rows,
            double planned,
            double order,
            int boxes,
            List<String> unmeasured,
            List<String> overlong,
            Optional<Double> cost) {
        public Line {
            rows = List.copyOf(rows);
            unmeasured = List.copyOf(unmeasured);
            overlong = List.copyOf(overlong);
        }
    }

    /**
     * One kind of thing in two plans.
     *
     * @param before with its slack, 0 where the first plan has none
     * @param after the same of the other
     * @param boxesBefore boxes in the first
     * @param boxesAfter boxes in the other
     * @param cost what it costs more (below zero: less); empty where a price is missing
     */
    public record Difference(
            Part part,
            String kind,
            double before,
            double after,
            int boxesBefore,
            int boxesAfter,
            Optional<Double> cost) {}

    private record Key(Part part, String kind) {}

    public TakeOff {
        lines = List.copyOf(lines);
    }

    /** Of a plan, or of one of its scenarios; on the calculation's thread. */
    public static TakeOff of(Calculation calc) {
        return new TakeOff(new Counting(calc).lines());
    }

    /** What all that has a price costs together. */
    public double cost() {
        return lines.stream().mapToDouble(line -> line.cost().orElse(0.0)).sum();
    }

    /** Kinds of which another plan needs more or less. */
    public List<Difference> to(TakeOff other) {
        Map<Key, Line> before = byKind();
        Map<Key, Line> after = other.byKind();
        List<Key> keys = new ArrayList<>(before.keySet());
        after.keySet().stream().filter(key -> !before.containsKey(key)).forEach(keys::add);
        keys.sort(Comparator.comparing(Key::part).thenComparing(Key::kind, NaturalOrder.IDS));
        List<Difference> all = new ArrayList<>();
        for (Key key : keys) {
            Line one = before.getOrDefault(key, none(key));
            Line two = after.getOrDefault(key, none(key));
            if (one.order() != two.order() || one.boxes() != two.boxes()) {
                Optional<Double> cost = one.cost().flatMap(a -> two.cost().map(b -> b - a));
                all.add(new Difference(
                        key.part(), key.kind(), one.order(), two.order(), one.boxes(), two.boxes(), cost));
            }
        }
        return all;
    }

    private static Line none(Key key) {
        return new Line(key.part(), key.kind(), List.of(), 0, 0, 0, List.of(), List.of(), Optional.of(0.0));
    }

    private Map<Key, Line> byKind() {
        Map<Key, Line> all = new LinkedHashMap<>();
        lines.forEach(line -> all.put(new Key(line.part(), line.kind()), line));
        return all;
    }
}
