package farwatt.engine;

import farwatt.circuit.FlatState;
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
    private final FlatSet own;
    private final Solver solver = new Solver();
    private final Marks due = new Marks();
    private @Nullable FlatSet most;
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
        own = new FlatSet(room);
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
            solve(trees, own);
        }
    }

    @Override
    void some() {
        due.clear();
        for (Dep dep : deps) {
            if (!dep.col().changed.isEmpty() && touch(dep)) {
                for (int[] trees : site.components) {
                    solve(trees, own);
                }
                return;
            }
        }
        for (int k = 0; k < due.count(); k++) {
            solve(site.components[due.at(k)], own);
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
        if (site.componentOfRow[row] >= 0) {
            due.add(site.componentOfRow[row]);
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

    /** Room for one component. */
    FlatSet room(int component) {
        return new FlatSet(nodes(site.components[component]));
    }

    private int nodes(int[] trees) {
        int nodes = 0;
        for (int tree : trees) {
            nodes += topology.trees[tree + 1] - topology.trees[tree];
        }
        return nodes;
    }

    /** Solves a component as a whole and writes every answer of it. */
    void solve(int component, FlatSet set) {
        solve(site.components[component], set);
    }

    private void solve(int[] trees, FlatSet set) {
        flattener.fill(trees, corner.now(), set.net, set.node);
        boolean declares = order.declares(set.net, set.node);
        if (declares && corner.now() != Corner.MOST) {
            declareMost(trees, set);
            // not every row that can be solved here can be there
            flattener.fill(trees, corner.now(), set.net, set.node);
        }
        solver.solve(set.net, set.state);
        set.plain = !declares && !solver.coupled() && stands(set, nodes(trees));
        if (declares) {
            declare(set);
        }
        order.grant(set.net, set.state, set.node, set.declared, set.grants);
        writer.write(set.net, set.state, set.node, set.grants, flattener.worstShare());
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

    private static boolean stands(FlatSet set, int nodes) {
        for (int i = 0; i < set.net.count; i++) {
            if (set.state.status[i] != FlatState.OK) {
                return false;
            }
        }
        return set.net.count == nodes;
    }

    /** Solves some rows of a plain component anew; false if it must be solved as a whole. */
    boolean again(FlatSet set, int[] rows, int[] roots) {
        return solver.again(set.net, set.state, rows, roots);
    }

    /** Hands out power anew. */
    void grant(FlatSet set) {
        order.grant(set.net, set.state, set.node, set.declared, set.grants);
    }

    /** What is declared is what would be sent with everything at its most and the air as it is now. */
    private void declareMost(int[] trees, FlatSet set) {
        if (most == null || sentAtMost == null) {
            most = new FlatSet(own.net.capacity());
            sentAtMost = new double[layout.rows()];
        }
        for (int i = 0; i < set.net.count; i++) {
            sentAtMost[set.node[i]] = Double.NaN;
        }
        flattener.fill(trees, Corner.MOST, most.net, most.node);
        solver.solve(most.net, most.state);
        for (int i = 0; i < most.net.count; i++) {
            sentAtMost[most.node[i]] = most.state.sent[i];
        }
    }

    private void declare(FlatSet set) {
        double[] byRow = corner.now() == Corner.MOST ? null : sentAtMost;
        for (int i = 0; i < set.net.count; i++) {
            double sent = byRow == null ? set.state.sent[i] : byRow[set.node[i]];
            set.declared[i] = Double.isNaN(sent) ? Double.POSITIVE_INFINITY : sent;
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
