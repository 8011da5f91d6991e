package farwatt.engine;

import farwatt.plan.NaturalOrder;
import farwatt.plan.Table;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What feeds what: the trees from each source down, found from the runs that are in use. A node fed twice, a ring, a
 * run to nowhere end in a notice and a fault on everything that hangs on it; the rest keeps its trees. Rows are
 * numbered as in {@link Layout}.
 */
final class Topology {
    private static final int NONE = -1;

    private final Layout layout;
    private final Outside reasons;

    /** By node: the run that feeds it, or would if it could; −1 if none. */
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

    private final boolean[] used;
    private final List<List<Integer>> children = new ArrayList<>();

    /**
     * @param used by row: whether it is in use
     * @param fromCell by place of a run: the row its {@code from} names, −1 unknown, −2 empty
     * @param toCell the same of {@code to}
     * @param slips by row: the fault of a cell that names a row wrongly, 0 if there is none
     */
    Topology(Layout layout, Faults faults, boolean[] used, int[] fromCell, int[] toCell, double[] slips) {
        this.layout = layout;
        this.used = used;
        int rows = layout.rows();
        feedRun = filled(rows);
        from = filled(rows);
        to = filled(rows);
        outside = slips.clone();
        at = filled(rows);
        for (int row = 0; row < rows; row++) {
            children.add(List.of());
            if (!used[row]) {
                outside[row] = faults.lack(Lack.OUT_OF_USE, row);
            }
        }
        reasons = new Outside(layout, faults, this);
        int[] runs = natural(List.of(Table.RUNS));
        connect(runs, fromCell, toCell);
        feed(runs, toCell);
        linkChildren();
        int[] nodes = natural(List.of(Table.SOURCES, Table.SWITCHES, Table.DEVICES));
        IntList walk = new IntList(rows);
        IntList parents = new IntList(rows);
        IntList starts = new IntList(16);
        for (int row : nodes) {
            if (layout.isIn(row, Table.SOURCES) && outside[row] == 0) {
                starts.add(walk.size());
                walk(row, walk, parents);
            }
        }
        order = walk.toArray();
        parentAt = parents.toArray();
        starts.add(order.length);
        trees = starts.toArray();
        endAt = ends();
        reasons.explain(nodes);
    }

    private static int[] filled(int rows) {
        int[] a = new int[rows];
        Arrays.fill(a, NONE);
        return a;
    }

    List<Notice> notices() {
        return reasons.notices();
    }

    Place place(int row) {
        return layout.place(row);
    }

    /** True for a row that is out of use, or left out because it hangs on one that is. */
    boolean isLeftOut(int row) {
        return reasons.isLeftOut(row);
    }

    /** The rows of some tables in natural order of their ids. */
    private int[] natural(List<Table> tables) {
        return tables.stream()
                .flatMapToInt(table -> IntStream.range(layout.base(table), layout.end(table)))
                .boxed()
                .sorted((a, b) -> NaturalOrder.IDS.compare(layout.id(a), layout.id(b)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Finds the two ends of every run in use. */
    private void connect(int[] runs, int[] fromCell, int[] toCell) {
        for (int run : runs) {
            if (!used[run]) {
                continue;
            }
            int place = run - layout.base(Table.RUNS);
            from[run] = end(run, "from", fromCell[place]);
            to[run] = end(run, "to", toCell[place]);
        }
    }

    /** The node in use that an end names, or −1 with a fault on the run. */
    private int end(int run, String name, int cell) {
        if (cell >= 0 && used[cell]) {
            return cell;
        }
        if (outside[run] == 0) {
            // what it leads to is out of use, and so then is the run: no mistake
            outside[run] = cell >= 0 ? outside[cell] : reasons.emptyEnd(run, name);
        }
        return NONE;
    }

    /**
     * Finds what feeds each node: a whole run, else one that comes from nowhere, else one that is out of use, so that a
     * node without power can say what it hangs on.
     */
    private void feed(int[] runs, int[] toCell) {
        for (int run : runs) {
            if (from[run] >= 0 && to[run] >= 0) {
                if (feedRun[to[run]] >= 0) {
                    reasons.fedTwice(to[run], run);
                } else {
                    feedRun[to[run]] = run;
                }
            }
        }
        for (boolean inUse : new boolean[] {true, false}) {
            for (int run : runs) {
                int far = toCell[run - layout.base(Table.RUNS)];
                if (used[run] == inUse && from[run] < 0 && far >= 0 && used[far] && feedRun[far] < 0) {
                    feedRun[far] = run;
                }
            }
        }
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
}
