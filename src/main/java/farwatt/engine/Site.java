package farwatt.engine;

import farwatt.plan.NaturalOrder;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The connected sets of a topology: trees that share a bundle are solved together, every other tree alone. Components
 * are numbered in the order of their first trees.
 */
final class Site {
    /** By component: its trees. */
    final int[][] components;
    /** By tree: its component. */
    final int[] componentOf;
    /** By row of a node or run: its component, −1 outside the trees. */
    final int[] componentOfRow;
    /**
     * By row of a node or run: the component whose answers its cells can change, −1 for none. A run outside the trees
     * takes up room in its bundle and so concerns the component that the bundle belongs to.
     */
    final int[] concerns;
    /** By place of a bundle: its runs in use, in natural order of their ids. */
    final int[][] members;

    Site(Layout layout, Topology topology, int[] bundleOf) {
        int trees = topology.trees.length - 1;
        int[] treeOfRow = new int[layout.rows()];
        Arrays.fill(treeOfRow, -1);
        for (int tree = 0; tree < trees; tree++) {
            for (int at = topology.trees[tree]; at < topology.trees[tree + 1]; at++) {
                int node = topology.order[at];
                treeOfRow[node] = tree;
                if (topology.parentAt[at] >= 0) {
                    treeOfRow[topology.feedRun[node]] = tree;
                }
            }
        }
        members = members(layout, topology, bundleOf);
        int[] head = new int[trees];
        Arrays.setAll(head, i -> i);
        for (int[] runs : members) {
            int first = -1;
            for (int run : runs) {
                int tree = treeOfRow[run];
                if (tree >= 0) {
                    first = first < 0 ? tree : join(head, first, tree);
                }
            }
        }
        componentOf = new int[trees];
        components = group(head);
        componentOfRow = new int[layout.rows()];
        for (int row = 0; row < treeOfRow.length; row++) {
            componentOfRow[row] = treeOfRow[row] < 0 ? -1 : componentOf[treeOfRow[row]];
        }
        concerns = concerns();
    }

    private int[] concerns() {
        int[] found = componentOfRow.clone();
        for (int[] runs : members) {
            int ofBundle = -1;
            for (int run : runs) {
                ofBundle = Math.max(ofBundle, componentOfRow[run]);
            }
            for (int run : runs) {
                found[run] = ofBundle;
            }
        }
        return found;
    }

    private static int[][] members(Layout layout, Topology topology, int[] bundleOf) {
        List<IntList> lists = new ArrayList<>();
        for (int i = 0; i < layout.size(Table.BUNDLES); i++) {
            lists.add(new IntList(4));
        }
        for (int run = layout.base(Table.RUNS); run < layout.end(Table.RUNS); run++) {
            boolean used = topology.from[run] >= 0 && topology.to[run] >= 0 && !topology.isLeftOut(run);
            if (used && bundleOf[run] >= 0) {
                lists.get(bundleOf[run] - layout.base(Table.BUNDLES)).add(run);
            }
        }
        // in natural order, since sums over them must not depend on the order of rows
        return lists.stream()
                .map(list -> Arrays.stream(list.toArray())
                        .boxed()
                        .sorted((a, b) -> NaturalOrder.IDS.compare(layout.id(a), layout.id(b)))
                        .mapToInt(Integer::intValue)
                        .toArray())
                .toArray(int[][]::new);
    }

    private static int find(int[] head, int tree) {
        int at = tree;
        while (head[at] != at) {
            head[at] = head[head[at]];
            at = head[at];
        }
        return at;
    }

    private static int join(int[] head, int a, int b) {
        int one = find(head, a);
        int other = find(head, b);
        head[Math.max(one, other)] = Math.min(one, other);
        return Math.min(one, other);
    }

    private int[][] group(int[] head) {
        int[] number = new int[head.length];
        List<IntList> groups = new ArrayList<>();
        for (int tree = 0; tree < head.length; tree++) {
            int top = find(head, tree);
            if (top == tree) {
                number[tree] = groups.size();
                groups.add(new IntList(4));
            }
            componentOf[tree] = number[top];
            groups.get(number[top]).add(tree);
        }
        return groups.stream().map(IntList::toArray).toArray(int[][]::new);
    }
}
