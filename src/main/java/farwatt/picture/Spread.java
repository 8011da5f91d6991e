package farwatt.picture;

import farwatt.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * How often each value came up among many trials, as columns with lines at some percentiles.
 *
 * @param caption what stands above
 * @param of what the values are
 * @param values SI, in any order; those that are no numbers are left out
 * @param percents which percentiles get a line, 0 to 100
 * @param target gets a line too; empty for none
 */
public record Spread(Caption caption, Measure of, List<Double> values, List<Double> percents, OptionalDouble target)
        implements Chart {
    private static final int MOST_COLUMNS = 48;
    private static final Unit PERCENT = new Unit("%", Unit.ONE.dimension(), 1, 100, Unit.Form.PLAIN);

    public Spread {
        values = List.copyOf(values);
        percents = List.copyOf(percents);
    }

    @Override
    public Picture picture(Palette palette) {
        return curve().picture(palette);
    }

    Curve curve() {
        return curve(caption, of, values.stream().mapToDouble(v -> v), percents, target);
    }

    /** The same of values that come one by one, however many. */
    static Curve curve(Caption caption, Measure of, DoubleStream values, List<Double> percents, OptionalDouble target) {
        double[] sorted = values.filter(Double::isFinite).sorted().toArray();
        List<Guide> guides = new ArrayList<>();
        if (sorted.length > 0) {
            for (double percent : percents) {
                double at = percentile(sorted, percent);
                guides.add(new Guide(Guide.Way.UPRIGHT, at, percent(percent) + ": " + of.text(at)));
            }
        }
        target.ifPresent(at -> guides.add(new Guide(Guide.Way.UPRIGHT, at, "target " + of.text(at))));
        Measure share = new Measure("share of trials", PERCENT);
        return new Curve(caption, of, share, columns(sorted), Curve.Form.COLUMNS, guides);
    }

    private static String percent(double percent) {
        return percent == 50 ? "middle" : new Measure("", Unit.ONE).number(percent) + " % lie below";
    }

    /** Between the neighbours, by their distance; the ends are the least and the most. */
    static double percentile(double[] sorted, double percent) {
        double at = Math.max(0, Math.min(100, percent)) / 100 * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (sorted[above] - sorted[below]) * (at - below);
    }

    /** Columns of equal width; one past the last with nothing in it closes them. */
    private static List<Point> columns(double[] sorted) {
        if (sorted.length == 0) {
            return List.of();
        }
        double least = sorted[0];
        double most = sorted[sorted.length - 1];
        if (most == least) {
            double half = Math.max(1e-9, Math.abs(least) * 0.01);
            return List.of(new Point(least - half, 1), new Point(least + half, 0));
        }
        int columns = (int) Math.max(4, Math.min(MOST_COLUMNS, Math.sqrt(sorted.length)));
        double[] counts = new double[columns];
        for (double value : sorted) {
            counts[Math.min(columns - 1, (int) ((value - least) / (most - least) * columns))]++;
        }
        double[] shares = Arrays.stream(counts).map(c -> c / sorted.length).toArray();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= columns; i++) {
            points.add(new Point(least + (most - least) * i / columns, i < columns ? shares[i] : 0));
        }
        return points;
    }
}
