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
    private static final int GRANTED = 5;
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

    private static void put(Col to, int row, double value) {
        to.put(row - to.base, Faults.sound(value, row));
    }

    /** A figure that is unlimited says so instead. */
    private double finite(double value, int row) {
        if (Double.isInfinite(value)) {
            return faults.lack(Lack.NO_LIMIT, row);
        }
        return value;
    }

    /** What a group of answers belongs to. */
    enum Group {
        SOURCE,
        SWITCH,
        RUN,
        DEVICE
    }

    /** The columns of a group, in the order in which {@link #figure} numbers them. */
    Col[] columns(Group group) {
        return switch (group) {
            case SOURCE -> node;
            case SWITCH -> edge;
            case RUN -> run;
            case DEVICE -> device;
        };
    }

    /**
     * One answer of a network that stands.
     *
     * @param which its place among the group's columns
     * @param i flat row
     * @param row the node's row, for a run the run's
     */
    double figure(Group group, int which, FlatSet set, int i, int row, double worstShare) {
        double value = switch (group) {
            case SOURCE -> feeder(which, i, row, set.state, set.grants);
            case SWITCH -> edge(which, set.net, i, row, set.state, set.grants);
            case RUN -> run(which, i, row, set.state, worstShare);
            case DEVICE -> device(which, set.net, i, row, set.state, set.grants);
        };
        return Faults.sound(value, row);
    }

    private void feeder(Col[] to, int i, int row, FlatState state, Grants grants) {
        for (int which = 0; which < node.length; which++) {
            put(to[which], row, feeder(which, i, row, state, grants));
        }
    }

    private double feeder(int which, int i, int row, FlatState state, Grants grants) {
        if (which == 0) {
            return state.nodeSent[i];
        }
        if (which == GRANTED) {
            return grants.granted[i];
        }
        double available = finite(state.available[i], row);
        if (which == 1 || Double.isNaN(available)) {
            return available;
        }
        if (which == 2) {
            return state.boundBy[i] - FlatState.RIGHT;
        }
        double reserve = finite(left(state.reserve[i], state.available[i]), row);
        return which == 3 ? reserve : share(reserve, available, row);
    }

    /** What is over or left by rounding alone is nothing: a need for a share of zero holds, and no one reads −0. */
    private static double left(double reserve, double available) {
        return Math.abs(reserve) <= Tolerance.REL * available && available < Double.POSITIVE_INFINITY ? 0 : reserve;
    }

    private double share(double reserve, double available, int row) {
        return available == 0 ? faults.lack(Lack.NOTHING_AVAILABLE, row) : reserve / available;
    }

    private void edge(FlatNetwork net, int i, int row, FlatState state, Grants grants) {
        for (int which = 0; which < edge.length; which++) {
            put(edge[which], row, edge(which, net, i, row, state, grants));
        }
    }

    private double edge(int which, FlatNetwork net, int i, int row, FlatState state, Grants grants) {
        return switch (which) {
            case 6 -> state.voltsFar[i];
            case 7 -> state.nodeReceived[i];
            case 8 -> finite(state.receivable[i], row);
            case 9 -> powered(i, grants);
            case 10 -> dark(net, i, row, grants);
            default -> feeder(which, i, row, state, grants);
        };
    }

    private void device(FlatNetwork net, int i, int row, FlatState state, Grants grants) {
        for (int which = 0; which < device.length; which++) {
            put(device[which], row, device(which, net, i, row, state, grants));
        }
    }

    private double device(int which, FlatNetwork net, int i, int row, FlatState state, Grants grants) {
        return switch (which) {
            case 0 -> state.voltsFar[i];
            case 1 -> state.amps[i];
            case 2 -> state.nodeReceived[i];
            case 3 -> {
                double floor = deviceFloor.v[row - deviceFloor.base];
                yield Double.isNaN(floor) ? floor : state.voltsFar[i] - floor;
            }
            case 4 -> powered(i, grants);
            default -> dark(net, i, row, grants);
        };
    }

    private static double powered(int i, Grants grants) {
        return grants.outcome[i] == Grants.POWERED ? 1 : 0;
    }

    /** The text that says why there is no power; the empty one where there is. */
    private double dark(FlatNetwork net, int i, int row, Grants grants) {
        byte outcome = grants.outcome[i];
        return outcome == Grants.POWERED ? 0 : texts.number(dark(outcome, net, i, row, grants));
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
        for (int which = 0; which < run.length; which++) {
            put(run[which], row, run(which, i, row, state, worstShare));
        }
    }

    private double run(int which, int i, int row, FlatState state, double worstShare) {
        return switch (which) {
            case 0 -> state.ohms[i];
            case 1 -> state.voltsNear[i];
            case 2 -> state.voltsFar[i];
            case 3 -> state.amps[i];
            case 4 -> state.amps[i] * (pairs.v[row - pairs.base] == 1 ? worstShare : 0.5);
            case 5 -> state.sent[i];
            case 6 -> state.received[i];
            case 7 -> state.loss[i];
            case 8 -> state.voltsNear[i] - state.voltsFar[i];
            case 9 -> (state.voltsNear[i] - state.voltsFar[i]) / state.voltsNear[i];
            case 10 -> state.temp[i];
            case 11 -> state.rise[i];
            default -> {
                double cliff = state.cliffShare[i];
                yield !Double.isNaN(cliff) ? cliff : faults.lack(Lack.NO_CLIFF, row);
            }
        };
    }
}
