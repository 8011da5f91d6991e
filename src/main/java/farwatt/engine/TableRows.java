package farwatt.engine;

import farwatt.language.RowSet;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Table;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/** The rows of a table that are in use, in natural order of their ids, and those that hang on a node. */
final class TableRows implements RowSet {
    private final Layout layout;
    private final Topology topology;
    private final Table table;
    private final int[] rows;
    private final Map<Integer, int[]> on = new HashMap<>();

    TableRows(Layout layout, Topology topology, Table table) {
        this.layout = layout;
        this.topology = topology;
        this.table = table;
        rows = IntStream.range(layout.base(table), layout.end(table))
                .filter(row -> !topology.isLeftOut(row))
                .boxed()
                .sorted((a, b) -> NaturalOrder.IDS.compare(layout.id(a), layout.id(b)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    @Override
    public int[] rows() {
        return rows;
    }

    @Override
    public int[] on(int node) {
        return on.computeIfAbsent(node, n -> below(n, 1));
    }

    @Override
    public int[] under(int node) {
        return below(node, Integer.MAX_VALUE);
    }

    /** What hangs on a node no deeper than so many runs away, in preorder. */
    private int[] below(int node, int deepest) {
        int at = topology.at[node];
        if (at < 0) {
            return new int[0];
        }
        IntList found = new IntList(8);
        int next = at + 1;
        while (next < topology.endAt[at]) {
            int child = topology.order[next];
            int row = table == Table.RUNS ? topology.feedRun[child] : child;
            if (layout.isIn(row, table)) {
                found.add(row);
            }
            next = deepest == 1 ? topology.endAt[next] : next + 1;
        }
        return found.toArray();
    }
}
