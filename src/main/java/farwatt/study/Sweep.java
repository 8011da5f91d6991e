package farwatt.study;

import farwatt.engine.Knob;
import farwatt.engine.Trials;
import farwatt.report.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Every combination of values in some cells, with what expressions then give. The last cell changes first. */
public final class Sweep {
    /** More points than this go to a sink only. */
    public static final int MOST_KEPT = 2_000_000;

    private final Ground ground;
    private final List<Vary> over;
    private final List<String> reads;
    private final List<Heading> readings;
    private final Grid grid;

    private Sweep(Ground ground, List<Vary> over, List<String> reads, List<Heading> readings) {
        this.ground = ground;
        this.over = List.copyOf(over);
        this.reads = List.copyOf(reads);
        this.readings = readings;
        grid = new Grid(this.over);
    }

    /**
     * Makes a sweep ready.
     *
     * @throws Refusal if nothing is varied or read, a cell is varied twice, a span has no steps, or an expression
     *     cannot be understood
     */
    public static Sweep of(Ground ground, List<Vary> over, List<String> reads) throws Refusal {
        Checks.each(over, reads);
        for (Vary vary : over) {
            boolean steps = vary.values() instanceof Values.Listed
                    || (vary.values() instanceof Values.Span span
                            && span.steps().isPresent());
            if (!steps) {
                throw Refusal.of(
                        StudyCode.NO_STEP, vary.heading().name(), vary.heading().name() + " = 1 .. 10");
            }
        }
        try {
            return new Sweep(ground, over, reads, ground.headings(reads));
        } catch (ArithmeticException e) {
            throw Refusal.of(StudyCode.TOO_MANY_POINTS, "So many", Long.MAX_VALUE);
        }
    }

    /** The varied cells, then what is read. */
    public List<Heading> columns() {
        List<Heading> all = new ArrayList<>();
        over.forEach(vary -> all.add(vary.heading()));
        all.addAll(readings);
        return all;
    }

    /** How many columns are varied cells. */
    public int varied() {
        return over.size();
    }

    public long size() {
        return grid.size();
    }

    /**
     * Hands every point on in order.
     *
     * @throws java.util.concurrent.CancellationException if that was asked for
     */
    public void run(Effort effort, Sink sink) throws IOException {
        List<Knob> knobs = over.stream().map(Vary::knob).toList();
        new Crew(grid, over.size(), readings, () -> Trials.of(ground.plan(), ground.corner(), knobs, reads), effort)
                .run(sink);
    }

    /**
     * Keeps every point.
     *
     * @throws Refusal if there are more than {@link #MOST_KEPT}
     */
    public Points points(Effort effort) throws Refusal {
        if (size() > MOST_KEPT) {
            throw Refusal.of(StudyCode.TOO_MANY_POINTS, size(), MOST_KEPT);
        }
        Points points = new Points(columns(), (int) size());
        try {
            run(effort, points::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return points;
    }

    /** What every study with columns asks for. */
    static final class Checks {
        private Checks() {}

        static void each(List<Vary> over, List<String> reads) throws Refusal {
            if (over.isEmpty()) {
                throw Refusal.of(StudyCode.NOTHING_VARIED);
            }
            if (reads.isEmpty()) {
                throw Refusal.of(StudyCode.NOTHING_READ);
            }
            Set<Knob> seen = new HashSet<>();
            for (Vary vary : over) {
                if (!seen.add(vary.knob())) {
                    throw Refusal.of(StudyCode.TWICE, vary.heading().name());
                }
            }
        }
    }
}
