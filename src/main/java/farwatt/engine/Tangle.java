package farwatt.engine;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
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
        boolean touched = vertices.stream().anyMatch(v -> v instanceof CellVertex cell && cell.isEdited());
        for (Dep dep : deps()) {
            touched |= !dep.col().changed.isEmpty();
        }
        if (touched) {
            all();
        }
    }

    @Override
    void all() {
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

    /** The members in the order in which each needs the next. */
    private void loop(int[] set) {
        List<Place> places = new ArrayList<>();
        for (int k = 0; k < set.length; k++) {
            Col col = cols.get(colOf(set[k]));
            places.add(place(col, col.base + set[k] - offset(col)));
        }
        List<String> names = new ArrayList<>();
        for (int k = 0; k < Math.min(MEMBERS_SHOWN, places.size()); k++) {
            names.add(places.get(k).text());
        }
        names.add(places.size() > MEMBERS_SHOWN ? "…" : places.get(0).text());
        String way = String.join(" → ", names);
        Notice notice = Notice.of(Level.FAIL, EngineCode.LOOP, places.get(0), way);
        notices.add(notice);
        double fault = faults.raise(new Fault(Fault.Kind.LOOP, places.get(0), notice.text()));
        for (int cell : set) {
            Col col = cols.get(colOf(cell));
            col.put(cell - offset(col), fault);
        }
    }

    private Place place(Col col, int row) {
        return row < layout.rows() ? layout.place(row, col.key()) : new Place("", "", col.key());
    }
}
