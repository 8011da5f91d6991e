package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.CellReader;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.Reading;
import farwatt.catalogue.Stage;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the cells of a plan into columns: literals at once, expressions through the compiler, mistakes as notices. */
final class CellFiller {
    private final Model model;
    private final Map<Name, CellReader> readers = new HashMap<>();
    private final Types types;
    /** Notices by the cell they speak of, so that an edit takes back what it mended. */
    private final Map<Place, List<Notice>> said = new HashMap<>();

    private final CellVertex typedClass;

    CellFiller(Model model) {
        this.model = model;
        typedClass = new CellVertex(model.columns.inside(Table.DEVICES, "class_typed"), model.cells, null, List.of());
        types = new Types(model.units);
    }

    CellVertex vertexOf(Col col) {
        CellVertex vertex = model.cellVertices.get(col);
        if (vertex == null) {
            throw new IllegalArgumentException("not filled in: " + col.key());
        }
        return vertex;
    }

    /** What is wrong with cells now. */
    List<Notice> notices() {
        return said.values().stream().flatMap(List::stream).toList();
    }

    /** The column of classes typed on devices. */
    Col typedClass() {
        return typedClass.out;
    }

    void fillAll(GivenRules rules) {
        model.cellVertices.put(typedClass.out, typedClass);
        // first, so that every other cell finds the types of the values it uses
        vertex(model.columns.need(Table.VALUES, "is"), null);
        new ValueOrder(model).fill(this);
        for (Table table : Table.values()) {
            for (Col col : model.columns.of(table)) {
                if (col.name.stage() == Stage.GIVEN && !(col.name.kind() instanceof Kind.RowOf)) {
                    GivenRules.Given given = rules.of(col).orElse(null);
                    boolean elsewhere = (table == Table.VALUES && col.key().equals("is"))
                            || (table == Table.NEEDS && col.key().equals("holds"));
                    if (!elsewhere) {
                        vertex(col, given);
                    }
                }
            }
        }
    }

    private void vertex(Col col, GivenRules.@org.jspecify.annotations.Nullable Given given) {
        CellVertex vertex = given == null
                ? new CellVertex(col, model.cells, null, List.of())
                : new CellVertex(col, model.cells, given.rule(), given.deps());
        model.cellVertices.put(col, vertex);
        if (col.table == Table.VALUES && col.key().equals("is")) {
            return;
        }
        for (int place = 0; place < col.v.length; place++) {
            fill(col, place);
        }
    }

    /** The row of the plan behind a place of a column. */
    Row row(Col col, int place) {
        if (col.table != Table.PRACTICE) {
            return model.plan().rows(col.table).at(place);
        }
        String constant = model.layout.id(col.base + place);
        return model.plan()
                .rows(Table.PRACTICE)
                .row(constant)
                .filter(row -> row.id().equals(constant))
                .orElse(Row.of(constant));
    }

    /** The unit in which a column's values are shown. */
    Unit unit(Col col, Type type) {
        boolean has = col.name.kind() instanceof Kind.Quantity q && !q.symbol().isEmpty();
        return has ? ((Kind.Quantity) col.name.kind()).unit(model.units) : type.unit(model.units);
    }

    /** The name that a cell goes by; every constant of practice has its own. */
    Name name(Col col, int place) {
        return col.table == Table.PRACTICE
                ? Catalogue.need(Table.PRACTICE, model.layout.id(col.base + place))
                : col.name;
    }

    /** Reads an edited cell again. */
    void refill(Col col, int place) {
        if (col.table == Table.VALUES && col.key().equals("is")) {
            new ValueOrder(model).fill(this, place);
        } else {
            fill(col, place);
        }
    }

    /** Reads one cell into its column. */
    void fill(Col col, int place) {
        CellVertex vertex = vertexOf(col);
        Row row = row(col, place);
        Name name = name(col, place);
        Optional<Cell> cell = row.cell(col.key());
        Place where = model.cells.place(col, place);
        said.remove(where);
        if (cell.isEmpty() || cell.get().text().isBlank()) {
            empty(vertex, name, place);
        } else {
            put(vertex, name, place, reading(name, row.id(), cell.get()), where);
        }
        mirror(vertex, place);
    }

    private void empty(CellVertex vertex, Name name, int place) {
        String literal = name.fallback().literal();
        if (name.kind() instanceof Kind.Text) {
            vertex.literal(place, model.texts.number(literal));
        } else if (literal.isEmpty()) {
            vertex.clear(place);
        } else {
            put(vertex, name, place, reader(name).read("", Cell.text(literal)), Place.NONE);
        }
    }

    Reading reading(Name name, String row, Cell cell) {
        return reader(name).read(row, cell);
    }

    private CellReader reader(Name name) {
        return readers.computeIfAbsent(name, n -> CellReader.of(n, model.units));
    }

    private void put(CellVertex vertex, Name name, int place, Reading reading, Place where) {
        if (reading instanceof Reading.Literal literal) {
            literal.notice().ifPresent(n -> say(where, List.of(new Notice(n.level(), n.code(), where, n.text()))));
            vertex.literal(place, literal.inside());
        } else if (reading instanceof Reading.Word word) {
            vertex.literal(place, word.index());
        } else if (reading instanceof Reading.YesNo yesNo) {
            vertex.literal(place, yesNo.yes() ? 1 : 0);
        } else if (reading instanceof Reading.TextValue text) {
            vertex.literal(place, model.texts.number(text.text()));
        } else if (reading instanceof Reading.Expression expression) {
            String kind = vertex.out.table.isSite() ? RowKinds.of(vertex.out.table) : "";
            expression(vertex, place, expression.text(), kind, types.wanted(name.kind()), where);
        } else if (reading instanceof Reading.Wrong wrong) {
            wrong(vertex, place, where, wrong.notice());
        } else {
            empty(vertex, name, place);
        }
    }

    /** Puts a value into a cell in which a literal stands already; the same as reading it from a text. */
    void put(Col col, int place, double inside) {
        col.v[place] = inside;
        if (isMirrored(col)) {
            typedClass.out.v[place] = inside;
        }
    }

    /** True for a column that {@link #typedClass()} follows. */
    static boolean isMirrored(Col col) {
        return col.table == Table.DEVICES && col.key().equals("class");
    }

    /** The fault of a literal that the column cannot hold; empty if it can. */
    Optional<Double> broken(Col col, int place, Cell cell) {
        Row row = row(col, place);
        if (!(reading(name(col, place), row.id(), cell) instanceof Reading.Wrong wrong)) {
            return Optional.empty();
        }
        Place where = model.cells.place(col, place);
        Notice notice = wrong.notice();
        say(where, List.of(new Notice(notice.level(), notice.code(), where, notice.text())));
        double fault = unreadable(where);
        said.remove(where);
        return Optional.of(fault);
    }

    /** Says what is wrong with a cell and makes it a fault. */
    void wrong(CellVertex vertex, int place, Place where, Notice notice) {
        say(where, List.of(new Notice(notice.level(), notice.code(), where, notice.text())));
        vertex.literal(place, unreadable(where));
    }

    /** Puts an expression into a cell; what is wrong with it is said and makes the cell a fault. */
    Optional<Bound> expression(CellVertex vertex, int place, String text, String kind, Wanted wanted, Place where) {
        Stage latest = vertex.out.table == Table.NEEDS ? Stage.DERIVED : Stage.GIVEN;
        Compiler.Result result = model.compiler.compile(text, kind, wanted, latest, where);
        if (result.bound().isPresent()) {
            vertex.formula(place, result.bound().get());
        } else {
            say(where, result.notices());
            if (latest == Stage.GIVEN) {
                vertex.literal(place, unreadable(where));
            } else {
                // what stands among the answers is worked out for every corner anew
                vertex.formula(place, model.compiler.broken(text, kind, wanted, unreadable(where)));
            }
        }
        return result.bound();
    }

    /** Reads a need's condition. */
    void need(CellVertex vertex, int place) {
        Place where = model.cells.place(vertex.out, place);
        said.remove(where);
        String text = row(vertex.out, place).text("holds");
        if (text.isBlank()) {
            vertex.clear(place);
        } else {
            expression(vertex, place, text, "", Wanted.a(Type.Plain.YES_NO), where);
        }
    }

    void say(Place where, List<Notice> notices) {
        if (notices.isEmpty()) {
            said.remove(where);
        } else {
            said.put(where, notices);
        }
    }

    private double unreadable(Place where) {
        List<Notice> why = said.getOrDefault(where, List.of());
        String text =
                why.isEmpty() ? where.text() : where.text() + ": " + why.get(0).text();
        return model.faults.raise(new Fault(Fault.Kind.UNREADABLE, where, text));
    }

    /** Keeps the class that was typed, apart from the one a draw leads to. */
    private void mirror(CellVertex vertex, int place) {
        if (isMirrored(vertex.out)) {
            typedClass.copy(vertex, place);
        }
    }
}
