package farwatt.engine;

import farwatt.circuit.FlatNetwork;
import farwatt.plan.Table;
import farwatt.standard.PowerClass;
import java.util.Arrays;

/**
 * Turns connected trees of the plan into the circuit's arrays: ids to dense numbers, cells to SI. A node whose own
 * cells or whose run's cells have no value is left out with all below it, and the reason kept.
 */
final class Flattener {
    private static final int EXTENDED = 1;
    private static final int DIRECT = 1;

    private final Topology topology;
    private final Layout layout;
    private final Faults faults;
    private final Inside inside;
    private final Air air;
    private final BundleShapes shapes;
    private final int[] bundleOf;
    private final NodeCells sources;
    private final NodeCells switches;
    private final Col mode;
    private final Col ownDraw;
    private final Col efficiency;
    private final Col throughDrop;
    private final Col floor;
    private final Col right;
    private final Col portLimit;
    private final Col ampsLimit;
    private final Col pairs;
    private final Col[] draws;
    private final int[] denseBundle;
    private final int[] flatAt;
    private final Practice practice;
    private final int copperAlpha;
    private final int unbalance;
    private final Col devicePriority;
    private final Col switchPriority;
    private final Col port;

    /** By row of a node: the fault that keeps it out of the circuit in the last fill, 0 if none. */
    final double[] cut;

    private double firstFault;

    Flattener(
            Layout layout,
            Columns columns,
            Topology topology,
            Inside inside,
            Faults faults,
            Practice practice,
            Air air,
            BundleShapes shapes,
            int[] bundleOf) {
        this.layout = layout;
        this.topology = topology;
        this.inside = inside;
        this.faults = faults;
        this.practice = practice;
        copperAlpha = practice.place("copper_alpha");
        unbalance = practice.place("pair_unbalance");
        this.air = air;
        this.shapes = shapes;
        this.bundleOf = bundleOf;
        sources = new NodeCells(columns, Table.SOURCES);
        switches = new NodeCells(columns, Table.SWITCHES);
        mode = switches.column("mode");
        ownDraw = switches.column("own_draw");
        efficiency = switches.column("efficiency");
        throughDrop = switches.column("through_drop");
        floor = switches.column("volts_floor");
        right = switches.column("uplink_right");
        portLimit = columns.need(Table.RUNS, "port_limit");
        ampsLimit = columns.need(Table.RUNS, "amps_limit");
        pairs = columns.need(Table.RUNS, "pairs");
        port = columns.need(Table.RUNS, "port");
        devicePriority = columns.need(Table.DEVICES, "priority");
        switchPriority = switches.column("priority");
        draws = new Col[Corner.values().length];
        for (Corner corner : Corner.values()) {
            draws[corner.ordinal()] = columns.need(Table.DEVICES, corner.drawName());
        }
        denseBundle = new int[layout.size(Table.BUNDLES)];
        cut = new double[layout.rows()];
        flatAt = new int[topology.order.length];
    }

    /**
     * Fills a network with the trees of a component; its rows are in the order of the trees.
     *
     * @param node by flat row: takes the node's row
     */
    void fill(int[] trees, Corner corner, FlatNetwork net, int[] node) {
        int bundles = 0;
        Arrays.fill(denseBundle, -1);
        int n = 0;
        for (int tree : trees) {
            int at = topology.trees[tree];
            int end = topology.trees[tree + 1];
            while (at < end) {
                int row = topology.order[at];
                int run = topology.feedRun[row];
                int bundle = run < 0 ? -1 : bundleOf[run];
                if (bundle >= 0 && denseBundle[bundle - bundleBase()] < 0) {
                    shapes.measure(bundle - bundleBase());
                    denseBundle[bundle - bundleBase()] = bundles++;
                }
                if (put(net, n, row, at, corner)) {
                    cut[row] = 0;
                    node[n] = row;
                    flatAt[at++] = n++;
                } else {
                    int after = topology.endAt[at];
                    leaveOut(at, after);
                    at = after;
                }
            }
        }
        net.count = n;
        for (int i = n - 1; i >= 0; i--) {
            net.end[i] = i + 1;
        }
        for (int i = n - 1; i >= 0; i--) {
            int parent = net.parent[i];
            if (parent >= 0) {
                net.end[parent] = Math.max(net.end[parent], net.end[i]);
            }
        }
    }

    /** The row of the bundle that a run names, −1 for none. */
    int bundleOf(int run) {
        return bundleOf[run];
    }

    private int bundleBase() {
        return layout.base(Table.BUNDLES);
    }

    private void leaveOut(int from, int to) {
        int head = topology.order[from];
        cut[head] = firstFault;
        Fault why = faults.of(firstFault);
        for (int at = from + 1; at < to; at++) {
            int row = topology.order[at];
            cut[row] = faults.raise(
                    Fault.Kind.NOT_FED, why.origin(), EngineCode.HANGS_ON, layout.id(row), layout.id(head), why.text());
        }
    }

    /** Adds a bundle up again after its cells or its cables' changed; to be done before {@link #refresh}. */
    void measure(int bundle) {
        shapes.measure(bundle - bundleBase());
    }

    /** Writes one node and its run; false if a cell it needs has no value. */
    private boolean put(FlatNetwork net, int n, int row, int at, Corner corner) {
        int up = topology.parentAt[at];
        net.parent[n] = up < 0 ? -1 : flatAt[up];
        return refresh(net, n, row, at, corner);
    }

    /**
     * Writes one node and its run again where only their cells may have changed, not who hangs on what; false if a cell
     * they need has no value.
     *
     * @param at the node's place in the trees
     */
    boolean refresh(FlatNetwork net, int n, int row, int at, Corner corner) {
        firstFault = 0;
        int up = topology.parentAt[at];
        net.floor[n] = 0;
        net.budget[n] = Double.POSITIVE_INFINITY;
        net.right[n] = Double.POSITIVE_INFINITY;
        if (layout.isIn(row, Table.SOURCES)) {
            source(net, n, row, corner);
        } else if (layout.isIn(row, Table.SWITCHES)) {
            edgeSwitch(net, n, row, corner);
        } else {
            net.kind[n] = FlatNetwork.LOAD;
            Col draw = draws[corner.ordinal()];
            net.draw[n] = ok(draw.v[row - draw.base]);
            ok(devicePriority.v[row - devicePriority.base]);
        }
        if (up >= 0) {
            run(net, n, topology.feedRun[row], topology.order[up], corner);
        }
        return firstFault == 0;
    }

    private double ok(double value) {
        if (Double.isNaN(value) && firstFault == 0) {
            firstFault = value;
        }
        return value;
    }

    /** A limit that was left empty limits nothing; one that has no value for another reason is a fault. */
    private double limit(Col col, int place) {
        return faults.isBlank(col, place) ? Double.POSITIVE_INFINITY : ok(col.v[place]);
    }

    private void source(FlatNetwork net, int n, int row, Corner corner) {
        int place = row - sources.base;
        net.kind[n] = FlatNetwork.SOURCE;
        // the row may have been a run's in an earlier fill
        net.bundle[n] = -1;
        net.volts[n] = ok(sources.volts.v[place]);
        net.draw[n] = 0;
        net.budget[n] = budget(sources, place, row, corner);
    }

    private void edgeSwitch(FlatNetwork net, int n, int row, Corner corner) {
        int place = row - switches.base;
        boolean direct = ok(mode.v[place]) == DIRECT;
        net.kind[n] = direct ? FlatNetwork.DIRECT : FlatNetwork.REGULATED;
        net.volts[n] = direct ? 0 : ok(switches.volts.v[place]);
        net.draw[n] = ok(ownDraw.v[place]);
        net.efficiency[n] = direct ? 1 : ok(efficiency.v[place]);
        net.throughDrop[n] = direct ? ok(throughDrop.v[place]) : 0;
        net.floor[n] = ok(floor.v[place]);
        net.budget[n] = budget(switches, place, row, corner);
        double granted = inside.granted.v[topology.feedRun[row] - inside.granted.base];
        boolean extended = ok(right.v[place]) == EXTENDED;
        ok(switchPriority.v[place]);
        net.right[n] = extended || granted == ClassRules.NO_CLASSES
                ? Double.POSITIVE_INFINITY
                : granted == ClassRules.NONE_FITS ? 0 : deviceWatts(ok(granted));
    }

    private static double deviceWatts(double granted) {
        return Double.isNaN(granted) ? granted : PowerClass.of((int) granted).deviceWatts();
    }

    /** Budget less guard and what heat takes from it; how it is granted must be known as well. */
    private double budget(NodeCells cells, int place, int row, Corner corner) {
        ok(cells.grantsBy.v[place]);
        ok(cells.grantFactor.v[place]);
        double budget = limit(cells.budget, place);
        double guard = ok(cells.guard.v[place]);
        double most = budget == Double.POSITIVE_INFINITY ? budget : budget * (1 - guard);
        double from = limit(cells.derateFrom, place);
        double over = Math.max(0, ok(air.ofNode(row, corner)) - from);
        double left = Math.max(0, 1 - ok(cells.derateRate.v[place]) * over);
        return over == 0 || most == Double.POSITIVE_INFINITY ? most : most * left;
    }

    private void run(FlatNetwork net, int n, int run, int parent, Corner corner) {
        int place = run - pairs.base;
        int zone = air.zoneOfRun(run, corner);
        int bundle = bundleOf[run];
        int bundlePlace = bundle < 0 ? -1 : bundle - bundleBase();
        net.cable[n] = ok(inside.cable.v[place]);
        net.cord[n] = ok(inside.cord.v[place]);
        net.fixed[n] = ok(inside.fixed.v[place]);
        net.alpha[n] = ok(inside.alpha.v[place]);
        net.alphaCord[n] = ok(practice.at(copperAlpha));
        net.alphaOthers[n] = net.alphaCord[n];
        net.ambient[n] = ok(air.ofZone(zone, corner));
        double coldest = 1 + Math.max(net.alpha[n], net.alphaCord[n]) * (net.ambient[n] - 20);
        if (coldest <= 0) {
            String id = layout.id(run);
            ok(faults.raise(Fault.Kind.UNREADABLE, topology.place(run), EngineCode.TOO_COLD, id));
        }
        net.bundle[n] = bundlePlace < 0 ? -1 : denseBundle[bundlePlace];
        if (bundlePlace >= 0 && shapes.faultOf(bundlePlace) != 0) {
            ok(shapes.faultOf(bundlePlace));
        }
        double rth = ok(shapes.rth(place, bundlePlace, zone < 0 ? -1 : zone - layout.base(Table.ZONES)));
        net.rth[n] = rth;
        net.perMetre[n] = ok(inside.perMetre.v[place]);
        net.heat[n] = rth * net.cable[n] * net.perMetre[n];
        net.othersRise[n] = rth * shapes.othersWatts(bundlePlace);
        NodeCells cells = layout.isIn(parent, Table.SOURCES) ? sources : switches;
        net.portWatts[n] = Math.min(limit(portLimit, place), limit(cells.portLimit, parent - cells.base));
        double wire = limit(ampsLimit, place);
        boolean four = ok(pairs.v[place]) == 1;
        net.wireAmps[n] = wire / (four ? ok(worstShare()) : 0.5);
        limit(port, place);
    }

    /** Share of the whole current that the worst conductor carries with four pairs. */
    double worstShare() {
        return (1 + practice.at(unbalance)) / 4;
    }
}
