package farwatt.study;

import farwatt.engine.Trials;
import farwatt.engine.Value;
import farwatt.language.Type;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;

/**
 * The farthest value along a span for which a condition holds, found to a millionth of the span, for gauges and counts
 * to the next whole one. The span is looked at in 64 steps first, so that a condition that comes and goes is seen.
 */
public final class Limit {
    private static final int STEPS = 64;
    private static final double MILLIONTH = 1e-6;
    private static final int MOST_LISTED = 10_000;
    private static final Set<String> COUNTS = Set.of("ports", "port", "joints", "others", "priority");

    private final Trials trials;
    private final Vary vary;
    private final Effort effort;
    private final double from;
    private final double to;
    private final TreeMap<Double, Value> tried = new TreeMap<>();

    private Limit(Ground ground, Vary vary, String holds, double from, double to, Effort effort) {
        this.vary = vary;
        this.effort = effort;
        this.from = from;
        this.to = to;
        trials = Trials.of(ground.plan(), ground.corner(), List.of(vary.knob()), List.of(holds));
    }

    /**
     * Looks for the limit.
     *
     * @param vary one number with a span, from the side where the condition should hold
     * @param holds a condition
     * @throws Refusal if the values are no span or the condition cannot be understood
     * @throws CancellationException if that was asked for
     */
    public static Limited find(Ground ground, Vary vary, String holds, Effort effort) throws Refusal {
        ground.condition(holds);
        if (!(vary.values() instanceof Values.Span span) || span.from() == span.to()) {
            throw Refusal.of(
                    StudyCode.NO_SPAN, vary.heading().name(), vary.heading().name());
        }
        return new Limit(ground, vary, holds, span.from(), span.to(), effort).find(span, holds);
    }

    private Limited find(Values.Span span, String holds) {
        double[] grid = span.steps().filter(s -> s.length <= MOST_LISTED).orElseGet(this::grid);
        Effort.Meter meter = effort.meter(grid.length);
        int last = -1;
        int turns = 0;
        boolean before = false;
        for (int i = 0; i < grid.length; i++) {
            boolean now = holds(grid[i]);
            turns += i > 0 && now != before ? 1 : 0;
            before = now;
            last = now ? i : last;
            meter.done(i + 1);
        }
        boolean first = holds(grid[0]);
        boolean monotonic = turns == 0 || (turns == 1 && first);
        Optional<Double> farthest = Optional.empty();
        Optional<Double> beyond = last < 0 ? Optional.of(grid[0]) : Optional.empty();
        if (last >= 0) {
            farthest = Optional.of(grid[last]);
        }
        if (last >= 0 && last + 1 < grid.length) {
            double[] edge = span.steps().isPresent() && span.steps().get() == grid
                    ? new double[] {grid[last], grid[last + 1]}
                    : edge(grid[last], grid[last + 1]);
            farthest = Optional.of(edge[0]);
            beyond = Optional.of(edge[1]);
        }
        return new Limited(vary.heading(), farthest, beyond, monotonic, points(holds));
    }

    private boolean isWhole() {
        return vary.heading().type() == Type.Plain.GAUGE
                || COUNTS.contains(vary.knob().name());
    }

    private double[] grid() {
        int steps = STEPS;
        if (isWhole()) {
            double low = Math.ceil(Math.min(from, to));
            double high = Math.floor(Math.max(from, to));
            int whole = (int) Math.max(0, Math.min(high - low, MOST_LISTED));
            if (high - low <= MOST_LISTED) {
                double[] all = new double[whole + 1];
                for (int i = 0; i <= whole; i++) {
                    all[i] = from < to ? low + i : high - i;
                }
                return all;
            }
        }
        double[] all = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            double at = from + (to - from) * i / steps;
            all[i] = isWhole() ? Math.rint(at) : at;
        }
        all[steps] = to;
        return all;
    }

    /** Halves between a value that holds and one that does not. */
    private double[] edge(double holds, double fails) {
        double good = holds;
        double bad = fails;
        double near = isWhole() ? 1 : MILLIONTH * Math.abs(to - from);
        while (Math.abs(bad - good) > near) {
            double middle = isWhole() ? Math.floor((good + bad) / 2) : (good + bad) / 2;
            if (middle == good || middle == bad) {
                break;
            }
            if (holds(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return new double[] {good, bad};
    }

    /** A condition without a value does not hold. */
    private boolean holds(double inside) {
        if (effort.cancel().asked()) {
            throw new CancellationException(Messages.text(StudyCode.CANCELLED));
        }
        Value known = tried.get(inside);
        if (known == null) {
            trials.put(0, inside);
            trials.work();
            known = trials.value(0);
            tried.put(inside, known);
        }
        return known.isPresent() && known.inside() == 1;
    }

    private Points points(String holds) {
        Heading condition = new Heading(holds.strip(), Type.Plain.YES_NO, farwatt.quantity.Unit.ONE);
        Points points = new Points(List.of(vary.heading(), condition), tried.size());
        var ordered = from < to ? tried : tried.descendingMap();
        ordered.forEach((inside, value) ->
                points.add(MadePoint.of(points.columns(), new double[] {inside, value.inside()})
                        .because(1, value)));
        return points;
    }
}
