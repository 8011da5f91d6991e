package farwatt.study;

import farwatt.engine.Trials;
import java.util.List;

/**
 * Values by chance, each from the seed, the number of its point and the number of its cell alone: whatever thread comes
 * to a point finds the same.
 */
final class Chance implements Plot {
    private static final int BLOCK = 1024;
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;
    private static final double UNIT = 0x1p-53;

    private final List<Vary> over;
    private final long runs;
    private final long seed;

    Chance(List<Vary> over, long runs, long seed) {
        this.over = over;
        this.runs = runs;
        this.seed = seed;
    }

    @Override
    public long size() {
        return runs;
    }

    @Override
    public long blockEnd(long from) {
        return Math.min(runs, from + BLOCK);
    }

    @Override
    public void walk(long from, int count, Trials trials, Visit visit) {
        for (int offset = 0; offset < count; offset++) {
            for (int k = 0; k < over.size(); k++) {
                double inside = inside(from + offset, k);
                if (Double.isNaN(inside)) {
                    trials.put(k, drawn(from + offset, k).cell());
                } else {
                    trials.put(k, inside);
                }
            }
            visit.at(offset);
        }
    }

    @Override
    public double inside(long point, int knob) {
        Values values = over.get(knob).values();
        if (values instanceof Values.Listed) {
            return drawn(point, knob).inside();
        }
        if (values instanceof Values.Span span) {
            double share = uniform(point, knob, 0);
            return span.steps()
                    .map(steps -> steps[(int) (share * steps.length)])
                    .orElse(span.from() + share * (span.to() - span.from()));
        }
        Values.Band band = (Values.Band) values;
        double off = band.law() == Values.Law.UNIFORM ? 2 * uniform(point, knob, 0) - 1 : normal(point, knob);
        return band.centre() + band.width() * off;
    }

    private Setting drawn(long point, int knob) {
        List<Setting> settings = ((Values.Listed) over.get(knob).values()).settings();
        return settings.get((int) (uniform(point, knob, 0) * settings.size()));
    }

    @Override
    public String text(long point, int knob) {
        double inside = inside(point, knob);
        return Double.isNaN(inside)
                ? drawn(point, knob).cell().text()
                : over.get(knob).heading().text(inside);
    }

    /** From the bell curve with a deviation of 1 (Box and Muller 1958); the same on every machine. */
    private double normal(long point, int knob) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform(point, knob, 0)));
        return radius * StrictMath.cos(2 * Math.PI * uniform(point, knob, 1));
    }

    /** From 0 up to, not including, 1: a counter turned round until every bit depends on every other (splitmix). */
    private double uniform(long point, int knob, int turn) {
        long mixed = mix(mix(mix(seed + GOLDEN) + point * GOLDEN) + (2L * knob + turn) * GOLDEN);
        return (mixed >>> 11) * UNIT;
    }

    private static long mix(long from) {
        long z = (from ^ (from >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }
}
