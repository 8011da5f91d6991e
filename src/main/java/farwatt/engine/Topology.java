package farwatt.engine;

import farwatt.plan.NaturalOrder;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What feeds what: the trees from each source down, found from the runs that are in use. A node fed twice, a ring, a
 * run to nowhere end in a notice and a fault on everything that hangs on it; the rest keeps its trees. Rows are
 * numbered as in {@link Layout}.
 */
final class Topology {
    private static final int NONE = -1;
    private static final int RING_SHOWN = 16;

    private final Layout layout;
    private final Faults faults;
    private final List<Notice> notices = new ArrayList<>();

    /** By node: the run that feeds it, −1 if none. */
    final int[] feedRun;
    /** By run: the node it leaves from and the one it feeds, −1 if there is none in use. */
    final int[] from;

    final int[] to;
    /** By row: why it stands in no tree; 0 where it does. */
    final double[] outside;

    /** Nodes in preorder, tree after tree; children in natural order of their ids. */
    final int[] order;
    /** By position in {@link #order}: position of the feeding node, −1 for a source. */
    final int[] parentAt;
    /** By position: one past its subtree. */
    final int[] endAt;
    /** By row of a node: its position in {@link #order}, −1 outside. */
    final int[] at;
    /** Positions at which trees start, and at the end the number of nodes in trees. */
    final int[] trees;

    private final List<List<Integer>> children = new ArrayList<>();

    /**
     * @param used by row: whether it is in use
     * @param fromCell by place of a run: the row its {@code from} names, −1 unknown, −2 empty
     * @param toCell the same of {@code to}
     */
    Topology(Layout layout, Faults faults, boolean[] used, int[] fromCell, int[] toCell) {
        this.layout = layout;
        this.faults = faults;
        int rows = layout.rows();
        feedRun = filled(rows);
        from = filled(rows);
        to = filled(rows);
        outside = new double[rows];
        at = filled(rows);
        for (int i = 0; i < rows; i++) {
            children.add(List.of());
        }
        for (int row = 0; row < rows; row++) {
            if (!used[row]) {
                outside[row] = faults.lack(Lack.OUT_OF_USE, row);
            }
        }
        connect(used, fromCell, toCell);
        linkChildren();
        int[] sorted = natural(used);
        IntList walk = new IntList(rows);
        IntList parents = new IntList(rows);
        IntList starts = new IntList(16);
        for (int row : sorted) {
            if (layout.isIn(row, Table.SOURCES)) {
                starts.add(walk.size());
                walk(row, walk, parents);
            }
        }
        order = walk.toArray();
        parentAt = parents.toArray();
        starts.add(order.length);
        trees = starts.toArray();
        endAt = ends();
        explainRest(sorted);
    }

    private static int[] filled(int rows) {
        int[] a = new int[rows];
        Arrays.fill(a, NONE);
        return a;
    }

    List<Notice> notices() {
        return notices;
    }

    Place place(int row) {
        return layout.place(row);
    }

    /** Nodes in use in natural order of their ids. */
    private int[] natural(boolean[] used) {
        List<Integer> nodes = new ArrayList<>();
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES, Table.DEVICES)) {
            for (int row = layout.base(table); row < layout.end(table); row++) {
                if (used[row]) {
                    nodes.add(row);
                }
            }
        }
        nodes.sort((a, b) -> NaturalOrder.IDS.compare(layout.id(a), layout.id(b)));
        return nodes.stream().mapToInt(Integer::intValue).toArray();
    }

    private void connect(boolean[] used, int[] fromCell, int[] toCell) {
        int base = layout.base(Table.RUNS);
        for (int place = 0; place < layout.size(Table.RUNS); place++) {
            int run = base + place;
            if (!used[run]) {
                continue;
            }
            int near = end(run, "from", fromCell[place], used);
            int far = end(run, "to", toCell[place], used);
            from[run] = near;
            to[run] = far;
            if (near < 0 || far < 0) {
                continue;
            }
            if (feedRun[far] >= 0) {
                fedTwice(far, run);
            } else {
                feedRun[far] = run;
            }
        }
    }

    /** The node in use that an end names, or −1 with a notice and a fault on the run. */
    private int end(int run, String name, int cell, boolean[] used) {
        if (cell >= 0 && used[cell]) {
            return cell;
        }
        if (cell >= 0) {
            // what it leads to is out of use, and so then is the run: no mistake
            outside[run] = outside[cell];
            return NONE;
        }
        EngineCode code = cell == -2 ? EngineCode.RUN_END_EMPTY : EngineCode.RUN_TO_NOWHERE;
        Place where = new Place(Table.RUNS.key(), layout.id(run), name);
        Notice notice = Notice.of(Level.FAIL, code, where, layout.id(run), name);
        notices.add(notice);
        outside[run] = faults.raise(new Fault(Fault.Kind.NOT_FED, where, notice.text()));
        return NONE;
    }

    private void fedTwice(int node, int run) {
        if (outside[node] == 0) {
            Notice notice = Notice.of(
                    Level.FAIL,
                    EngineCode.FED_TWICE,
                    place(node),
                    layout.id(node),
                    layout.id(feedRun[node]),
                    layout.id(run));
            notices.add(notice);
            outside[node] = faults.raise(new Fault(Fault.Kind.NOT_FED, place(node), notice.text()));
        }
        outside[run] = outside[node];
        outside[feedRun[node]] = outside[node];
    }

    /** Lays one tree down in preorder, without recursion: trees may be thousands deep. */
    private void walk(int source, IntList walk, IntList parents) {
        ArrayDeque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {source, NONE});
        while (!open.isEmpty()) {
            int[] next = open.pop();
            int node = next[0];
            at[node] = walk.size();
            walk.add(node);
            parents.add(next[1]);
            List<Integer> below = children.get(node);
            for (int k = below.size() - 1; k >= 0; k--) {
                open.push(new int[] {below.get(k), at[node]});
            }
        }
    }

    private void linkChildren() {
        for (int node = 0; node < feedRun.length; node++) {
            int run = feedRun[node];
            if (run >= 0 && outside[node] == 0 && outside[run] == 0) {
                int feeder = from[run];
                if (children.get(feeder).isEmpty()) {
                    children.set(feeder, new ArrayList<>());
                }
                children.get(feeder).add(node);
            }
        }
        for (List<Integer> below : children) {
            if (below.size() > 1) {
                below.sort((a, b) -> NaturalOrder.IDS.compare(layout.id(a), layout.id(b)));
            }
        }
    }

    private int[] ends() {
        int[] end = new int[order.length];
        for (int i = order.length - 1; i >= 0; i--) {
            end[i] = Math.max(end[i], i + 1);
            if (parentAt[i] >= 0) {
                end[parentAt[i]] = Math.max(end[parentAt[i]], end[i]);
            }
        }
        return end;
    }

    /** Says of every node that no tree reached why: it is in a ring, nothing feeds it, or what feeds it is not fed. */
    private void explainRest(int[] sorted) {
        int[] walkOf = filled(feedRun.length);
        for (int node : sorted) {
            if (at[node] >= 0 || outside[node] != 0) {
                continue;
            }
            List<Integer> path = new ArrayList<>();
            int up = node;
            while (at[up] < 0 && outside[up] == 0 && feedRun[up] >= 0 && walkOf[up] != node) {
                walkOf[up] = node;
                path.add(up);
                up = outside[feedRun[up]] != 0 ? feedRun[up] : from[feedRun[up]];
            }
            if (walkOf[up] == node) {
                ring(path.subList(path.indexOf(up), path.size()));
            } else if (outside[up] == 0) {
                unfed(up);
            }
            for (int below : path) {
                if (outside[below] == 0) {
                    outside[below] = hangsOn(below, up);
                }
                if (outside[feedRun[below]] == 0) {
                    outside[feedRun[below]] = outside[below];
                }
            }
        }
    }

    private double hangsOn(int node, int cause) {
        Fault why = faults.of(outside[cause]);
        return faults.raise(
                Fault.Kind.NOT_FED, why.origin(), EngineCode.HANGS_ON, layout.id(node), layout.id(cause), why.text());
    }

    private void ring(List<Integer> members) {
        List<String> names = new ArrayList<>();
        for (int k = members.size() - 1; k >= 0; k--) {
            names.add(layout.id(members.get(k)));
        }
        int first = 0;
        for (int k = 1; k < names.size(); k++) {
            if (NaturalOrder.IDS.compare(names.get(k), names.get(first)) < 0) {
                first = k;
            }
        }
        List<String> turned = new ArrayList<>(names.subList(first, names.size()));
        turned.addAll(names.subList(0, first + 1));
        int head = layout.siteRow(turned.get(0));
        int shown = Math.min(turned.size(), RING_SHOWN);
        String way = String.join(" → ", turned.subList(0, shown)) + (shown < turned.size() ? " → …" : "");
        Notice notice = Notice.of(Level.FAIL, EngineCode.RING, place(head), way);
        notices.add(notice);
        double fault = faults.raise(new Fault(Fault.Kind.NOT_FED, place(head), notice.text()));
        for (int member : members) {
            outside[member] = fault;
        }
    }

    private void unfed(int node) {
        Notice notice = Notice.of(Level.FAIL, EngineCode.NOT_FED, place(node), layout.id(node));
        notices.add(notice);
        outside[node] = faults.raise(new Fault(Fault.Kind.NOT_FED, place(node), notice.text()));
    }
}
