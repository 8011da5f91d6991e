package farwatt.circuit;

import java.util.Arrays;

/**
 * Solves one connected set of trees and bundles: power flow, wire temperatures, and what each node can hand out.
 *
 * <p>Regulated switches part a tree into electrical trees of their own; these are solved from the leaves to the source:
 * a run between fixed volts and known watts by itself ({@link Wire}), a tree of direct switches as a whole
 * ({@link DirectTree}). Runs of one bundle warm each other ({@link Bundles}): all trees are solved again until the heat
 * is in balance. A tree that fails on the way carries no current for its neighbours, which start cold again without it.
 *
 * <p>Always from the same cold start: equal inputs give equal bits, whatever was solved before. One solver a thread;
 * a call allocates nothing once its capacity holds the network. Throws {@link IllegalStateException} when a search does
 * not end, which would be a mistake in this room, never of the network.
 */
public final class Solver {

    private static final int TOO_MANY = 1_000_000;
    private static final int NO_RUN = -1;

    private final Wire wire = new Wire();
    private final Limits limits = new Limits();
    private DirectTree directTree = new DirectTree(0);
    private Bundles bundles = new Bundles(0);
    /** Kelvins that runs which do not warm each other give each other. */
    private double[] calm = {};

    /** Makes a solver without room; it grows with the first networks. */
    public Solver() {}

    /**
     * Solves a network.
     *
     * @param in the network, only read
     * @param out room for at least as many rows; rows 0..count-1 are written
     * @throws IllegalArgumentException if the state has fewer rows than the network
     */
    public void solve(FlatNetwork in, FlatState out) {
        prepare(in, out);
        boolean balanced = false;
        while (!balanced) {
            balanced = balance(in, out);
        }
        for (int root = 0; root < in.count; root = in.end[root]) {
            if (out.status[root] == FlatState.OK) {
                limits.fill(in, out, bundles.rest, root);
            } else {
                erase(out, root, in.end[root]);
            }
        }
    }

    /**
     * Solves some rows anew after their inputs changed: to the last bit what {@link #solve} would write, at the cost of
     * these rows only. The last solve of the network into the state must have found that every tree stands, and no two
     * runs may warm each other (see {@link #coupled()}).
     *
     * @param rows every row whose inputs, or whose parent's, changed, with all rows above it, the largest first; which
     *     kinds they are must not have changed
     * @param roots the sources of their trees
     * @return false if something does not stand any more; the network must then be solved as a whole
     */
    public boolean again(FlatNetwork in, FlatState out, int[] rows, int[] roots) {
        if (calm.length < in.capacity()) {
            calm = new double[in.capacity()];
            directTree = new DirectTree(in.capacity());
            bundles = new Bundles(in.capacity());
        }
        for (int i : rows) {
            if (in.parent[i] < 0) {
                source(in, out, i);
            } else if (!row(in, out, 0, i, false, calm)) {
                return false;
            }
        }
        for (int root : roots) {
            limits.fill(in, out, calm, root);
        }
        return true;
    }

    /** Whether two runs of the network solved last warm each other. */
    public boolean coupled() {
        return bundles.coupled();
    }

    private void prepare(FlatNetwork in, FlatState out) {
        int count = in.count;
        if (out.capacity() < count) {
            throw new IllegalArgumentException(count + " rows do not fit a state of " + out.capacity());
        }
        if (bundles.rest.length < in.capacity()) {
            bundles = new Bundles(in.capacity());
            directTree = new DirectTree(in.capacity());
        }
        Arrays.fill(out.status, 0, count, FlatState.OK);
        Arrays.fill(out.boundBy, 0, count, FlatState.NONE);
        Arrays.fill(out.mostAmps, 0, count, Double.NaN);
        Arrays.fill(out.receivable, 0, count, Double.NaN);
        Arrays.fill(out.available, 0, count, Double.NaN);
        Arrays.fill(out.reserve, 0, count, Double.NaN);
        bundles.count(in);
    }

    /** Solves all trees that have not failed, from cold; answers whether none failed on the way to the balance. */
    private boolean balance(FlatNetwork in, FlatState out) {
        bundles.cool(in);
        for (int turn = 0; turn < TOO_MANY; turn++) {
            boolean allStand = true;
            for (int root = 0; root < in.count; root = in.end[root]) {
                if (out.status[root] == FlatState.OK) {
                    allStand &= tree(in, out, root, turn > 0);
                }
            }
            if (!bundles.coupled()) {
                return true;
            }
            if (!allStand) {
                return false;
            }
            bundles.share(in, out);
            if (bundles.balanced()) {
                return true;
            }
        }
        throw new IllegalStateException("the bundles did not settle");
    }

    /** Solves one tree from its leaves to its source; answers whether it stands. */
    private boolean tree(FlatNetwork in, FlatState out, int root, boolean again) {
        for (int i = in.end[root] - 1; i > root; i--) {
            if (!row(in, out, root, i, again, bundles.rest)) {
                return false;
            }
        }
        source(in, out, root);
        return true;
    }

    /** Solves what a row takes and, unless it hangs on a direct switch, the run that feeds it. */
    private boolean row(FlatNetwork in, FlatState out, int root, int i, boolean again, double[] rest) {
        if (in.kind[i] == FlatNetwork.REGULATED) {
            out.nodeSent[i] = sentBelow(in, out, i);
            out.nodeReceived[i] = in.draw[i] + out.nodeSent[i] / in.efficiency[i];
        } else if (in.kind[i] == FlatNetwork.LOAD) {
            out.nodeSent[i] = 0;
            out.nodeReceived[i] = in.draw[i];
        }
        int parent = in.parent[i];
        if (in.kind[parent] == FlatNetwork.DIRECT) {
            return true;
        }
        return in.kind[i] == FlatNetwork.DIRECT
                ? directTree(in, out, root, i, in.volts[parent], again, rest)
                : singleRun(in, out, root, i, in.volts[parent], again, rest);
    }

    private boolean singleRun(
            FlatNetwork in, FlatState out, int root, int i, double volts, boolean again, double[] rest) {
        double watts = out.nodeReceived[i];
        wire.load(in, i, rest[i]);
        double amps = wire.amps(volts, watts, again ? out.amps[i] : 0);
        if (amps >= 0 && settle(in, out, i, volts, amps)) {
            out.cliffShare[i] = 4 * out.ohms[i] * out.received[i] / (volts * volts);
            return true;
        }
        out.asked[root] = watts;
        out.possible[root] = wire.mostWatts(volts);
        wire.loadUnheated(in, i);
        boolean coldStands = wire.amps(volts, watts, 0) >= 0 || !wire.bears(0);
        return fail(in, out, root, i, amps >= 0 || coldStands ? FlatState.RUNAWAY : FlatState.NO_OPERATING_POINT);
    }

    private boolean directTree(
            FlatNetwork in, FlatState out, int root, int head, double volts, boolean again, double[] rest) {
        directTree.gather(in, head);
        int failed = again ? NO_RUN : directTree.start(in, out, volts);
        if (failed == NO_RUN) {
            failed = directTree.solve(in, out, volts, rest, true);
        }
        boolean found = failed == NO_RUN;
        for (int k = 0; k < directTree.members() && failed == NO_RUN; k++) {
            int i = directTree.member(k);
            double near = k == 0 ? volts : out.voltsFar[in.parent[i]] - in.throughDrop[in.parent[i]];
            wire.load(in, i, rest[i]);
            failed = settle(in, out, i, near, out.amps[i]) ? NO_RUN : i;
            out.cliffShare[i] = Double.NaN;
        }
        if (failed != NO_RUN) {
            out.asked[root] = Double.NaN;
            out.possible[root] = Double.NaN;
            byte why = found || standsCold(in, out, volts, rest) ? FlatState.RUNAWAY : FlatState.NO_OPERATING_POINT;
            return fail(in, out, root, failed, why);
        }
        for (int k = directTree.members() - 1; k >= 0; k--) {
            int i = directTree.member(k);
            if (in.kind[i] == FlatNetwork.DIRECT) {
                out.nodeSent[i] = sentBelow(in, out, i);
                out.nodeReceived[i] = out.received[i];
            }
        }
        return true;
    }

    /** Whether the tree of direct switches gathered last stands, or fails by heat alone, without its own heat. */
    private boolean standsCold(FlatNetwork in, FlatState out, double volts, double[] rest) {
        if (directTree.start(in, out, volts) != NO_RUN) {
            return false;
        }
        int failed = directTree.solve(in, out, volts, rest, false);
        if (failed == NO_RUN) {
            return true;
        }
        wire.loadUnheated(in, failed);
        return !wire.bears(0);
    }

    /** Writes the figures of a run whose amps are known; answers whether its wire stays below the hottest allowed. */
    private boolean settle(FlatNetwork in, FlatState out, int i, double near, double amps) {
        double square = amps * amps;
        double feedback = wire.feedback(square);
        double ohms = wire.ohms(square, feedback);
        double celsius = wire.celsius(square, feedback);
        double far = near - amps * ohms;
        out.amps[i] = amps;
        out.voltsNear[i] = near;
        out.voltsFar[i] = far;
        out.ohms[i] = ohms;
        out.temp[i] = celsius;
        out.rise[i] = celsius - in.ambient[i];
        out.loss[i] = square * ohms;
        out.sent[i] = near * amps;
        out.received[i] = far * amps;
        return celsius < Wire.HOTTEST && feedback > 0;
    }

    /** Watts into all runs that leave a node; the rounding of each addition is kept and added at the end (two-sum). */
    private static double sentBelow(FlatNetwork in, FlatState out, int node) {
        double sum = 0;
        double lost = 0;
        for (int child = node + 1; child < in.end[node]; child = in.end[child]) {
            double watts = out.sent[child];
            double next = sum + watts;
            double added = next - sum;
            lost += (sum - (next - added)) + (watts - added);
            sum = next;
        }
        return sum + lost;
    }

    private static void source(FlatNetwork in, FlatState out, int root) {
        eraseRun(out, root);
        out.nodeSent[root] = sentBelow(in, out, root);
        out.nodeReceived[root] = Double.NaN;
        out.culprit[root] = NO_RUN;
        out.asked[root] = Double.NaN;
        out.possible[root] = Double.NaN;
    }

    private static boolean fail(FlatNetwork in, FlatState out, int root, int run, byte why) {
        Arrays.fill(out.status, root, in.end[root], why);
        out.culprit[root] = run;
        return false;
    }

    private static void erase(FlatState out, int from, int to) {
        for (int i = from; i < to; i++) {
            eraseRun(out, i);
            out.nodeSent[i] = Double.NaN;
            out.nodeReceived[i] = Double.NaN;
        }
    }

    private static void eraseRun(FlatState out, int i) {
        out.amps[i] = Double.NaN;
        out.voltsNear[i] = Double.NaN;
        out.voltsFar[i] = Double.NaN;
        out.ohms[i] = Double.NaN;
        out.temp[i] = Double.NaN;
        out.rise[i] = Double.NaN;
        out.loss[i] = Double.NaN;
        out.sent[i] = Double.NaN;
        out.received[i] = Double.NaN;
        out.cliffShare[i] = Double.NaN;
    }
}
