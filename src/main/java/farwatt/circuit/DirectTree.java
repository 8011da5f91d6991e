package farwatt.circuit;

/**
 * The runs and nodes under one direct switch whose run starts at fixed volts, down to and including the loads and
 * regulated switches: they all share one electrical tree of constant-power draws.
 *
 * <p>A monotone Newton: each draw P/v and each drop I·R(I) is convex, so their tangents ask for too little, and the
 * solution of the straightened tree lies above every true one. Started where nothing drops, volts fall from step to
 * step towards the largest solution. A pivot or a voltage that is no longer positive proves that there is none. The
 * straightened tree is solved exactly in one way up (each subtree as amps = a + g·volts) and one way down.
 *
 * <p>A scratch object of one {@link Solver}. Currents and volts of the members live in the state's amps and voltsFar.
 */
final class DirectTree {

    private static final double ROUNDING = 0x1p-50;

    /** Below this relative change, a change that does not shrink any more is rounding at work. */
    private static final double SMALL = 1e-9;

    private static final int NO_RUN = -1;
    private static final int TOO_MANY = 100_000;

    private final Wire wire = new Wire();
    private final int[] member;
    private final double[] subtreeAmps;
    private final double[] subtreeSlope;
    private final double[] lineAmps;
    private final double[] lineSlope;
    private final double[] drop;
    private final double[] dropSlope;
    private int members;
    private double change;

    DirectTree(int capacity) {
        member = new int[capacity];
        subtreeAmps = new double[capacity];
        subtreeSlope = new double[capacity];
        lineAmps = new double[capacity];
        lineSlope = new double[capacity];
        drop = new double[capacity];
        dropSlope = new double[capacity];
    }

    /** How many nodes the tree gathered last has. */
    int members() {
        return members;
    }

    /** The node at a place of the tree gathered last, parents first. */
    int member(int place) {
        return member[place];
    }

    /** Takes over the tree under a direct switch. */
    void gather(FlatNetwork in, int head) {
        members = 0;
        int node = head;
        while (node < in.end[head]) {
            member[members++] = node;
            node = in.kind[node] == FlatNetwork.REGULATED ? in.end[node] : node + 1;
        }
    }

    /** Sets the start where nothing drops; answers the run at which the volts are gone already, or -1. */
    int start(FlatNetwork in, FlatState out, double source) {
        for (int k = 0; k < members; k++) {
            int i = member[k];
            double volts = k == 0 ? source : passedOn(in, out, in.parent[i]);
            if (!(volts > 0)) {
                return i;
            }
            out.voltsFar[i] = volts;
            out.amps[i] = watts(in, out, i) / volts;
        }
        for (int k = members - 1; k > 0; k--) {
            int i = member[k];
            out.amps[in.parent[i]] += out.amps[i];
        }
        return NO_RUN;
    }

    /**
     * Solves the tree gathered, from what amps and voltsFar hold: volts not below, amps not above the solution.
     *
     * @param source the fixed volts above the first run
     * @param rest kelvins by the bundles' other runs, for each run; ignored without heat
     * @param heated whether the network's runs warm themselves and each other
     * @return the run at which it is proven that there is no solution, or -1
     */
    int solve(FlatNetwork in, FlatState out, double source, double[] rest, boolean heated) {
        double before = Double.POSITIVE_INFINITY;
        for (int turn = 0; turn < TOO_MANY; turn++) {
            int failed = fold(in, out, rest, heated);
            if (failed == NO_RUN) {
                failed = spread(in, out, source);
            }
            if (failed != NO_RUN) {
                return failed;
            }
            if (change <= ROUNDING || (change <= SMALL && change >= before)) {
                return NO_RUN;
            }
            before = change;
        }
        throw new IllegalStateException("the tree under row " + member[0] + " did not settle");
    }

    /** The way up: every subtree as a straight line amps = a + g·(volts before its run). */
    private int fold(FlatNetwork in, FlatState out, double[] rest, boolean heated) {
        for (int k = 0; k < members; k++) {
            subtreeAmps[member[k]] = 0;
            subtreeSlope[member[k]] = 0;
        }
        for (int k = members - 1; k >= 0; k--) {
            int i = member[k];
            if (heated) {
                wire.load(in, i, rest[i]);
            } else {
                wire.loadUnheated(in, i);
            }
            double amps = out.amps[i];
            if (!wire.bears(amps)) {
                return i;
            }
            drop[i] = amps * wire.ohms(amps);
            dropSlope[i] = wire.dropSlope(amps);
            double pull = watts(in, out, i) / out.voltsFar[i];
            double slope = subtreeSlope[i] - pull / out.voltsFar[i];
            double pivot = 1 + slope * dropSlope[i];
            if (!(pivot > 0)) {
                return i;
            }
            double atNothing = 2 * pull + subtreeAmps[i];
            lineAmps[i] = (atNothing + slope * (dropSlope[i] * amps - drop[i])) / pivot;
            lineSlope[i] = slope / pivot;
            if (k > 0) {
                int parent = in.parent[i];
                subtreeAmps[parent] += lineAmps[i] - lineSlope[i] * in.throughDrop[parent];
                subtreeSlope[parent] += lineSlope[i];
            }
        }
        return NO_RUN;
    }

    /** The way down: the straightened tree's volts and amps. */
    private int spread(FlatNetwork in, FlatState out, double source) {
        change = 0;
        for (int k = 0; k < members; k++) {
            int i = member[k];
            double near = k == 0 ? source : passedOn(in, out, in.parent[i]);
            double amps = lineAmps[i] + lineSlope[i] * near;
            double volts = near - drop[i] - dropSlope[i] * (amps - out.amps[i]);
            if (!(volts > 0) || !(near > 0)) {
                return i;
            }
            change = Math.max(change, Math.abs(out.voltsFar[i] - volts) / volts);
            out.voltsFar[i] = volts;
            out.amps[i] = amps;
        }
        return NO_RUN;
    }

    private static double passedOn(FlatNetwork in, FlatState out, int node) {
        return out.voltsFar[node] - in.throughDrop[node];
    }

    /** Watts that a member takes for itself at its input, whatever its volts. */
    private static double watts(FlatNetwork in, FlatState out, int i) {
        return in.kind[i] == FlatNetwork.REGULATED ? out.nodeReceived[i] : in.draw[i];
    }
}
