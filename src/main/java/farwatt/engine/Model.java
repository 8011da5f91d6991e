package farwatt.engine;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Stage;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One plan made ready to be calculated: rows numbered, trees found, every column with what fills it, in the order in
 * which they can be worked out. What is given stands before what the circuit answers.
 */
final class Model {
    private Plan plan;
    final Layout layout;
    final Faults faults;
    final Texts texts = new Texts();
    final Units units;
    final Columns columns;
    final Practice practice;
    final Topology topology;
    final Relations relations;
    final Site site;
    final Air air;
    final Inside inside;
    final Cells cells;
    final Names names;
    final Compiler compiler;
    final AnswerCorner corner = new AnswerCorner();
    final List<Notice> notices = new ArrayList<>();
    final CellFiller filler;
    final Flattener flattener;
    final AnswerWriter writer;
    final Solving solving;
    final Map<Col, CellVertex> cellVertices = new LinkedHashMap<>();
    final boolean[] used;
    private final List<Vertex> vertices = new ArrayList<>();
    private List<Vertex> given = List.of();
    private List<Vertex> answers = List.of();
    private List<Col> givenColumns = List.of();
    private List<Col> answerColumns = List.of();

    /** @param used by row: what is taken to be in use; found out by {@link #inUse()} afterwards */
    Model(Plan plan, Layout layout, boolean[] used) {
        this.plan = plan;
        this.layout = layout;
        this.used = used;
        faults = new Faults(layout);
        units = new Units(plan.currency());
        columns = new Columns(layout, faults);
        practice = new Practice(layout, columns);
        new Duplicates(plan, notices).find();
        RowCells rows = new RowCells(layout, plan, faults, notices);
        int[] from = rows.ends("from");
        int[] to = rows.ends("to");
        int[] zoneOf = rows.named("zone", Table.ZONES, used);
        int[] bundleOf = rows.named("bundle", Table.BUNDLES, used);
        topology = new Topology(layout, faults, used, from, to, rows.slips);
        relations = new Relations(layout, topology, faults, zoneOf, bundleOf);
        site = new Site(layout, topology, bundleOf);
        air = new Air(layout, columns, topology, zoneOf);
        inside = new Inside(layout, columns, topology, relations, faults, practice);
        cells = new Cells(layout, faults, units);
        Map<Table, farwatt.language.RowSet> sets = new EnumMap<>(Table.class);
        for (Table table : Table.site()) {
            sets.put(table, new TableRows(layout, topology, table));
        }
        names = new Names(layout, columns, texts, units, faults, relations, sets);
        compiler = new Compiler(names, faults, cells);
        filler = new CellFiller(this);
        notices.addAll(topology.notices());
        BundleShapes shapes = new BundleShapes(layout, columns, practice, site.members);
        flattener = new Flattener(layout, columns, topology, inside, faults, practice, air, shapes, bundleOf);
        writer = new AnswerWriter(layout, columns, topology, faults, texts);
        solving = new Solving(
                layout,
                columns,
                topology,
                site,
                flattener,
                new GrantOrder(layout, columns, topology, inside),
                writer,
                air,
                Solving.reads(columns, inside, practice),
                corner);
        fill();
    }

    private void fill() {
        OwnColumns own = new OwnColumns(this);
        own.declare();
        filler.fillAll(new GivenRules(columns, faults, filler.typedClass(), inside, topology, relations));
        cellVertices.values().forEach(vertices::add);
        vertices.addAll(inside.vertices);
        vertices.add(solving);
        vertices.addAll(new TreeRules(layout, columns, topology, faults).vertices(inside, relations, practice));
        vertices.addAll(new SourceSide(columns, faults, practice, air, corner).vertices(relations));
        vertices.addAll(new RunRules(columns, practice).vertices());
        vertices.addAll(new AsBuilt(this).vertices());
        vertices.addAll(new PlanRules(layout, columns, topology, faults).vertices());
        own.derive();
        vertices.addAll(own.vertices());
        order();
    }

    /** Puts everything in order; to be called again when an expression changed. */
    void order() {
        cellVertices.values().forEach(CellVertex::settle);
        List<Vertex> all = new ArrayList<>(vertices);
        all.addAll(compiler.gathers());
        Set<Col> answered = new HashSet<>();
        given = new ArrayList<>();
        answers = new ArrayList<>();
        for (Vertex vertex : Order.of(all, layout, faults)) {
            boolean late = vertex.deps().stream().anyMatch(dep -> answered.contains(dep.col()))
                    || vertex.outs().stream().anyMatch(col -> col.name.stage() != Stage.GIVEN);
            (late ? answers : given).add(vertex);
            if (late) {
                answered.addAll(vertex.outs());
            }
        }
        givenColumns = outs(given);
        answerColumns = outs(answers);
    }

    private static List<Col> outs(List<Vertex> vertices) {
        return vertices.stream().flatMap(vertex -> vertex.outs().stream()).toList();
    }

    Plan plan() {
        return plan;
    }

    /** Takes a plan that differs in cells only. */
    void plan(Plan other) {
        plan = other;
    }

    List<Vertex> given() {
        return given;
    }

    List<Vertex> answers() {
        return answers;
    }

    /** Columns that are the same in every corner. */
    List<Col> givenColumns() {
        return givenColumns;
    }

    /** Columns that depend on the corner looked at. */
    List<Col> answerColumns() {
        return answerColumns;
    }

    /** By row: whether it is in use by what its cell says; a cell without a value counts as yes. */
    boolean[] inUse() {
        boolean[] now = new boolean[layout.rows()];
        Arrays.fill(now, true);
        for (Table table : Table.site()) {
            Col col = columns.need(table, "in_use");
            for (int place = 0; place < col.v.length; place++) {
                now[col.base + place] = col.v[place] != 0;
            }
        }
        return now;
    }

    /** Loops found in the last calculation. */
    List<Notice> loops() {
        List<Notice> all = new ArrayList<>();
        for (List<Vertex> half : List.of(given, answers)) {
            for (Vertex vertex : half) {
                if (vertex instanceof Tangle tangle) {
                    all.addAll(tangle.notices());
                }
            }
        }
        return all;
    }

    /** Visits the cells that an inner column's row reads. */
    void vertexReads(Col col, int row, CellReads.Visitor visitor) {
        if (col.maker != null) {
            col.maker.reads(row, visitor);
        }
    }

    /** True for a column whose cells name rows: a change of one changes what feeds what. */
    static boolean isStructure(Kind kind, String key) {
        return kind instanceof Kind.RowOf || key.equals("in_use");
    }
}
