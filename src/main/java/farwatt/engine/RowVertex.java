package farwatt.engine;

import java.util.List;

/** A vertex that fills one column row by row. */
abstract class RowVertex extends Vertex {
    final Col out;
    private final Marks due = new Marks();

    RowVertex(Col out) {
        this.out = out;
        out.maker = this;
    }

    /** The value for the row at a place. */
    abstract double value(int place);

    @Override
    List<Col> outs() {
        return List.of(out);
    }

    @Override
    void reads(int row, CellReads.Visitor visitor) {
        for (Dep dep : deps()) {
            CellReads.cells(dep, row, visitor);
        }
    }

    @Override
    void all() {
        for (int place = 0; place < out.v.length; place++) {
            out.v[place] = value(place);
        }
    }

    @Override
    void some() {
        due.clear();
        if (collect(due)) {
            for (int place = 0; place < out.v.length; place++) {
                out.put(place, value(place));
            }
            return;
        }
        for (int k = 0; k < due.count(); k++) {
            int place = due.at(k) - out.base;
            if (place >= 0 && place < out.v.length) {
                out.put(place, value(place));
            }
        }
    }

    /** Marks the rows to work out anew; true if that is all of them. */
    boolean collect(Marks into) {
        for (Dep dep : deps()) {
            if (readers(dep, into)) {
                return true;
            }
        }
        return false;
    }

    /** Marks the rows that read what changed through one dependency; true if that is every row. */
    static boolean readers(Dep dep, Marks into) {
        Marks changed = dep.col().changed;
        if (changed.isEmpty()) {
            return false;
        }
        if (dep.wide()) {
            return true;
        }
        if (dep.row() >= 0) {
            return changed.has(dep.row());
        }
        List<Relation> path = dep.path();
        if (path.isEmpty()) {
            for (int k = 0; k < changed.count(); k++) {
                into.add(changed.at(k));
            }
            return false;
        }
        Marks step = changed;
        for (int link = path.size() - 1; link >= 0; link--) {
            Marks before = link == 0 ? into : new Marks();
            for (int k = 0; k < step.count(); k++) {
                path.get(link).backTo(step.at(k), before);
            }
            step = before;
        }
        return false;
    }
}
