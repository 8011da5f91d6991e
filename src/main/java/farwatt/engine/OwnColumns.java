package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.Stage;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Columns of a person's own, and needs: what is derived from everything else. */
final class OwnColumns {
    /** What stands as the source of a column of a person's own. */
    static final String SOURCE = "a column of this plan";

    private final Model model;
    private final List<Derived> derived = new ArrayList<>();
    private final List<Vertex> vertices = new ArrayList<>();

    private record Derived(Row row, Col col, Optional<Unit> unit, Place place) {}

    OwnColumns(Model model) {
        this.model = model;
    }

    List<Vertex> vertices() {
        return vertices;
    }

    /** Makes the columns known; input columns are then filled like any other. */
    void declare() {
        for (Row row : model.plan().rows(Table.COLUMNS)) {
            Place place = new Place(Table.COLUMNS.key(), "", row.id());
            Optional<Table> table = Table.of(row.text("table")).filter(Table::isSite);
            if (table.isEmpty()) {
                say(EngineCode.UNKNOWN_TABLE, place, row.text("table"));
            } else if (Catalogue.find(table.get(), row.id()).isPresent()
                    || model.relations.of(table.get(), row.id()).isPresent()) {
                say(EngineCode.COLUMN_TAKEN, place, row.id(), table.get().key());
            } else if (model.columns.find(table.get(), row.id()).isPresent()) {
                say(EngineCode.DUPLICATE_ID, place, row.id(), table.get().key());
            } else {
                declare(row, table.get(), place);
            }
        }
    }

    private void say(EngineCode code, Place place, Object... parts) {
        model.notices.add(Notice.of(Level.FAIL, code, place, parts));
    }

    private void declare(Row row, Table table, Place place) {
        Optional<Unit> unit = model.units.of(row.text("unit"));
        if (unit.isEmpty()) {
            say(EngineCode.UNKNOWN_UNIT, place, row.text("unit"));
        }
        boolean input = row.text("is").isBlank();
        Kind kind = switch (row.text("kind")) {
            case "text" -> new Kind.Text();
            case "yes/no" -> new Kind.YesNo();
            default -> new Kind.Quantity(unit.map(Unit::symbol).orElse(""));
        };
        Name name = new Name(
                table,
                row.id(),
                kind,
                input ? Stage.GIVEN : Stage.DERIVED,
                Name.Fallback.NONE,
                Optional.empty(),
                row.text("note"),
                row.text("is"),
                SOURCE);
        Col col = model.columns.add(name);
        if (!input) {
            boolean said = row.cell("unit").isPresent() && unit.isPresent();
            model.names.ownType(col, said ? Type.of(unit.get()) : Type.Plain.UNKNOWN);
            derived.add(new Derived(row, col, said ? unit : Optional.empty(), place));
        }
    }

    /** Makes expressions ready, each after those whose types it needs. */
    void derive() {
        new Strong(derived.size()) {
            @Override
            int[] reads(int column) {
                return untypedIn(derived.get(column));
            }

            @Override
            void found(int[] set, boolean loops) {
                List<Derived> columns =
                        Arrays.stream(set).mapToObj(derived::get).toList();
                while (learn(columns) && loops) {
                    // a name may look like a column's without being it, so a loop of names need not be one of columns
                }
                columns.forEach(OwnColumns.this::add);
            }
        }.run();
        needs();
        plan();
    }

    /** Columns whose type follows from an expression and whose names a text mentions. */
    private int[] untypedIn(Derived column) {
        Set<String> names = Compiler.mentioned(column.row().text("is"), model.units);
        return IntStream.range(0, derived.size())
                .filter(other -> derived.get(other).unit().isEmpty()
                        && names.contains(derived.get(other).row().id()))
                .toArray();
    }

    /** Finds out the types of columns that name each other; true if one is another than was known. */
    private boolean learn(List<Derived> columns) {
        boolean learnt = false;
        for (Derived each : columns) {
            Type before = model.names.type(each.col());
            Type now =
                    compile(each).bound().map(bound -> bound.planned().type()).orElse(Type.Plain.UNKNOWN);
            if (each.unit().isEmpty() && !now.equals(before)) {
                model.names.ownType(each.col(), now);
                learnt = true;
            }
        }
        return learnt;
    }

    private Compiler.Result compile(Derived each) {
        Wanted wanted = each.unit().map(Wanted::in).orElse(Wanted.ANY);
        String kind = RowKinds.of(each.col().table);
        return model.compiler.compile(each.row().text("is"), kind, wanted, Stage.DERIVED, each.place());
    }

    private void add(Derived each) {
        Compiler.Result result = compile(each);
        if (result.bound().isEmpty()) {
            model.notices.addAll(result.notices());
            String why = each.place().text() + ": " + result.notices().get(0).text();
            double fault = model.faults.raise(new Fault(Fault.Kind.UNREADABLE, each.place(), why));
            vertices.add(new RuleVertex(each.col(), place -> fault, List.of()));
            return;
        }
        Bound bound = result.bound().get();
        if (bound.planned().formula() instanceof Waiting waiting) {
            CellReads.behind(waiting.column()).stream()
                    .filter(this::isOpen)
                    .findFirst()
                    .ifPresent(on ->
                            say(EngineCode.UNTYPED, each.place(), each.place().text(), on.key()));
        }
        vertices.add(new FormulaVertex(each.col(), bound, model.cells));
    }

    /** True for an own column whose expression is sound and whose type nobody knows all the same. */
    private boolean isOpen(Col col) {
        return derived.stream()
                .anyMatch(each -> each.col().equals(col)
                        && each.unit().isEmpty()
                        && compile(each).bound().isPresent());
    }

    private void needs() {
        Col holds = model.columns.need(Table.NEEDS, "holds");
        CellVertex vertex = new CellVertex(holds, model.cells, null, List.of());
        model.cellVertices.put(holds, vertex);
        model.names.ownType(holds, Type.Plain.YES_NO);
        for (int place = 0; place < holds.v.length; place++) {
            model.filler.need(vertex, place);
        }
        vertices.add(vertex);
    }

    /** Sums for the plan as a whole stand in the catalogue as expressions of our own language. */
    private void plan() {
        for (String key : List.of("lost", "sent", "mains", "least_headroom", "cable_length")) {
            Col col = model.columns.need(Table.PLAN, key);
            Place place = new Place(Table.PLAN.key(), "", key);
            Wanted wanted = new Types(model.units).wanted(col.name.kind());
            Bound bound = model.compiler
                    .compile(col.name.formula(), "", wanted, Stage.DERIVED, place)
                    .bound()
                    .orElseThrow();
            vertices.add(new FormulaVertex(col, bound, model.cells));
        }
    }
}
