package farwatt.engine;

import static farwatt.plan.Table.DEVICES;
import static farwatt.plan.Table.SOURCES;
import static farwatt.plan.Table.SWITCHES;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/** Answers that follow from who feeds whom: classes granted, hops, ports used, traffic. */
final class TreeRules {
    private final Layout layout;
    private final Columns columns;
    private final Topology topology;
    private final Faults faults;

    TreeRules(Layout layout, Columns columns, Topology topology, Faults faults) {
        this.layout = layout;
        this.columns = columns;
        this.topology = topology;
        this.faults = faults;
    }

    List<Vertex> vertices(Inside inside, Relations relations, Practice practice) {
        List<Vertex> all = new ArrayList<>();
        for (Table fed : List.of(SWITCHES, DEVICES)) {
            Col col = columns.need(fed, "class_granted");
            all.add(new RuleVertex(
                    col, p -> granted(col.base + p, inside), List.of(Dep.over(inside.granted, relations.run))));
        }
        Col hop = columns.need(SWITCHES, "hop");
        int[] hops = hops();
        all.add(new RuleVertex(
                hop,
                p -> topology.outside[hop.base + p] != 0 ? topology.outside[hop.base + p] : hops[hop.base + p],
                List.of()));
        for (Table node : List.of(SOURCES, SWITCHES)) {
            Col used = columns.need(node, "ports_used");
            all.add(new RuleVertex(used, p -> portsUsed(used.base + p), List.of()));
        }
        all.add(new Traffic(practice));
        return all;
    }

    private double granted(int row, Inside inside) {
        int run = topology.feedRun[row];
        if (topology.outside[row] != 0) {
            return topology.outside[row];
        }
        double granted = inside.granted.v[run - inside.granted.base];
        if (Double.isNaN(granted) || granted >= 0) {
            return granted;
        }
        return faults.lack(granted == ClassRules.NO_CLASSES ? Lack.PASSIVE : Lack.PORT_TOO_SMALL, row);
    }

    /** By row of a switch: how many switches lie on the way from its source, itself included. */
    private int[] hops() {
        int[] hops = new int[layout.rows()];
        for (int at = 0; at < topology.order.length; at++) {
            int row = topology.order[at];
            int above = topology.parentAt[at] < 0 ? 0 : hops[topology.order[topology.parentAt[at]]];
            hops[row] = layout.isIn(row, SWITCHES) ? above + 1 : above;
        }
        return hops;
    }

    private double portsUsed(int node) {
        int at = topology.at[node];
        if (at < 0) {
            return topology.outside[node];
        }
        int used = 0;
        for (int child = at + 1; child < topology.endAt[at]; child = topology.endAt[child]) {
            used++;
        }
        return used;
    }

    /** Data of everything below each node, summed from the leaves up. */
    private final class Traffic extends Vertex {
        private final Col bitrate = columns.need(DEVICES, "bitrate");
        private final Col[] out = {columns.need(SOURCES, "traffic"), columns.need(SWITCHES, "traffic")};
        private final Practice practice;
        private final double[] sum = new double[topology.order.length];

        Traffic(Practice practice) {
            this.practice = practice;
            for (Col col : out) {
                col.maker = this;
            }
        }

        @Override
        List<Dep> deps() {
            return List.of(Dep.here(bitrate), Dep.all(practice.column()));
        }

        @Override
        List<Col> outs() {
            return List.of(out);
        }

        @Override
        void reads(int row, CellReads.Visitor visitor) {
            deps().forEach(dep -> CellReads.cells(Dep.all(dep.col()), row, visitor));
        }

        @Override
        void some() {
            if (!bitrate.changed.isEmpty() || !practice.column().changed.isEmpty()) {
                all();
            }
        }

        @Override
        void all() {
            double headroom = practice.value("data_headroom");
            java.util.Arrays.fill(sum, 0);
            for (int at = topology.order.length - 1; at >= 0; at--) {
                int row = topology.order[at];
                if (layout.isIn(row, DEVICES)) {
                    sum[at] = bitrate.v[row - bitrate.base];
                }
                int up = topology.parentAt[at];
                if (up >= 0) {
                    sum[up] = Double.isNaN(sum[up]) ? sum[up] : Double.isNaN(sum[at]) ? sum[at] : sum[up] + sum[at];
                }
            }
            for (Col col : out) {
                for (int place = 0; place < col.v.length; place++) {
                    int at = topology.at[col.base + place];
                    double total = at < 0 ? topology.outside[col.base + place] : sum[at];
                    double traffic = Double.isNaN(total) ? total : total * headroom;
                    col.put(place, Faults.sound(traffic, col.base + place));
                }
            }
        }
    }
}
