package farwatt.engine;

import farwatt.circuit.FlatNetwork;
import farwatt.circuit.FlatState;
import farwatt.circuit.Grants;
import farwatt.circuit.Solver;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The circuit as one vertex: solves connected sets of trees, each from the same cold start whether alone or among all,
 * and fills the columns of answers for the corner looked at.
 */
final class Solving extends Vertex {
    private final Layout layout;
    private final Topology topology;
    private final Site site;
    private final Flattener flattener;
    private final GrantOrder order;
    private final AnswerWriter writer;
    private final Air air;
    private final List<Dep> deps;
    private final FlatNetwork net;
    private final FlatState state;
    private final Grants grants;
    private final double[] declared;
    private final Solver solver = new Solver();
    private final Marks due = new Marks();
    private @Nullable FlatNetwork atMost;
    private @Nullable FlatState mostState;
    /** By row of a node, for the component looked at last. */
    private double @Nullable [] sentAtMost;

    private final AnswerCorner corner;

    Solving(
            Layout layout,
            Columns columns,
            Topology topology,
            Site site,
            Flattener flattener,
            GrantOrder order,
            AnswerWriter writer,
            Air air,
            List<Dep> deps,
            AnswerCorner corner) {
        this.layout = layout;
        this.topology = topology;
        this.site = site;
        this.flattener = flattener;
        this.order = order;
        this.writer = writer;
        this.air = air;
        this.deps = deps;
        this.corner = corner;
        int room = 1;
        for (int[] trees : site.components) {
            int nodes = 0;
            for (int tree : trees) {
                nodes += topology.trees[tree + 1] - topology.trees[tree];
            }
            room = Math.max(room, nodes);
        }
        net = new FlatNetwork(room);
        state = new FlatState(room);
        grants = new Grants(room);
        declared = new double[room];
        for (Col col : writer.columns()) {
            col.maker = this;
        }
    }

    @Override
    List<Dep> deps() {
        return deps;
    }

    @Override
    List<Col> outs() {
        return writer.columns();
    }

    @Override
    void reads(int row, CellReads.Visitor visitor) {
        deps.forEach(dep -> CellReads.cells(Dep.all(dep.col()), row, visitor));
    }

    @Override
    void all() {
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES, Table.RUNS, Table.DEVICES)) {
            for (int row = layout.base(table); row < layout.end(table); row++) {
                if (site.componentOfRow[row] < 0) {
                    writer.none(row, topology.outside[row]);
                }
            }
        }
        for (int[] trees : site.components) {
            solve(trees);
        }
    }

    @Override
    void some() {
        due.clear();
        for (Dep dep : deps) {
            if (!dep.col().changed.isEmpty() && touch(dep)) {
                for (int[] trees : site.components) {
                    solve(trees);
                }
                return;
            }
        }
        for (int k = 0; k < due.count(); k++) {
            solve(site.components[due.at(k)]);
        }
    }

    /** Marks the components that what changed may concern; true if that may be any. */
    private boolean touch(Dep dep) {
        if (dep.wide()) {
            return true;
        }
        Table table = dep.col().table;
        Marks changed = dep.col().changed;
        if (table == Table.ZONES) {
            touchZones(changed);
            return false;
        }
        for (int k = 0; k < changed.count(); k++) {
            int row = changed.at(k);
            if (table == Table.BUNDLES) {
                for (int run : site.members[row - dep.col().base]) {
                    mark(run);
                }
            } else {
                mark(row);
            }
        }
        return false;
    }

    private void mark(int row) {
        if (site.concerns[row] >= 0) {
            due.add(site.concerns[row]);
        }
    }

    private void touchZones(Marks zones) {
        for (int at = 0; at < topology.order.length; at++) {
            int node = topology.order[at];
            int run = topology.feedRun[node];
            boolean touched = zones.has(air.zoneCell(node)) || (run >= 0 && zones.has(air.zoneCell(run)));
            if (touched) {
                mark(node);
            }
        }
    }

    private void solve(int[] trees) {
        flattener.fill(trees, corner.now(), net);
        boolean declares = order.declares(net, flattener.node);
        if (declares && corner.now() != Corner.MOST) {
            declareMost(trees);
            // not every row that can be solved here can be there
            flattener.fill(trees, corner.now(), net);
        }
        solver.solve(net, state);
        if (declares) {
            declare();
        }
        order.grant(net, state, flattener.node, declared, grants);
        writer.write(net, state, flattener.node, grants, flattener.worstShare());
        for (int tree : trees) {
            for (int at = topology.trees[tree]; at < topology.trees[tree + 1]; at++) {
                int node = topology.order[at];
                if (flattener.cut[node] != 0) {
                    writer.none(node, flattener.cut[node]);
                    if (topology.feedRun[node] >= 0) {
                        writer.none(topology.feedRun[node], flattener.cut[node]);
                    }
                }
            }
        }
    }

    /** What is declared is what would be sent with everything at its most and the air as it is now. */
    private void declareMost(int[] trees) {
        if (atMost == null || mostState == null || sentAtMost == null) {
            atMost = new FlatNetwork(net.capacity());
            mostState = new FlatState(net.capacity());
            sentAtMost = new double[layout.rows()];
        }
        for (int i = 0; i < net.count; i++) {
            sentAtMost[flattener.node[i]] = Double.NaN;
        }
        flattener.fill(trees, Corner.MOST, atMost);
        solver.solve(atMost, mostState);
        for (int i = 0; i < atMost.count; i++) {
            sentAtMost[flattener.node[i]] = mostState.sent[i];
        }
    }

    private void declare() {
        double[] most = corner.now() == Corner.MOST ? null : sentAtMost;
        for (int i = 0; i < net.count; i++) {
            double sent = most == null ? state.sent[i] : most[flattener.node[i]];
            declared[i] = Double.isNaN(sent) ? Double.POSITIVE_INFINITY : sent;
        }
    }

    /** The columns of the plan that the circuit reads; {@code inside} ones are added to them. */
    static List<Dep> reads(Columns columns, Inside inside, Practice practice) {
        List<Dep> all = new ArrayList<>();
        here(
                all,
                columns,
                Table.SOURCES,
                "volts port_limit budget guard derate_from derate_rate grants_by grant_factor");
        here(
                all,
                columns,
                Table.SWITCHES,
                "mode volts port_limit budget own_draw efficiency through_drop volts_floor uplink_right guard"
                        + " derate_from derate_rate grants_by grant_factor priority");
        here(all, columns, Table.RUNS, "port port_limit amps_limit pairs cable_diameter");
        here(all, columns, Table.DEVICES, "draw draw_typical draw_start volts_floor priority");
        here(all, columns, Table.ZONES, "ambient hottest coldest sun setting insulation");
        here(all, columns, Table.BUNDLES, "others others_amps others_gauge others_diameter");
        for (Col col :
                List.of(inside.granted, inside.cable, inside.cord, inside.fixed, inside.perMetre, inside.alpha)) {
            all.add(Dep.here(col));
        }
        all.add(Dep.all(columns.need(Table.PLAN, "heat_margin")));
        all.add(Dep.all(practice.column()));
        return all;
    }

    private static void here(List<Dep> all, Columns columns, Table table, String names) {
        for (String name : names.split(" ", -1)) {
            all.add(Dep.here(columns.need(table, name)));
        }
    }
}
