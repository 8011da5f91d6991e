package farwatt.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A column that people fill in: each cell holds a literal, an expression, or nothing, in which case the column's rule
 * or a fault that says so takes its place.
 */
final class CellVertex extends RowVertex {
    private final Evaluator evaluator;
    private final @Nullable RowRule rule;
    private final List<Dep> ruleDeps;
    private final boolean[] empty;
    private @Nullable Bound @Nullable [] bounds;
    private final Marks edited = new Marks();
    private Map<Bound, IntList> uses = Map.of();
    private List<Dep> deps;

    /** @param rule for empty cells; null where they stay empty */
    CellVertex(Col out, Evaluator evaluator, @Nullable RowRule rule, List<Dep> ruleDeps) {
        super(out);
        this.evaluator = evaluator;
        this.rule = rule;
        this.ruleDeps = ruleDeps;
        deps = ruleDeps;
        empty = new boolean[out.v.length];
    }

    /** Puts a literal, or a fault for a cell that cannot be read. */
    void literal(int place, double value) {
        empty[place] = false;
        unbind(place);
        out.put(place, value);
    }

    /** Empties a cell. */
    void clear(int place) {
        empty[place] = true;
        unbind(place);
        edited.add(out.base + place);
    }

    /** Puts an expression. */
    void formula(int place, Bound bound) {
        empty[place] = false;
        if (bounds == null) {
            bounds = new Bound[out.v.length];
        }
        bounds[place] = bound;
        edited.add(out.base + place);
        uses = Map.of();
    }

    /** Takes over what stands in another column's cell. */
    void copy(CellVertex other, int place) {
        Bound bound = other.bound(place);
        if (bound != null) {
            formula(place, bound);
        } else if (other.isEmpty(place)) {
            clear(place);
        } else {
            literal(place, other.out.v[place]);
        }
    }

    private void unbind(int place) {
        if (bounds != null && bounds[place] != null) {
            bounds[place] = null;
            uses = Map.of();
        }
    }

    boolean isEmpty(int place) {
        return empty[place];
    }

    /** True where a value stands that nothing but an edit changes. */
    boolean isLiteral(int place) {
        return !empty[place] && bound(place) == null;
    }

    @Nullable
    Bound bound(int place) {
        return bounds == null ? null : bounds[place];
    }

    /** To be called after cells changed and before the column is put in order or worked out. */
    void settle() {
        if (bounds == null || !uses.isEmpty()) {
            return;
        }
        Map<Bound, IntList> found = new LinkedHashMap<>();
        for (int place = 0; place < bounds.length; place++) {
            Bound bound = bounds[place];
            if (bound != null) {
                found.computeIfAbsent(bound, b -> new IntList(1)).add(out.base + place);
            }
        }
        uses = found;
        List<Dep> all = new ArrayList<>(ruleDeps);
        found.keySet().forEach(bound -> all.addAll(bound.deps()));
        deps = all;
    }

    @Override
    List<Dep> deps() {
        return deps;
    }

    /** True while an edit has not been worked out. */
    boolean isEdited() {
        return !edited.isEmpty();
    }

    void forgetEdits() {
        edited.clear();
    }

    @Override
    void reads(int row, CellReads.Visitor visitor) {
        int place = row - out.base;
        Bound bound = bound(place);
        if (bound != null) {
            CellReads.cells(bound.planned().uses(), row, visitor);
        } else if (empty[place]) {
            ruleDeps.forEach(dep -> CellReads.cells(dep, row, visitor));
        }
    }

    @Override
    void all() {
        edited.clear();
        super.all();
    }

    @Override
    double value(int place) {
        if (bounds != null) {
            Bound bound = bounds[place];
            if (bound != null) {
                return evaluator.cell(bound, out, place);
            }
        }
        if (!empty[place]) {
            return out.v[place];
        }
        if (rule == null) {
            return evaluator.empty(out, place);
        }
        double value = rule.at(place);
        return Double.isNaN(value) && Faults.isPlain(value) ? evaluator.empty(out, place) : value;
    }

    @Override
    boolean collect(Marks into) {
        for (int k = 0; k < edited.count(); k++) {
            into.add(edited.at(k));
        }
        edited.clear();
        for (Dep dep : ruleDeps) {
            if (readers(dep, into)) {
                return true;
            }
        }
        for (Map.Entry<Bound, IntList> use : uses.entrySet()) {
            collect(use.getKey(), use.getValue(), into);
        }
        return false;
    }

    private static void collect(Bound bound, IntList rows, Marks into) {
        for (Dep dep : bound.deps()) {
            if (dep.col().changed.isEmpty()) {
                continue;
            }
            Marks reading = new Marks();
            boolean every = readers(dep, reading);
            for (int k = 0; k < rows.size(); k++) {
                if (every || reading.has(rows.get(k))) {
                    into.add(rows.get(k));
                }
            }
        }
    }

    /** Works formulas out in a frame; knows what an empty cell is called. */
    interface Evaluator {
        double value(Bound bound, Col col, int place);

        /** The same for a cell that people fill in, which cannot hold everything. */
        double cell(Bound bound, Col col, int place);

        double empty(Col col, int place);
    }
}
