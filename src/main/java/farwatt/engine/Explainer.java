package farwatt.engine;

import farwatt.catalogue.Stage;
import farwatt.language.Language;
import farwatt.language.Uses;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;

/** Tells of any value how it came about, down to what a person typed or which table came in. */
final class Explainer {
    private static final int MOST_INPUTS = 24;
    private static final Properties INPUTS = load();

    private final Calculation calculation;
    private final Model model;
    private final Set<Cell> told = new HashSet<>();

    private final int deepest;

    private record Cell(Col col, int row) {}

    /** @param deepest how many steps down it goes */
    Explainer(Calculation calculation, int deepest) {
        this.calculation = calculation;
        this.deepest = deepest;
        model = calculation.model();
    }

    private static Properties load() {
        Properties inputs = new Properties();
        try (InputStream in = Explainer.class.getResourceAsStream("inputs.properties")) {
            if (in == null) {
                throw new IllegalStateException("no inputs.properties");
            }
            inputs.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return inputs;
    }

    /** An expression that stands in no row; one that only names a cell is that cell's. */
    Explanation explain(Bound bound, Value value) {
        List<Cell> cells = cells(bound.planned().uses(), 0);
        boolean names = cells.size() == 1 && isName(bound);
        if (names) {
            return explain(cells.get(0), 0);
        }
        return new Explanation(
                Language.print(bound.checked().expr()),
                said(value),
                Language.print(bound.checked().expr()),
                "",
                inputs(cells, 0),
                Math.max(0, cells.size() - MOST_INPUTS));
    }

    private static boolean isName(Bound bound) {
        return bound.checked().expr() instanceof farwatt.language.Expr.Path
                || bound.checked().expr() instanceof farwatt.language.Expr.Name;
    }

    private static String said(Value value) {
        return value.fault().map(Fault::text).orElseGet(value::text);
    }

    private List<Explanation> inputs(List<Cell> cells, int depth) {
        List<Explanation> inputs = new ArrayList<>();
        for (Cell cell : cells.subList(0, Math.min(MOST_INPUTS, cells.size()))) {
            inputs.add(explain(cell, depth + 1));
        }
        return inputs;
    }

    private Explanation explain(Cell cell, int depth) {
        Col col = cell.col();
        int place = cell.row() - col.base;
        String title = model.cells.place(col, place).text();
        String value = said(calculation.valueOf(col, place));
        if (told.contains(cell)) {
            return new Explanation(title, value, "told above", "", List.of(), 0);
        }
        if (depth < deepest) {
            told.add(cell);
        }
        if (col.maker instanceof GatherVertex gather) {
            List<Cell> over = new ArrayList<>();
            gather.reads(0, (c, row) -> over.add(new Cell(c, row)));
            return of(title, value, gather.plan().key(), "", over, depth);
        }
        CellVertex vertex = model.cellVertices.get(col);
        if (vertex != null) {
            return filledIn(vertex, cell, title, value, depth);
        }
        List<Cell> from = new ArrayList<>();
        if (col.maker instanceof FormulaVertex formula) {
            from.addAll(cells(formula.bound().planned().uses(), cell.row()));
        } else if (col.name.stage() == Stage.GIVEN) {
            model.vertexReads(col, cell.row(), (c, row) -> from.add(new Cell(c, row)));
        } else {
            from.addAll(listed(col, cell.row()));
        }
        return of(title, value, col.name.formula(), col.name.source(), from, depth);
    }

    private Explanation of(String title, String value, String how, String source, List<Cell> from, int depth) {
        List<Explanation> inputs = depth >= deepest ? List.of() : inputs(from, depth);
        int more = depth >= deepest ? 0 : from.size() - inputs.size();
        return new Explanation(title, value, how, source, inputs, more);
    }

    private Explanation filledIn(CellVertex vertex, Cell cell, String title, String value, int depth) {
        int place = cell.row() - vertex.out.base;
        Bound bound = vertex.bound(place);
        if (bound != null) {
            return of(title, value, bound.text(), "", cells(bound.planned().uses(), cell.row()), depth);
        }
        var name = model.filler.name(vertex.out, place);
        if (vertex.isEmpty(place)) {
            List<Cell> from = new ArrayList<>();
            vertex.reads(cell.row(), (c, row) -> from.add(new Cell(c, row)));
            String rule = name.fallback().rule();
            return of(title, value, rule.isEmpty() ? "nothing typed" : "default: " + rule, name.source(), from, depth);
        }
        Row row = model.filler.row(vertex.out, place);
        boolean typed = row.cell(vertex.out.key()).isPresent();
        String how = typed ? "typed: " + row.text(vertex.out.key()) : "default";
        String why = row.text("why");
        return new Explanation(
                title, value, why.isEmpty() ? how : how + " (" + why + ")", typed ? "" : name.source(), List.of(), 0);
    }

    private static List<Cell> cells(Uses uses, int row) {
        Set<Cell> found = new LinkedHashSet<>();
        CellReads.cells(uses, row, (col, at) -> found.add(new Cell(col, at)));
        return List.copyOf(found);
    }

    /** The inputs of an answer of the circuit, from the list that says what each is worked out from. */
    private List<Cell> listed(Col col, int row) {
        Set<Cell> found = new LinkedHashSet<>();
        String list = INPUTS.getProperty(col.table.key() + "." + col.key(), "");
        String kind = col.table == Table.PLAN ? "" : RowKinds.of(col.table);
        for (String text : list.split("\\|", -1)) {
            if (!text.isBlank()) {
                model.compiler
                        .look(text.strip(), kind)
                        .ifPresent(bound -> cells(bound.planned().uses(), row).stream()
                                .filter(this::counts)
                                .forEach(found::add));
            }
        }
        return List.copyOf(found);
    }

    /** A cell that was left empty and has no default says nothing. */
    private boolean counts(Cell cell) {
        double value = cell.col().v[cell.row() - cell.col().base];
        return !Double.isNaN(value) || model.faults.of(value).kind() != Fault.Kind.EMPTY;
    }
}
