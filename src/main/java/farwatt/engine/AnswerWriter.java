package farwatt.engine;

import farwatt.circuit.FlatNetwork;
import farwatt.circuit.FlatState;
import farwatt.circuit.Grants;
import farwatt.circuit.Tolerance;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.List;

/** Puts the circuit's arrays into columns by name; statuses become faults that say what happened where. */
final class AnswerWriter {
    private static final Unit WATT = new Units("EUR").need("W");

    private final Layout layout;
    private final Topology topology;
    private final Faults faults;
    private final Texts texts;
    private final Col pairs;
    private final Col[] node;
    private final Col[] edge;
    private final Col[] run;
    private final Col[] device;
    private final Col deviceFloor;

    AnswerWriter(Layout layout, Columns columns, Topology topology, Faults faults, Texts texts) {
        this.layout = layout;
        this.topology = topology;
        this.faults = faults;
        this.texts = texts;
        pairs = columns.need(Table.RUNS, "pairs");
        deviceFloor = columns.need(Table.DEVICES, "volts_floor");
        node = named(columns, Table.SOURCES, "sent available bound_by reserve reserve_share granted");
        edge = named(
                columns,
                Table.SWITCHES,
                "sent available bound_by reserve reserve_share granted volts_in received receivable powered powered_why");
        run = named(
                columns,
                Table.RUNS,
                "loop volts_near volts_far amps amps_per_wire sent received loss drop drop_share wire_temp rise"
                        + " cliff_share");
        device = named(columns, Table.DEVICES, "volts amps watts headroom powered powered_why");
    }

    private static Col[] named(Columns columns, Table table, String names) {
        List<Col> found = new ArrayList<>();
        for (String name : names.split(" ", -1)) {
            found.add(columns.need(table, name));
        }
        return found.toArray(new Col[0]);
    }

    List<Col> columns() {
        List<Col> all = new ArrayList<>();
        for (Col[] some : new Col[][] {node, edge, run, device}) {
            all.addAll(List.of(some));
        }
        return all;
    }

    /** Gives one reason to every answer of a row that is in no circuit. */
    void none(int row, double why) {
        Table table = layout.table(row);
        Col[] cols =
                table == Table.SOURCES ? node : table == Table.SWITCHES ? edge : table == Table.RUNS ? run : device;
        for (Col col : cols) {
            col.put(row - col.base, why);
        }
    }

    /** Writes everything a solved network says. */
    void write(FlatNetwork net, FlatState state, int[] rows, Grants grants, double worstShare) {
        for (int i = 0; i < net.count; i++) {
            int root = i;
            if (state.status[i] != FlatState.OK) {
                while (net.parent[root] >= 0) {
                    root = net.parent[root];
                }
                failed(net, state, rows, root);
                i = net.end[root] - 1;
                continue;
            }
            int row = rows[i];
            switch (net.kind[i]) {
                case FlatNetwork.SOURCE -> feeder(node, i, row, state, grants);
                case FlatNetwork.LOAD -> device(net, i, row, state, grants);
                default -> edge(net, i, row, state, grants);
            }
            if (net.parent[i] >= 0) {
                run(i, topology.feedRun[row], state, worstShare);
            }
        }
    }

    private void failed(FlatNetwork net, FlatState state, int[] rows, int root) {
        int culprit = topology.feedRun[rows[state.culprit[root]]];
        String id = layout.id(culprit);
        Place place = Place.row(Table.RUNS.key(), id);
        double why;
        if (state.status[root] == FlatState.RUNAWAY) {
            why = faults.raise(Fault.Kind.RUNAWAY, place, EngineCode.RUNAWAY, id);
        } else if (Double.isNaN(state.asked[root])) {
            why = faults.raise(Fault.Kind.NO_OPERATING_POINT, place, EngineCode.NO_OPERATING_POINT_TREE, id);
        } else {
            why = faults.raise(beyond(place, id, state.asked[root], state.possible[root]));
        }
        for (int i = root; i < net.end[root]; i++) {
            none(rows[i], why);
            if (net.parent[i] >= 0) {
                none(topology.feedRun[rows[i]], why);
            }
        }
    }

    private static Fault beyond(Place place, String id, double asked, double possible) {
        String[] watts = Show.apart(asked, possible, WATT);
        String over = Show.text(asked - possible, WATT);
        String text = Messages.text(EngineCode.NO_OPERATING_POINT, id, watts[0], watts[1], over);
        return new Fault(Fault.Kind.NO_OPERATING_POINT, place, text, asked, possible);
    }

    private static void put(Col to, int place, double value) {
        to.put(place, Faults.sound(value, to.base + place));
    }

    /** A figure that is unlimited says so instead. */
    private double finite(double value, int row) {
        if (Double.isInfinite(value)) {
            return faults.lack(Lack.NO_LIMIT, row);
        }
        return value;
    }

    private void feeder(Col[] to, int i, int row, FlatState state, Grants grants) {
        int place = row - to[0].base;
        double available = finite(state.available[i], row);
        double reserve = finite(left(state.reserve[i], state.available[i]), row);
        put(to[0], place, state.nodeSent[i]);
        put(to[1], place, available);
        put(to[2], place, Double.isNaN(available) ? available : state.boundBy[i] - FlatState.RIGHT);
        put(to[3], place, Double.isNaN(available) ? available : reserve);
        put(to[4], place, share(reserve, available, row));
        put(to[5], place, grants.granted[i]);
    }

    /** What is over or left by rounding alone is nothing: a need for a share of zero holds, and no one reads −0. */
    private static double left(double reserve, double available) {
        return Math.abs(reserve) <= Tolerance.REL * available && available < Double.POSITIVE_INFINITY ? 0 : reserve;
    }

    private double share(double reserve, double available, int row) {
        if (Double.isNaN(available)) {
            return available;
        }
        if (available == 0) {
            return faults.lack(Lack.NOTHING_AVAILABLE, row);
        }
        return reserve / available;
    }

    private void edge(FlatNetwork net, int i, int row, FlatState state, Grants grants) {
        feeder(edge, i, row, state, grants);
        int place = row - edge[0].base;
        put(edge[6], place, state.voltsFar[i]);
        put(edge[7], place, state.nodeReceived[i]);
        put(edge[8], place, finite(state.receivable[i], row));
        powered(edge[9], edge[10], net, i, row, grants);
    }

    private void device(FlatNetwork net, int i, int row, FlatState state, Grants grants) {
        int place = row - device[0].base;
        double floor = deviceFloor.v[place];
        put(device[0], place, state.voltsFar[i]);
        put(device[1], place, state.amps[i]);
        put(device[2], place, state.nodeReceived[i]);
        put(device[3], place, Double.isNaN(floor) ? floor : state.voltsFar[i] - floor);
        powered(device[4], device[5], net, i, row, grants);
    }

    private void powered(Col yes, Col why, FlatNetwork net, int i, int row, Grants grants) {
        int place = row - yes.base;
        byte outcome = grants.outcome[i];
        put(yes, place, outcome == Grants.POWERED ? 1 : 0);
        if (outcome == Grants.POWERED) {
            put(why, place, 0);
            return;
        }
        put(why, place, texts.number(dark(outcome, net, i, row, grants)));
    }

    private String dark(byte outcome, FlatNetwork net, int i, int row, Grants grants) {
        String feeder = layout.id(topology.from[topology.feedRun[row]]);
        if (outcome != Grants.REFUSED) {
            return Messages.text(
                    outcome == Grants.NO_CLASS ? EngineCode.DARK_NO_CLASS : EngineCode.DARK_PARENT, feeder);
        }
        double need = grants.need[i];
        if (Double.isInfinite(need)) {
            return Messages.text(EngineCode.DARK_UNDECLARED, feeder, layout.id(row));
        }
        String[] watts = Show.apart(need, grants.left[net.parent[i]], WATT);
        return Messages.text(EngineCode.DARK_REFUSED, feeder, watts[0], watts[1]);
    }

    private void run(int i, int row, FlatState state, double worstShare) {
        int place = row - run[0].base;
        double drop = state.voltsNear[i] - state.voltsFar[i];
        boolean four = pairs.v[place] == 1;
        put(run[0], place, state.ohms[i]);
        put(run[1], place, state.voltsNear[i]);
        put(run[2], place, state.voltsFar[i]);
        put(run[3], place, state.amps[i]);
        put(run[4], place, state.amps[i] * (four ? worstShare : 0.5));
        put(run[5], place, state.sent[i]);
        put(run[6], place, state.received[i]);
        put(run[7], place, state.loss[i]);
        put(run[8], place, drop);
        put(run[9], place, drop / state.voltsNear[i]);
        put(run[10], place, state.temp[i]);
        put(run[11], place, state.rise[i]);
        double cliff = state.cliffShare[i];
        put(run[12], place, !Double.isNaN(cliff) ? cliff : faults.lack(Lack.NO_CLIFF, row));
    }
}
