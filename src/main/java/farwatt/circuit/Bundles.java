package farwatt.circuit;

import java.util.Arrays;

/**
 * The kelvins that the runs of one bundle give each other.
 *
 * <p>Each run takes its thermal resistance times the heat per metre of the bundle's other runs. Starting from none, the
 * kelvins only rise from turn to turn: more warmth, more ohms, more amps, more heat. So they end at the smallest
 * balance, and a run that fails on the way fails at the balance too.
 *
 * <p>A scratch object of one {@link Solver}.
 */
final class Bundles {

    /** Kelvins (over 1 + the most that any run is given) by which the balance may still be off. */
    private static final double BALANCED = 1e-12;

    /** Below this many kelvins, a change that does not shrink any more is rounding at work. */
    private static final double SMALL = 1e-9;

    /** Kelvins by the bundle's other runs, for each run. */
    final double[] rest;

    private final double[] heat;
    private final int[] runs;
    private boolean coupled;
    private double before;
    private double change;
    private double most;

    Bundles(int capacity) {
        rest = new double[capacity];
        heat = new double[capacity];
        runs = new int[capacity];
    }

    /** Takes over a network. */
    void count(FlatNetwork in) {
        coupled = false;
        Arrays.fill(runs, 0, in.count, 0);
        for (int i = 0; i < in.count; i++) {
            int bundle = in.bundle[i];
            if (bundle >= 0) {
                runs[bundle]++;
                coupled |= runs[bundle] > 1;
            }
        }
    }

    /** Whether any two runs warm each other. */
    boolean coupled() {
        return coupled;
    }

    /** No run gives anything to another. */
    void cool(FlatNetwork in) {
        Arrays.fill(rest, 0, in.count, 0);
        before = Double.POSITIVE_INFINITY;
        change = Double.POSITIVE_INFINITY;
    }

    /** Shares the heat of the runs as solved; runs of failed trees give and take none. */
    void share(FlatNetwork in, FlatState out) {
        Arrays.fill(heat, 0, in.count, 0);
        for (int i = 0; i < in.count; i++) {
            if (takesPart(in, out, i)) {
                heat[in.bundle[i]] += wattsPerMetre(in, out, i);
            }
        }
        before = change;
        change = 0;
        most = 0;
        for (int i = 0; i < in.count; i++) {
            if (takesPart(in, out, i)) {
                double kelvins = in.rth[i] * Math.max(0, heat[in.bundle[i]] - wattsPerMetre(in, out, i));
                change = Math.max(change, Math.abs(kelvins - rest[i]));
                most = Math.max(most, kelvins);
                rest[i] = kelvins;
            }
        }
    }

    /** Whether the last turn changed nothing that counts. */
    boolean balanced() {
        if (change >= before) {
            return change <= SMALL;
        }
        // what is still to come, were the changes to go on shrinking at this rate
        double toCome = change * change / (before - change);
        return Math.max(change, toCome) <= BALANCED * (1 + most);
    }

    private boolean takesPart(FlatNetwork in, FlatState out, int i) {
        int bundle = in.bundle[i];
        return bundle >= 0 && runs[bundle] > 1 && out.status[i] == FlatState.OK;
    }

    private static double wattsPerMetre(FlatNetwork in, FlatState out, int i) {
        double amps = out.amps[i];
        double warmed = 1 + in.alpha[i] * (out.temp[i] - Wire.REFERENCE);
        return amps * amps * in.cable[i] * warmed * in.perMetre[i];
    }
}
