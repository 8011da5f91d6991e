package farwatt.study;

import farwatt.engine.Trials;
import farwatt.engine.Value;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What came of some points that follow each other. Filled by one thread, then read by one. */
final class Block implements Point {
    private static final double NONE = Double.NaN;

    private final Plot plot;
    private final int knobs;
    private final List<Heading> reads;
    private final double[] values;
    private final Map<Integer, String> words = new HashMap<>();
    private final Map<Integer, String> why = new HashMap<>();
    final long from;
    final int count;
    private int at;

    Block(Plot plot, int knobs, List<Heading> reads, long from, int count) {
        this.plot = plot;
        this.knobs = knobs;
        this.reads = reads;
        this.from = from;
        this.count = count;
        values = new double[count * reads.size()];
    }

    /** Works the points out. */
    void fill(Trials trials, Runnable beforeEach) {
        plot.walk(from, count, trials, offset -> {
            beforeEach.run();
            trials.work();
            int cell = offset * reads.size();
            for (int r = 0; r < reads.size(); r++) {
                double inside = trials.inside(r);
                values[cell + r] = inside;
                if (Double.isNaN(inside) || reads.get(r).isText()) {
                    keep(cell + r, trials.value(r));
                }
            }
        });
        trials.tidy();
    }

    private void keep(int cell, Value value) {
        values[cell] = NONE;
        value.fault().ifPresentOrElse(fault -> why.put(cell, fault.text()), () -> words.put(cell, value.words()));
    }

    /** Points at one of them. */
    Point at(int offset) {
        at = offset;
        return this;
    }

    @Override
    public long number() {
        return from + at;
    }

    @Override
    public double inside(int column) {
        return column < knobs ? plot.inside(from + at, column) : values[cell(column)];
    }

    @Override
    public String text(int column) {
        if (column < knobs) {
            return plot.text(from + at, column);
        }
        String word = words.get(cell(column));
        return word != null ? word : reads.get(column - knobs).text(values[cell(column)]);
    }

    @Override
    public Optional<String> why(int column) {
        return column < knobs ? Optional.empty() : Optional.ofNullable(why.get(cell(column)));
    }

    private int cell(int column) {
        return at * reads.size() + column - knobs;
    }
}
