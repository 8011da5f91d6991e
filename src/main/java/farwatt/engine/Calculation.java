package farwatt.engine;

import farwatt.catalogue.Name;
import farwatt.language.Type;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan with the value of every name. Answers are worked out for one corner at a time and kept for each corner that
 * was looked at; a change walks only to what depends on it, with the same result to the last bit as working everything
 * out anew. Confined to one thread at a time.
 */
public final class Calculation {
    private static final int SETTLE = 4;

    private Model model;
    private Corner looked = Corner.MOST;
    private final Map<Corner, double[][]> kept = new EnumMap<>(Corner.class);

    private Calculation(Plan plan) {
        model = build(plan);
    }

    /** Works out a plan, looking at the corner the plan names. */
    public static Calculation of(Plan plan) {
        Calculation calculation = new Calculation(plan);
        Corner first = Corner.of(plan.settings().text("corner")).orElse(Corner.MOST);
        calculation.look(first);
        return calculation;
    }

    public Plan plan() {
        return model.plan();
    }

    public Corner corner() {
        return looked;
    }

    /** Looks at another corner; its answers are worked out if they are not kept. */
    public void look(Corner corner) {
        double[][] answers = kept.get(corner);
        looked = corner;
        model.corner.look(corner);
        List<Col> columns = model.answerColumns();
        if (answers != null) {
            for (int i = 0; i < answers.length; i++) {
                columns.get(i).v = answers[i];
            }
            return;
        }
        answers = new double[columns.size()][];
        for (int i = 0; i < answers.length; i++) {
            answers[i] = new double[columns.get(i).v.length];
            columns.get(i).v = answers[i];
        }
        kept.put(corner, answers);
        model.answers().forEach(Vertex::all);
        columns.forEach(col -> col.changed.clear());
    }

    /**
     * Builds the model for the rows that are in use; where an expression says what is, until the two agree.
     */
    private static Model build(Plan plan) {
        Layout layout = new Layout(plan);
        boolean[] used = new boolean[layout.rows()];
        Arrays.fill(used, true);
        for (int round = 0; ; round++) {
            Model model = new Model(plan, layout, used);
            model.given().forEach(Vertex::all);
            model.given().forEach(vertex -> vertex.outs().forEach(col -> col.changed.clear()));
            boolean[] now = model.inUse();
            if (Arrays.equals(used, now) || round == SETTLE) {
                if (round == SETTLE) {
                    model.notices.add(Notice.of(
                            farwatt.report.Level.FAIL, EngineCode.IN_USE_UNSTABLE, farwatt.report.Place.NONE));
                }
                return model;
            }
            used = now;
        }
    }

    /** Makes a change and brings every kept corner up to date. */
    public void apply(Change change) {
        Plan after = Edit.apply(model.plan(), change).plan();
        if (change instanceof Change.SetCell set && isCell(set)) {
            edit(set, after);
        } else {
            rebuild(after);
        }
    }

    /** Takes another plan as a whole. */
    public void replace(Plan plan) {
        rebuild(plan);
    }

    private void rebuild(Plan plan) {
        List<Corner> corners = new ArrayList<>(kept.keySet());
        kept.clear();
        model = build(plan);
        Corner now = looked;
        corners.stream().filter(corner -> corner != now).forEach(this::look);
        look(now);
    }

    /** True for a change of one cell that leaves what feeds what, and which names there are, as they were. */
    private boolean isCell(Change.SetCell set) {
        if (set.table() == Table.COLUMNS) {
            return false;
        }
        Optional<Col> col = model.columns.find(set.table(), set.name());
        boolean currency = set.table() == Table.PLAN && set.name().equals("currency");
        return col.isPresent()
                && !currency
                && model.cellVertices.containsKey(col.get())
                && !Model.isStructure(col.get().name.kind(), set.name());
    }

    private void edit(Change.SetCell set, Plan after) {
        Col col = model.columns.need(set.table(), set.name());
        int place = place(set);
        CellVertex vertex = model.filler.vertexOf(col);
        boolean bound = vertex.bound(place) != null;
        model.plan(after);
        model.filler.refill(col, place);
        boolean reorder = bound || vertex.bound(place) != null;
        if (reorder) {
            List<Col> before = model.answerColumns();
            model.order();
            if (!before.equals(model.answerColumns())) {
                rebuild(after);
                return;
            }
        }
        pass(model.given());
        boolean[] used = model.inUse();
        if (!Arrays.equals(used, model.used)) {
            rebuild(after);
            return;
        }
        List<Col> columns = model.answerColumns();
        for (Corner corner : kept.keySet()) {
            load(corner, columns);
            pass(model.answers());
            columns.forEach(c -> c.changed.clear());
        }
        load(looked, columns);
        model.given().forEach(v -> v.outs().forEach(c -> c.changed.clear()));
    }

    private void load(Corner corner, List<Col> columns) {
        model.corner.look(corner);
        double[][] answers = kept.get(corner);
        if (answers == null) {
            throw new IllegalStateException("corner not kept: " + corner);
        }
        for (int i = 0; i < answers.length; i++) {
            columns.get(i).v = answers[i];
        }
    }

    private static void pass(List<Vertex> vertices) {
        for (Vertex vertex : vertices) {
            vertex.some();
        }
    }

    private int place(Change.SetCell set) {
        if (set.table() == Table.PRACTICE) {
            return model.practice.place(set.id());
        }
        return set.table() == Table.PLAN ? 0 : model.plan().rows(set.table()).place(set.id());
    }

    /** Mistakes in cells and in who feeds whom; the same in every corner. */
    public List<Notice> notices() {
        List<Notice> all = new ArrayList<>(model.notices);
        all.addAll(model.filler.notices());
        all.addAll(model.loops());
        return all;
    }

    /** How many rows a table has; practice has one for every constant. */
    public int rows(Table table) {
        return model.layout.size(table);
    }

    /** The id of the row at a place. */
    public String id(Table table, int place) {
        return model.layout.id(model.layout.base(table) + place);
    }

    /** The names of a table's columns that have values, the plan's own ones last. */
    public List<Name> names(Table table) {
        List<Name> names = new ArrayList<>();
        model.columns.of(table).forEach(col -> names.add(col.name));
        return names;
    }

    /** The value of a name in the row at a place, in the corner looked at. */
    public Value value(Table table, int place, String name) {
        Col col = model.columns.need(table, name);
        Type type = model.names.type(col, col.base + place);
        return value(col.v[place], type, model.filler.unit(col, type));
    }

    private Value value(double inside, Type type, Unit unit) {
        if (Double.isNaN(inside)) {
            return new Value(inside, type, unit, "", Optional.of(model.faults.of(inside)));
        }
        String words = "";
        if (type instanceof Type.Choice choice) {
            words = choice.words().get((int) inside);
        } else if (type == Type.Plain.TEXT) {
            words = model.texts.text(inside);
        } else if (type instanceof Type.RowOf) {
            words = model.layout.id((int) inside);
        }
        return new Value(inside, type, unit, words, Optional.empty());
    }

    /** Fast reading of a column in the corner looked at: inside values by place, NaN where there is none. */
    public Figures figures(Table table, String name) {
        Col col = model.columns.need(table, name);
        return place -> col.v[place];
    }

    /** The fault behind a NaN of {@link #figures}. */
    public Fault fault(double value) {
        return model.faults.of(value);
    }

    Model model() {
        return model;
    }
}
