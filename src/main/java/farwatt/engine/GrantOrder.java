package farwatt.engine;

import farwatt.circuit.FlatNetwork;
import farwatt.circuit.FlatState;
import farwatt.circuit.Grants;
import farwatt.plan.Table;
import farwatt.standard.PowerClass;

/**
 * Who asks a node for power in which order, and for how much: by priority, then port, then id; by the class granted,
 * the declared most or what flows.
 */
final class GrantOrder {
    private static final int DECLARED = 1;
    private static final int MEASURED = 2;

    private final Layout layout;
    private final Topology topology;
    private final Inside inside;
    private final NodeCells sources;
    private final NodeCells switches;
    private final Col switchPriority;
    private final Col devicePriority;
    private final Col port;
    private double[] priorities = {};
    private double[] ports = {};

    GrantOrder(Layout layout, Columns columns, Topology topology, Inside inside) {
        this.layout = layout;
        this.topology = topology;
        this.inside = inside;
        sources = new NodeCells(columns, Table.SOURCES);
        switches = new NodeCells(columns, Table.SWITCHES);
        switchPriority = columns.need(Table.SWITCHES, "priority");
        devicePriority = columns.need(Table.DEVICES, "priority");
        port = columns.need(Table.RUNS, "port");
    }

    /** True if some node of the network reserves what is declared. */
    boolean declares(FlatNetwork net, int[] node) {
        for (int i = 0; i < net.count; i++) {
            if (net.kind[i] != FlatNetwork.LOAD && by(node[i]) == DECLARED) {
                return true;
            }
        }
        return false;
    }

    private double by(int row) {
        NodeCells cells = cells(row);
        return cells.grantsBy.v[row - cells.base];
    }

    private NodeCells cells(int row) {
        return layout.isIn(row, Table.SOURCES) ? sources : switches;
    }

    /**
     * Fills and grants.
     *
     * @param declared by flat row: watts sent at the most draw
     */
    void grant(FlatNetwork net, FlatState state, int[] node, double[] declared, Grants grants) {
        int n = net.count;
        if (priorities.length < n) {
            priorities = new double[n];
            ports = new double[n];
        }
        grants.count = n;
        int next = 0;
        for (int i = 0; i < n; i++) {
            grants.first[i] = next;
            grants.available[i] = state.available[i];
            int first = next;
            for (int child = i + 1; child < net.end[i]; child = net.end[child]) {
                grants.need[child] = need(node[i], node[child], state.sent[child], declared[child]);
                rank(child, node[child]);
                next = insert(grants.child, first, next, child);
            }
        }
        grants.first[n] = next;
        grants.need[0] = 0;
        grants.grant();
    }

    private double need(int parent, int child, double sent, double declared) {
        double granted = inside.granted.v[topology.feedRun[child] - inside.granted.base];
        if (granted == ClassRules.NONE_FITS) {
            return Double.NaN;
        }
        double by = by(parent);
        if (by == MEASURED || granted == ClassRules.NO_CLASSES) {
            return sent;
        }
        if (by == DECLARED) {
            return declared;
        }
        NodeCells cells = cells(parent);
        return PowerClass.of((int) granted).portWatts() * cells.grantFactor.v[parent - cells.base];
    }

    private void rank(int flat, int row) {
        Col priority = layout.isIn(row, Table.DEVICES) ? devicePriority : switchPriority;
        priorities[flat] = orLast(priority.v[row - priority.base]);
        ports[flat] = orLast(port.v[topology.feedRun[row] - port.base]);
    }

    private static double orLast(double rank) {
        return Double.isNaN(rank) ? Double.POSITIVE_INFINITY : rank;
    }

    /** Children come in natural order of their ids; each goes behind its equals, so that order stays between them. */
    private int insert(int[] list, int from, int to, int child) {
        int low = from;
        int high = to;
        if (to > from && !before(child, list[to - 1])) {
            low = to;
        }
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (before(child, list[middle])) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        System.arraycopy(list, low, list, low + 1, to - low);
        list[low] = child;
        return to + 1;
    }

    private boolean before(int a, int b) {
        return priorities[a] < priorities[b] || (priorities[a] == priorities[b] && ports[a] < ports[b]);
    }
}
