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
import java.util.List;
import java.util.Optional;

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
            } else if (Catalogue.find(table.get(), row.id()).isPresent()) {
                say(EngineCode.NAME_TAKEN, place, row.id());
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

    /** Makes expressions ready; one whose type follows from another's is tried again once that is known. */
    void derive() {
        List<Derived> waiting = new ArrayList<>(derived);
        int before = waiting.size() + 1;
        while (!waiting.isEmpty() && waiting.size() < before) {
            before = waiting.size();
            waiting.removeIf(each -> {
                boolean typed = each.unit().isPresent() || !mentionsUntyped(each, waiting);
                return typed && compile(each);
            });
        }
        waiting.forEach(this::compile);
        needs();
        plan();
    }

    private static boolean mentionsUntyped(Derived each, List<Derived> waiting) {
        return waiting.stream()
                .anyMatch(other -> other.unit().isEmpty()
                        && !other.equals(each)
                        && each.row().text("is").contains(other.row().id()));
    }

    private boolean compile(Derived each) {
        Wanted wanted = each.unit().map(Wanted::in).orElse(Wanted.ANY);
        String text = each.row().text("is");
        Compiler.Result result =
                model.compiler.compile(text, RowKinds.of(each.col().table), wanted, Stage.DERIVED, each.place());
        if (result.bound().isPresent()) {
            Bound bound = result.bound().get();
            model.names.ownType(each.col(), bound.planned().type());
            vertices.add(new FormulaVertex(each.col(), bound, model.cells));
        } else {
            model.notices.addAll(result.notices());
            String why = each.place().text() + ": " + result.notices().get(0).text();
            double fault = model.faults.raise(new Fault(Fault.Kind.UNREADABLE, each.place(), why));
            vertices.add(new RuleVertex(each.col(), place -> fault, List.of()));
        }
        return true;
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
