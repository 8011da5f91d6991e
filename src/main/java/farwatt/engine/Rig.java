package farwatt.engine;

import farwatt.catalogue.Bounds;
import farwatt.catalogue.Kind;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One model of a plan whose knobs can be turned without reading a cell again. Knobs in whose cells something else than
 * a literal stands cannot be turned; the plan must be given one first.
 */
final class Rig {
    private static final int MOST_COURSES = 512;
    private static final int MOST_FAULTS = 20_000;

    private final Calculation calculation;
    private final Model model;
    private final List<Bound> reads = new ArrayList<>();
    private final double[] values;
    private final @Nullable Col[] cols;
    private final int[] places;
    private final Optional<Bounds>[] bounds;
    private final double[] inside;
    private final boolean[] due;
    private int dueCount;
    private int lastDue;
    private final CourseMaker maker;
    private final Course[] single;
    private final boolean[] made;
    private final Map<List<Integer>, Course> several = new HashMap<>();
    private final int faultsAtFirst;
    private boolean[] lastTogether = {};
    private @Nullable Course lastCourse;

    Rig(Plan plan, Corner corner, List<Knob> knobs, List<String> texts) {
        calculation = Calculation.of(plan);
        calculation.look(corner);
        model = calculation.model();
        for (String text : texts) {
            reads.add(model.compiler
                    .look(text, "")
                    .orElseThrow(() -> new IllegalArgumentException("cannot be understood: " + text)));
        }
        values = new double[reads.size()];
        cols = new Col[knobs.size()];
        places = new int[knobs.size()];
        bounds = newBounds(knobs.size());
        inside = new double[knobs.size()];
        due = new boolean[knobs.size()];
        single = new Course[knobs.size()];
        made = new boolean[knobs.size()];
        for (int k = 0; k < knobs.size(); k++) {
            find(k, knobs.get(k));
        }
        maker = new CourseMaker(model, reads);
        for (int r = 0; r < values.length; r++) {
            read(r);
        }
        faultsAtFirst = model.faults.size();
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Optional<Bounds>[] newBounds(int size) {
        return new Optional[size];
    }

    private void find(int k, Knob knob) {
        Optional<Col> col = model.columns.find(knob.table(), knob.name());
        bounds[k] = Optional.empty();
        boolean cell = knob.table() != Table.NEEDS
                && knob.table() != Table.COLUMNS
                && col.isPresent()
                && model.cellVertices.containsKey(col.get())
                && !(col.get().name.kind() instanceof Kind.Text && !isValue(knob));
        if (!cell) {
            return;
        }
        places[k] = calculation.place(knob.table(), knob.id());
        if (places[k] < 0 || !model.filler.vertexOf(col.get()).isLiteral(places[k])) {
            return;
        }
        cols[k] = col.get();
        var name = model.filler.name(col.get(), places[k]);
        if (name.kind() instanceof Kind.Quantity quantity) {
            bounds[k] = Optional.of(Bounds.of(name, quantity.unit(model.units)));
        }
        inside[k] = cols[k].v[places[k]];
    }

    private static boolean isValue(Knob knob) {
        return knob.table() == Table.VALUES || knob.table() == Table.PRACTICE;
    }

    /** True where a literal stands in a cell of the model that can be another one. */
    boolean turns(int knob) {
        return cols[knob] != null;
    }

    /** True where another value of a knob asks for another model. */
    boolean rebuilds(int knob) {
        return cols[knob] == null || course(knob).rebuilds;
    }

    int cost(int knob) {
        return course(knob).cost();
    }

    /** True while the value is one that the cell can hold. */
    boolean holds(int knob, double value) {
        Optional<Bounds> limits = bounds[knob];
        return limits.isEmpty() || limits.get().broken(value).isEmpty();
    }

    /** The fault that stands for a value that a cell cannot hold. */
    double broken(int knob, farwatt.plan.Cell cell) {
        return model.filler.broken(need(knob), places[knob], cell).orElse(Double.NaN);
    }

    private Col need(int knob) {
        Col col = cols[knob];
        if (col == null) {
            throw new IllegalStateException("not to be turned");
        }
        return col;
    }

    /** Turns a knob; what follows is worked out by {@link #work}. */
    void put(int knob, double value) {
        if (Faults.same(inside[knob], value)) {
            return;
        }
        inside[knob] = value;
        model.filler.put(need(knob), places[knob], value);
        if (!due[knob]) {
            due[knob] = true;
            dueCount++;
        }
        lastDue = knob;
    }

    /** Brings what is read up to date. */
    void work() {
        if (dueCount == 0) {
            return;
        }
        Course course = dueCount == 1 ? course(lastDue) : together();
        Arrays.fill(due, false);
        dueCount = 0;
        for (int r : course.run()) {
            read(r);
        }
    }

    private Course course(int knob) {
        if (!made[knob]) {
            single[knob] = make(List.of(knob));
            made[knob] = true;
        }
        return single[knob];
    }

    private Course together() {
        if (several.size() > MOST_COURSES) {
            // one that does more than is needed does no harm
            for (int k = 0; k < due.length; k++) {
                due[k] = cols[k] != null;
            }
        }
        if (lastCourse != null && Arrays.equals(due, lastTogether)) {
            return lastCourse;
        }
        List<Integer> which = new ArrayList<>();
        for (int k = 0; k < due.length; k++) {
            if (due[k]) {
                which.add(k);
            }
        }
        Course course = several.computeIfAbsent(which, this::make);
        lastTogether = due.clone();
        lastCourse = course;
        return course;
    }

    private Course make(List<Integer> which) {
        List<Col> moved = new ArrayList<>();
        IntList rows = new IntList(which.size());
        for (int k : which) {
            moved.add(need(k));
            rows.add(need(k).base + places[k]);
            if (CellFiller.isMirrored(need(k))) {
                moved.add(model.filler.typedClass());
                rows.add(model.filler.typedClass().base + places[k]);
            }
        }
        return maker.make(moved, rows.toArray());
    }

    private void read(int r) {
        values[r] = model.cells.ask(reads.get(r).planned().formula());
    }

    double inside(int read) {
        return values[read];
    }

    Value value(int read) {
        return calculation.value(values[read], reads.get(read));
    }

    /** True when so many reasons have been given that they had better be forgotten with the model. */
    boolean isFull() {
        return model.faults.size() + model.texts.size() > faultsAtFirst + MOST_FAULTS;
    }

    int rows() {
        return model.layout.rows();
    }
}
