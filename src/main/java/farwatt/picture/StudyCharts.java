package farwatt.picture;

import farwatt.engine.Calculation;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effects;
import farwatt.study.Grown;
import farwatt.study.Limited;
import farwatt.study.Points;
import farwatt.study.Scatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Charts of what studies found; those of sweeps are {@link SweepChart}s. */
public final class StudyCharts {
    private static final int MOST_INPUTS = 24;
    private static final List<Double> PERCENTS = List.of(5.0, 50.0, 95.0);
    private static final double SAME = 1e-9;

    private StudyCharts() {}

    /**
     * The line that parts good from bad for what is read: the plan's promised reserve where a reserve's share is read,
     * else none.
     */
    public static OptionalDouble target(Plan plan, String read) {
        if (!read.contains("reserve_share")) {
            return OptionalDouble.empty();
        }
        Value target = Calculation.of(plan).value(Table.PLAN, 0, "reserve_target");
        return target.isPresent() ? OptionalDouble.of(target.inside()) : OptionalDouble.empty();
    }

    /**
     * What a condition compares, over the number of copies; the condition itself where it compares nothing.
     *
     * @param below what it was asked of
     */
    public static Chart of(Grown grown, String copied, String below) {
        Points points = grown.points();
        boolean sides = points.columns().size() >= Grown.READS + 2;
        int shown = sides ? Grown.READS : 1;
        List<Guide> guides = new ArrayList<>();
        Measure up = Measure.of(points.columns().get(shown));
        if (sides) {
            level(points, Grown.READS + 1, up).ifPresent(guides::add);
        }
        if (grown.reached()) {
            guides.add(new Guide(Guide.Way.UPRIGHT, grown.fitted(), Messages.text(PictureCode.FITTED, grown.fitted())));
        }
        String title = up.name() + " with copies of " + copied + " added";
        Measure across = new Measure("copies of " + copied, Unit.ONE);
        return new Curve(new Caption(title, below), across, up, line(points, shown), Curve.Form.STEPS, guides);
    }

    /**
     * What a condition compares, along the span that was looked at; the condition itself where it compares nothing.
     *
     * @param sides the varied cell, then the two sides of the condition
     * @param below what it was asked of
     */
    public static Chart of(Limited limited, Optional<Points> sides, String below) {
        Points points = sides.orElse(limited.points());
        List<Guide> guides = new ArrayList<>();
        Measure up = Measure.of(points.columns().get(1));
        Measure across = Measure.of(limited.heading());
        if (sides.isPresent()) {
            level(points, 2, up).ifPresent(guides::add);
        }
        limited.farthest()
                .ifPresent(at -> guides.add(new Guide(
                        Guide.Way.UPRIGHT,
                        at,
                        Messages.text(PictureCode.HOLDS_TO, limited.heading().text(at)))));
        String title = up.name() + " over " + across.name();
        Curve.Form form = sides.isPresent() ? Curve.Form.LINE : Curve.Form.STEPS;
        List<Point> line = new ArrayList<>(line(points, 1));
        line.sort(Comparator.comparingDouble(Point::x));
        return new Curve(new Caption(title, below), across, up, line, form, guides);
    }

    /** A level guide at the other side of a comparison where that stays the same. */
    private static Optional<Guide> level(Points points, int column, Measure of) {
        double first = points.size() == 0 ? Double.NaN : points.inside(0, column);
        for (int i = 1; i < points.size(); i++) {
            if (!(Math.abs(points.inside(i, column) - first) <= SAME * Math.max(1, Math.abs(first)))) {
                return Optional.empty();
            }
        }
        return Double.isNaN(first)
                ? Optional.empty()
                : Optional.of(new Guide(Guide.Way.LEVEL, first, Messages.text(PictureCode.LIMIT, of.text(first))));
    }

    private static List<Point> line(Points points, int column) {
        List<Point> line = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            line.add(new Point(points.inside(i, 0), points.inside(i, column)));
        }
        return line;
    }

    /**
     * How often each value came up, with lines at some percentiles.
     *
     * @param values of all runs, in any order
     * @throws Refusal if what was read is no quantity
     */
    public static Chart of(Scatter scatter, DoubleStream values, OptionalDouble target, String below) throws Refusal {
        if (!scatter.heading().isNumber()) {
            throw Refusal.of(PictureCode.NO_CHART, scatter.heading().name());
        }
        Caption caption = new Caption("How " + scatter.heading().name() + " spreads", below);
        return Spread.curve(caption, Measure.of(scatter.heading()), values, PERCENTS, target);
    }

    /** What each input does, the strongest first. */
    public static Chart of(Effects effects, String below) {
        List<Sensitivity.Input> inputs = effects.effects().stream()
                .limit(MOST_INPUTS)
                .map(effect -> new Sensitivity.Input(
                        effect.input().name(),
                        effect.input().text(effect.low()),
                        effect.down(),
                        effect.input().text(effect.high()),
                        effect.up()))
                .toList();
        int all = effects.effects().size();
        List<String> notes =
                all > inputs.size() ? List.of(Messages.text(PictureCode.STRONGEST, inputs.size(), all)) : List.of();
        Caption caption = new Caption("What moves " + effects.read().name(), noted(below, notes));
        return new Sensitivity(caption, Measure.of(effects.read()), effects.now(), inputs);
    }

    /** What stands below a title: what was asked of, then what else is to be known. */
    static String noted(String below, List<String> notes) {
        return Stream.concat(Stream.of(below), notes.stream())
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining(" · "));
    }
}
