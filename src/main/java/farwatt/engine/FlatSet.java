package farwatt.engine;

import farwatt.circuit.FlatNetwork;
import farwatt.circuit.FlatState;
import farwatt.circuit.Grants;

/** The circuit's arrays for one connected set of trees, with the row that stands behind each of theirs. */
final class FlatSet {
    final FlatNetwork net;
    final FlatState state;
    final Grants grants;
    /** By flat row: watts sent with everything at its most, where that is reserved. */
    final double[] declared;
    /** By flat row: the node's row. */
    final int[] node;
    /** True where nothing was left out, everything stands, and no run's answer depends on another tree's. */
    boolean plain;

    FlatSet(int room) {
        net = new FlatNetwork(room);
        state = new FlatState(room);
        grants = new Grants(room);
        declared = new double[room];
        node = new int[room];
    }
}
