package farwatt.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds out what follows from other values in certain cells, by the same marks that walk through a calculation after an
 * edit, every value taken to become different. Only what some expression reads in the end is kept.
 */
final class CourseMaker {
    private final Model model;
    private final List<Bound> reads;
    private final List<Vertex> vertices = new ArrayList<>();
    private final Set<Col> needed = new HashSet<>();
    private final Set<Col> marked = new HashSet<>();
    private final Extents extents;

    CourseMaker(Model model, List<Bound> reads) {
        this.model = model;
        this.reads = reads;
        vertices.addAll(model.given());
        vertices.addAll(model.answers());
        reads.forEach(read -> read.deps().forEach(dep -> needed.add(dep.col())));
        for (int i = vertices.size() - 1; i >= 0; i--) {
            Vertex vertex = vertices.get(i);
            if (vertex.outs().stream().anyMatch(needed::contains)) {
                vertex.deps().forEach(dep -> needed.add(dep.col()));
            }
        }
        extents = new Extents(model, needed);
    }

    /** The course after the cells of these rows of these columns got other values. */
    Course make(List<Col> cols, int[] rows) {
        for (int k = 0; k < rows.length; k++) {
            mark(cols.get(k), rows[k]);
        }
        List<Op> before = new ArrayList<>();
        int at = 0;
        for (; at < vertices.size() && !vertices.get(at).equals(model.solving); at++) {
            op(vertices.get(at), before);
        }
        boolean rebuilds = marked.stream().anyMatch(CourseMaker::decidesModel);
        List<PieceStep> pieces = new ArrayList<>();
        boolean solves = model.solving.outs().stream().anyMatch(needed::contains);
        if (solves) {
            extents.find(pieces, this::mark);
        }
        List<Op> narrow = new ArrayList<>();
        tail(at + 1, narrow);
        int[] narrowReads = touchedReads();
        List<Op> wide = new ArrayList<>();
        if (!pieces.isEmpty()) {
            extents.markWhole(this::mark);
            tail(at + 1, wide);
        }
        int[] wideReads = touchedReads();
        marked.forEach(col -> col.changed.clear());
        marked.clear();
        return new Course(
                before.toArray(new Op[0]),
                pieces.toArray(new PieceStep[0]),
                narrow.toArray(new Op[0]),
                wide.toArray(new Op[0]),
                narrowReads,
                wideReads,
                rebuilds);
    }

    /** What is in use, and which switches make volts of their own, is taken to stay while a model lasts. */
    private static boolean decidesModel(Col col) {
        return Model.isStructure(col.name.kind(), col.key()) || col.key().equals("mode");
    }

    private void mark(Col col, int row) {
        col.changed.add(row);
        marked.add(col);
    }

    private void tail(int from, List<Op> into) {
        for (int i = from; i < vertices.size(); i++) {
            op(vertices.get(i), into);
        }
    }

    private void op(Vertex vertex, List<Op> into) {
        if (vertex instanceof RowVertex rows) {
            rows(rows, into);
        } else if (vertex instanceof GatherVertex gather) {
            int[] blocks = gather.dueBlocks();
            if (blocks.length > 0) {
                mark(gather.out(), gather.out().base);
                if (needed.contains(gather.out())) {
                    into.add(Op.gather(gather, blocks));
                }
            }
        } else if (vertex.deps().stream().anyMatch(dep -> !dep.col().changed.isEmpty())) {
            for (Col col : vertex.outs()) {
                for (int place = 0; place < col.v.length; place++) {
                    mark(col, col.base + place);
                }
            }
            if (vertex.outs().stream().anyMatch(needed::contains)) {
                into.add(Op.whole(vertex));
            }
        }
    }

    private void rows(RowVertex vertex, List<Op> into) {
        Marks due = new Marks();
        boolean every = vertex.collect(due);
        IntList places = new IntList(4);
        for (int place = 0; place < vertex.out.v.length; place++) {
            boolean moves = every || due.has(vertex.out.base + place);
            boolean literal = vertex instanceof CellVertex cell && cell.isLiteral(place);
            if (moves && !literal) {
                places.add(place);
                mark(vertex.out, vertex.out.base + place);
            }
        }
        if (places.size() > 0 && needed.contains(vertex.out)) {
            into.add(Op.rows(vertex, places.toArray()));
        }
    }

    private int[] touchedReads() {
        IntList touched = new IntList(4);
        for (int i = 0; i < reads.size(); i++) {
            if (reads.get(i).deps().stream().anyMatch(CourseMaker::isTouched)) {
                touched.add(i);
            }
        }
        return touched.toArray();
    }

    private static boolean isTouched(Dep dep) {
        return dep.row() >= 0
                ? dep.col().changed.has(dep.row())
                : !dep.col().changed.isEmpty();
    }
}
