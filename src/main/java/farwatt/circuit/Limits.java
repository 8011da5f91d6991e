package farwatt.circuit;

/**
 * What each source and switch of a solved tree can hand out at most, from the top down.
 *
 * <p>A run brings at most min(W_port/V, wire limit, V/(2·R), (V − floor)/R) amps, each at least 0, with R at the
 * temperature that this current makes while the bundle's other runs stay as solved. V/(2·R) is the current at the peak
 * of V·I − I²·R. A current that would heat the wire past its hottest temperature counts as beyond the cable too.
 */
final class Limits {

    private final Wire wire = new Wire();

    /** The limit that set the last current. */
    private byte currentBound;

    /** Fills the limits of the tree under a source. */
    void fill(FlatNetwork in, FlatState out, double[] rest, int root) {
        set(out, root, in.budget[root], FlatState.BUDGET);
        for (int i = root + 1; i < in.end[root]; i++) {
            if (in.kind[i] != FlatNetwork.LOAD) {
                wire.load(in, i, rest[i]);
                limit(in, out, i);
            }
        }
    }

    private void limit(FlatNetwork in, FlatState out, int i) {
        double volts = out.voltsNear[i];
        double amps = most(in, out, i, volts);
        double brings = wire.bare() ? volts * amps : amps * (volts - amps * wire.ohms(amps));
        double right = in.right[i];
        byte bound = Tolerance.fits(right, brings) ? FlatState.RIGHT : currentBound;
        double beyondOwn = (Math.min(brings, right) - in.draw[i]) * share(in, out, i);
        double budget = in.budget[i];
        if (Tolerance.fits(budget, beyondOwn) && !(bound <= FlatState.PORT && Tolerance.same(budget, beyondOwn))) {
            bound = FlatState.BUDGET;
        }
        out.mostAmps[i] = amps;
        out.receivable[i] = brings;
        set(out, i, Math.min(budget, beyondOwn), bound);
    }

    private static void set(FlatState out, int i, double available, byte bound) {
        out.available[i] = Math.max(0, available);
        out.boundBy[i] = available == Double.POSITIVE_INFINITY ? FlatState.NONE : bound;
        out.reserve[i] = out.available[i] - out.nodeSent[i];
    }

    /** Watts at the ports for each watt at the input. */
    private static double share(FlatNetwork in, FlatState out, int i) {
        return in.kind[i] == FlatNetwork.REGULATED
                ? in.efficiency[i]
                : (out.voltsFar[i] - in.throughDrop[i]) / out.voltsFar[i];
    }

    private double most(FlatNetwork in, FlatState out, int i, double volts) {
        int parent = in.parent[i];
        double left = Math.max(0, out.available[parent] - (out.nodeSent[parent] - out.sent[i]));
        double port = Math.min(in.portWatts[i], left) / volts;
        double wires = in.wireAmps[i];
        double amps = Math.min(port, wires);
        currentBound = Tolerance.fits(port, wires) ? FlatState.PORT : FlatState.WIRE;
        if (wire.bare()) {
            return amps;
        }
        double hottest = wire.hottestAmps();
        double spare = Math.max(0, volts - in.floor[i]);
        double drop = Math.min(volts / 2, spare);
        double capped = Math.min(amps, hottest);
        if (capped <= 0 || (capped < Double.POSITIVE_INFINITY && capped * wire.ohms(capped) <= drop)) {
            if (!Tolerance.fits(amps, hottest)) {
                currentBound = FlatState.CABLE;
            }
            return Math.max(0, capped);
        }
        double cable = wire.ampsForDrop(drop, capped);
        if (!Tolerance.same(cable, amps)) {
            currentBound = Tolerance.fits(volts / 2, spare) ? FlatState.CABLE : FlatState.FLOOR;
        }
        return cable;
    }
}
