package farwatt.engine;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.language.Checked;
import farwatt.language.Column;
import farwatt.language.Expr;
import farwatt.language.Language;
import farwatt.language.Ref;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.quantity.Unit;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
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
    /** What the cells that name rows show, kept from still to still. */
    private final Map<Col, Value[]> rowWords = new HashMap<>();

    private Calculation(Plan plan) {
        model = build(plan);
    }

    /** Works out a plan, looking at the corner the plan names. */
    public static Calculation of(Plan plan) {
        return of(plan, Corner.of(plan.settings().text("corner")).orElse(Corner.MOST));
    }

    /** Works out a plan, looking at a corner. */
    public static Calculation of(Plan plan, Corner corner) {
        Calculation calculation = new Calculation(plan);
        calculation.look(corner);
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
        clear(columns);
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
            clear(model.givenColumns());
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
        rowWords.clear();
        model = build(plan);
        Corner now = looked;
        corners.stream().filter(corner -> corner != now).forEach(this::look);
        look(now);
    }

    /** True for a change of one cell that leaves what feeds what, and which names there are, as they were. */
    private boolean isCell(Change.SetCell set) {
        boolean need = set.table() == Table.NEEDS && set.name().equals("holds");
        if (set.table() == Table.COLUMNS || need) {
            return false;
        }
        if (set.table() == Table.PRACTICE && model.layout.practice(set.id()) < 0) {
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
        int place = place(set.table(), set.id());
        CellVertex vertex = model.filler.vertexOf(col);
        boolean bound = vertex.bound(place) != null;
        Type before = model.names.valueType(col.base + place);
        model.plan(after);
        model.filler.refill(col, place);
        Bound now = vertex.bound(place);
        boolean chained = set.table() == Table.VALUES
                && now != null
                && now.deps().stream().anyMatch(d -> d.col() == col);
        if (chained || !before.equals(model.names.valueType(col.base + place))) {
            // what uses the value was checked against its old type, and a loop of values has none
            rebuild(after);
            return;
        }
        boolean reorder = bound || vertex.bound(place) != null;
        if (reorder) {
            List<Col> answered = model.answerColumns();
            model.order();
            if (!answered.equals(model.answerColumns())) {
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
            clear(columns);
        }
        load(looked, columns);
        clear(model.givenColumns());
    }

    private static void clear(List<Col> columns) {
        for (int i = 0; i < columns.size(); i++) {
            columns.get(i).changed.clear();
        }
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

    /** The place of a row in its columns, −1 if there is none. */
    int place(Table table, String id) {
        if (table == Table.PRACTICE) {
            return model.practice.place(id);
        }
        return table == Table.PLAN ? 0 : model.plan().rows(table).place(id);
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

    /** True if a table has a column of that name with values. */
    public boolean has(Table table, String name) {
        return model.columns.find(table, name).isPresent();
    }

    /** The value of a name in the row at a place, in the corner looked at. */
    public Value value(Table table, int place, String name) {
        return valueOf(model.columns.need(table, name), place);
    }

    Value valueOf(Col col, int place) {
        if (col.name.kind() instanceof Kind.RowOf) {
            return row(col, place);
        }
        if (col.table == Table.PRACTICE) {
            Type type = new Types(model.units).of(model.filler.name(col, place).kind());
            return value(col.v[place], type, type.unit(model.units));
        }
        boolean own = col.table == Table.VALUES && col.key().equals("is");
        Type type = own ? model.names.valueType(col.base + place) : model.names.type(col);
        return value(col.v[place], type, model.filler.unit(col, type));
    }

    /** A cell that names a row stands as it is. */
    private Value row(Col col, int place) {
        String typed = model.plan().rows(col.table).at(place).text(col.key()).strip();
        int row = typed.isEmpty() ? -1 : model.layout.siteRow(typed);
        double inside = row >= 0 ? row : model.cells.empty(col, place);
        Value found = value(inside, model.names.type(col), Unit.ONE);
        return row >= 0 || typed.isEmpty() ? found : new Value(inside, found.type(), Unit.ONE, typed, found.fault());
    }

    /** Works out an expression that stands in no row, in the corner looked at. */
    public Answer ask(String text) {
        Checked checked = Language.check(
                Language.parse(text, model.units, Decimal.POINT), new PlanScope(model.names, "", ""), Wanted.ANY);
        if (!checked.problems().isEmpty()) {
            return new Answer(text, Optional.empty(), checked.problems());
        }
        Bound bound = model.compiler.look(text, "").orElseThrow();
        double inside = model.cells.ask(bound.planned().formula());
        return new Answer(text, Optional.of(value(inside, bound)), List.of());
    }

    /** The value of an expression that stands in no row as people read it. */
    Value value(double inside, Bound bound) {
        Type type = bound.planned().type();
        return value(inside, type, unit(bound.checked(), type));
    }

    /** A name keeps its column's unit; anything else is shown in the plainest one. */
    private Unit unit(Checked checked, Type type) {
        boolean name = checked.expr() instanceof Expr.Path || checked.expr() instanceof Expr.Name;
        if (name && !checked.known().isEmpty()) {
            Ref last = checked.known().get(checked.known().size() - 1).ref();
            Column column = last instanceof Ref.Reads reads
                    ? reads.column()
                    : last instanceof Ref.Cell cell ? cell.column() : null;
            if (column != null) {
                return model.filler.unit(CellReads.behind(column).get(0), type);
            }
        }
        return type.unit(model.units);
    }

    /**
     * Tells how an expression's value came about; empty if it cannot be understood, as {@link #ask} then says.
     *
     * @param deepest how many steps down it goes
     */
    public Optional<Explanation> explain(String text, int deepest) {
        Optional<Value> value = ask(text).value();
        Optional<Bound> bound = model.compiler.look(text, "");
        return bound.flatMap(b -> value.map(v -> new Explainer(this, deepest).explain(b, v)));
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

    /**
     * The row that a relation of a row leads to (run, feeder, from, to, zone, bundle); empty where it leads nowhere or
     * rows of the table have none of that name.
     */
    public Optional<Plan.Spot> related(Table table, int place, String relation) {
        return model.relations.spot(table, place, relation);
    }

    /** The zone a run is reckoned in: its own, else the hotter of its ends' in that corner. */
    public Optional<Plan.Spot> reckonedIn(int run, Corner corner) {
        int zone = model.air.zoneOfRun(model.layout.base(Table.RUNS) + run, corner);
        return zone < 0 ? Optional.empty() : Optional.of(model.layout.spot(zone));
    }

    /** All values as they stand now in the corner looked at. */
    public Still still() {
        return Still.of(this, rowWords);
    }

    Model model() {
        return model;
    }
}
