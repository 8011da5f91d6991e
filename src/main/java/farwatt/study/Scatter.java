package farwatt.study;

import java.util.Arrays;

/**
 * How one expression came out over many runs by chance. Inside values; NaN where there is nothing to tell.
 *
 * @param heading what was read
 * @param runs how many there were
 * @param without how many of them have no value
 * @param mean of those with a value
 * @param deviation their standard deviation
 * @param levels their least, 1 %, 5 %, 25 %, 50 %, 75 %, 95 %, 99 % and greatest, for quantities
 * @param failing share of runs that are no, or have no value
 * @param failingLeast lower end of the share's 95 % interval
 * @param failingMost upper end
 */
public record Scatter(
        Heading heading,
        long runs,
        long without,
        double mean,
        double deviation,
        double[] levels,
        double failing,
        double failingLeast,
        double failingMost) {
    /** The shares that {@link #levels} stand for. */
    public static final double[] SHARES = {0, 0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99, 1};

    /** Two-sided 95 % of the bell curve. */
    private static final double Z = 1.959963984540054;

    /** @param values by run, in order; put into another order here */
    static Scatter of(Heading heading, double[] values) {
        int n = values.length;
        boolean condition = heading.type() == farwatt.language.Type.Plain.YES_NO;
        int without = 0;
        int no = 0;
        double mean = 0;
        double square = 0;
        int with = 0;
        for (double value : values) {
            if (Double.isNaN(value)) {
                without++;
                continue;
            }
            no += condition && value == 0 ? 1 : 0;
            with++;
            double off = value - mean;
            mean += off / with;
            square += off * (value - mean);
        }
        Arrays.sort(values);
        double[] levels = new double[SHARES.length];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = with == 0 ? Double.NaN : level(values, with, SHARES[i]);
        }
        double deviation = with < 2 ? Double.NaN : Math.sqrt(square / (with - 1));
        double share = (double) (no + without) / n;
        double[] ends = interval(no + without, n);
        return new Scatter(
                heading, n, without, with == 0 ? Double.NaN : mean, deviation, levels, share, ends[0], ends[1]);
    }

    /** Between two neighbours straight; values without a number stand last. */
    private static double level(double[] sorted, int with, double share) {
        double at = share * (with - 1);
        int low = (int) Math.floor(at);
        int high = Math.min(with - 1, low + 1);
        return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
    }

    /** The interval of a share of yes and no (Wilson 1927), 95 %. */
    static double[] interval(long hits, long n) {
        double p = (double) hits / n;
        double z2 = Z * Z / n;
        double middle = (p + z2 / 2) / (1 + z2);
        double half = Z / (1 + z2) * Math.sqrt(p * (1 - p) / n + z2 / (4 * n));
        return new double[] {hits == 0 ? 0 : Math.max(0, middle - half), hits == n ? 1 : Math.min(1, middle + half)};
    }
}
