package farwatt.engine;

import farwatt.plan.NaturalOrder;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Columns that need each other, worked out cell by cell in the order of their cells. Cells that need themselves are a
 * loop: a fault that lists its members in order; everything else gets its value.
 */
final class Tangle extends Vertex {
    private static final int MEMBERS_SHOWN = 12;

    private final List<Vertex> vertices;
    private final Layout layout;
    private final Faults faults;
    private boolean worked;
    private final List<Notice> notices = new ArrayList<>();
    private final Map<Col, Integer> offsets = new HashMap<>();
    private final List<Col> cols = new ArrayList<>();
    private final List<Vertex> makers = new ArrayList<>();
    private int cells;

    Tangle(List<Vertex> vertices, Layout layout, Faults faults) {
        this.vertices = vertices;
        this.layout = layout;
        this.faults = faults;
        for (Vertex vertex : vertices) {
            for (Col col : vertex.outs()) {
                offsets.put(col, cells);
                cols.add(col);
                makers.add(vertex);
                cells += col.v.length;
            }
        }
    }

    /** A notice for every loop found last. */
    List<Notice> notices() {
        return notices;
    }

    @Override
    List<Dep> deps() {
        return vertices.stream().flatMap(vertex -> vertex.deps().stream()).toList();
    }

    @Override
    List<Col> outs() {
        return cols;
    }

    @Override
    void reads(int row, CellReads.Visitor visitor) {
        vertices.forEach(vertex -> vertex.reads(row, visitor));
    }

    @Override
    void some() {
        // one that was only now put together has not said yet which loops it found
        boolean touched = !worked || vertices.stream().anyMatch(v -> v instanceof CellVertex cell && cell.isEdited());
        for (Dep dep : deps()) {
            touched |= !dep.col().changed.isEmpty();
        }
        if (touched) {
            all();
        }
    }

    @Override
    void all() {
        worked = true;
        notices.clear();
        new Strong(cells) {
            @Override
            int[] reads(int cell) {
                return readsOf(cell);
            }

            @Override
            void found(int[] set, boolean loops) {
                if (loops) {
                    loop(set);
                } else {
                    work(set[0]);
                }
            }
        }.run();
        for (Vertex vertex : vertices) {
            if (vertex instanceof CellVertex cell) {
                cell.forgetEdits();
            }
        }
    }

    private int colOf(int cell) {
        int at = cols.size() - 1;
        while (offsets.getOrDefault(cols.get(at), 0) > cell) {
            at--;
        }
        return at;
    }

    private int[] readsOf(int cell) {
        int at = colOf(cell);
        Col col = cols.get(at);
        int row = col.base + cell - offset(col);
        IntList reads = new IntList(4);
        makers.get(at).reads(row, (read, readRow) -> {
            Integer offset = offsets.get(read);
            if (offset != null) {
                reads.add(offset + readRow - read.base);
            }
        });
        return reads.toArray();
    }

    private int offset(Col col) {
        return offsets.getOrDefault(col, 0);
    }

    private void work(int cell) {
        int at = colOf(cell);
        Col col = cols.get(at);
        if (makers.get(at) instanceof RowVertex rows) {
            int place = cell - offset(col);
            col.put(place, rows.value(place));
        } else {
            double before = col.v[0];
            makers.get(at).all();
            double now = col.v[0];
            col.v[0] = before;
            col.put(0, now);
        }
    }

    /** Says one shortest way round through the first member; the others have no value for the same reason. */
    private void loop(int[] set) {
        List<String> names = new ArrayList<>();
        int[] way = wayRound(set);
        for (int k = 0; k < Math.min(MEMBERS_SHOWN, way.length); k++) {
            names.add(place(way[k]).text());
        }
        names.add(way.length > MEMBERS_SHOWN ? "…" : names.get(0));
        Place first = place(way[0]);
        Notice notice = Notice.of(Level.FAIL, EngineCode.LOOP, first, String.join(" → ", names));
        notices.add(notice);
        double fault = faults.raise(new Fault(Fault.Kind.LOOP, first, notice.text()));
        for (int cell : set) {
            Col col = cols.get(colOf(cell));
            col.put(cell - offset(col), fault);
        }
    }

    /** From the first member over what each reads back to it. */
    private int[] wayRound(int[] set) {
        BitSet members = new BitSet(cells);
        int first = set[0];
        for (int cell : set) {
            members.set(cell);
            first = compare(cell, first) < 0 ? cell : first;
        }
        Map<Integer, Integer> cameFrom = new HashMap<>();
        ArrayDeque<Integer> open = new ArrayDeque<>(List.of(first));
        while (!open.isEmpty()) {
            int cell = open.remove();
            for (int read : inOrder(readsOf(cell))) {
                if (read == first) {
                    return back(cell, cameFrom);
                }
                if (members.get(read) && cameFrom.putIfAbsent(read, cell) == null) {
                    open.add(read);
                }
            }
        }
        throw new IllegalStateException("no way round through " + place(first).text());
    }

    private static int[] back(int last, Map<Integer, Integer> cameFrom) {
        List<Integer> way = new ArrayList<>();
        for (Integer cell = last; cell != null; cell = cameFrom.get(cell)) {
            way.add(cell);
        }
        Collections.reverse(way);
        return way.stream().mapToInt(Integer::intValue).toArray();
    }

    private int[] inOrder(int[] reads) {
        return Arrays.stream(reads)
                .boxed()
                .sorted(this::compare)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Cells by table, id and name, so that what is said does not depend on the order of rows. */
    private int compare(int a, int b) {
        Col one = cols.get(colOf(a));
        Col other = cols.get(colOf(b));
        if (one.table != other.table) {
            return one.table.compareTo(other.table);
        }
        int rowA = row(a);
        int rowB = row(b);
        boolean single = rowA >= layout.rows() || rowB >= layout.rows();
        int byId = single ? 0 : NaturalOrder.IDS.compare(layout.id(rowA), layout.id(rowB));
        return byId != 0 ? byId : one.key().compareTo(other.key());
    }

    private int row(int cell) {
        Col col = cols.get(colOf(cell));
        return col.base + cell - offset(col);
    }

    private Place place(int cell) {
        return layout.place(row(cell), cols.get(colOf(cell)).key());
    }
}
