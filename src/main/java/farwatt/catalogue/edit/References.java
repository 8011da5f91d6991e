package farwatt.catalogue.edit;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.CellReader;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.OwnColumns;
import farwatt.catalogue.Wording;
import farwatt.catalogue.Wording.Renaming;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds where a row, value or own column is named and puts another name there. Which cells name rows and which hold
 * expressions goes by the catalogue; expressions themselves are the wording's.
 */
final class References {
    /** How a cell may name something. */
    private enum Sort {
        ROW,
        EXPRESSION,
        NEITHER
    }

    private final Plan plan;
    private final OwnColumns own;
    private final Wording wording;
    private final Renaming renaming;
    private final boolean site;
    private final String folded;
    private final String quoted;
    private final Map<String, Sort> sorts = new HashMap<>();

    References(Plan plan, Wording wording, Renaming renaming) {
        this.plan = plan;
        this.own = OwnColumns.of(plan);
        this.wording = wording;
        this.renaming = renaming;
        this.site = renaming.of().isSite();
        this.folded = Rows.fold(renaming.from());
        this.quoted = folded.replace("'", "''");
    }

    /** The row with every cell under the new name; an equal row where none names it. */
    Row row(Table table, Row row) {
        List<Cell> cells = new ArrayList<>();
        boolean[] changed = {false};
        row.forEach((name, cell) -> {
            Cell now = cell(table, name, cell);
            changed[0] |= !now.equals(cell);
            cells.add(now);
        });
        Row renamed = changed[0] ? Row.of(row.id(), row.names(), cells) : row;
        boolean column = renaming.of() == Table.COLUMNS && own.of(table).containsKey(renaming.from());
        return column ? renamed.withName(renaming.from(), renaming.to()) : renamed;
    }

    /** The names of the cells of a row that name it. */
    List<String> cells(Table table, Row row) {
        List<String> found = new ArrayList<>();
        row.forEach((name, cell) -> {
            if (!cell(table, name, cell).equals(cell)) {
                found.add(name);
            }
        });
        return found;
    }

    Scenario scenario(Scenario scenario) {
        List<Step> steps = scenario.steps().stream().map(this::step).toList();
        return steps.equals(scenario.steps())
                ? scenario
                : new Scenario(scenario.id(), scenario.on(), steps, scenario.rest());
    }

    private Step step(Step step) {
        if (step instanceof Step.Set set) {
            return new Step.Set(path(set.path()), setCell(set), set.rest());
        }
        if (step instanceof Step.Add add) {
            return Table.of(add.table())
                    .<Step>map(table -> new Step.Add(add.table(), row(table, add.row()), add.rest()))
                    .orElse(add);
        }
        if (step instanceof Step.Drop drop && site && isIt(drop.id())) {
            return new Step.Drop(renaming.to(), drop.rest());
        }
        return step;
    }

    private String path(String text) {
        Optional<StepPath> path = StepPath.of(text);
        if (path.isEmpty()) {
            return text;
        }
        String row = path.get().row();
        String name = path.get().name();
        if (site) {
            return !row.isEmpty() && isIt(row) ? new StepPath(renaming.to(), name).text() : text;
        }
        boolean bare = renaming.of() == Table.VALUES && row.isEmpty();
        boolean column = renaming.of() == Table.COLUMNS
                && table(path.get()).filter(t -> own.of(t).containsKey(name)).isPresent();
        return name.equals(renaming.from()) && (bare || column) ? new StepPath(row, renaming.to()).text() : text;
    }

    private Cell setCell(Step.Set set) {
        Optional<StepPath> path = StepPath.of(set.path());
        Table table = path.flatMap(this::table).orElse(Table.PLAN);
        return path.map(p -> table == Table.PLAN && isValue(p)
                        ? expression(table, set.to())
                        : cell(table, p.name(), set.to()))
                .orElse(set.to());
    }

    /** True for a value or a constant: an expression, where a setting of the plan goes by its column. */
    private boolean isValue(StepPath path) {
        return plan.rows(Table.VALUES).place(path.name()) >= 0
                || Catalogue.find(Table.PLAN, path.name()).isEmpty();
    }

    /** The table of the row that a path names: on the site, or added by a scenario. */
    private Optional<Table> table(StepPath path) {
        if (path.row().isEmpty()) {
            return Optional.of(Table.PLAN);
        }
        Optional<Table> onSite = plan.find(path.row()).map(Plan.Spot::table);
        return onSite.isPresent() ? onSite : addedTo(path.row());
    }

    private Optional<Table> addedTo(String id) {
        for (Scenario scenario : plan.scenarios()) {
            for (Step step : scenario.steps()) {
                if (step instanceof Step.Add add && Rows.fold(add.row().id()).equals(Rows.fold(id))) {
                    return Table.of(add.table());
                }
            }
        }
        return Optional.empty();
    }

    private Cell cell(Table table, String name, Cell cell) {
        return switch (sorts.computeIfAbsent(table.key() + "." + name, key -> sort(table, name))) {
            case ROW -> site && isIt(cell.text()) ? Cell.text(renaming.to()) : cell;
            case EXPRESSION -> expression(table, cell);
            case NEITHER -> cell;
        };
    }

    private Cell expression(Table table, Cell cell) {
        if (cell.form() != Cell.Form.TEXT || !Rows.fold(cell.text()).contains(quoted)) {
            return cell;
        }
        String text = wording.renamed(table, cell.text(), renaming);
        return text.equals(cell.text()) ? cell : Cell.text(text);
    }

    private Sort sort(Table table, String name) {
        Name found = own.of(table).get(name);
        if (found == null) {
            found = Catalogue.cells(table).stream()
                    .filter(n -> n.key().equals(name))
                    .findFirst()
                    .orElse(null);
        }
        if (found == null) {
            return Sort.NEITHER;
        }
        if (found.kind() instanceof Kind.RowOf) {
            return Sort.ROW;
        }
        boolean text = found.kind() instanceof Kind.Text && !CellReader.EXPRESSIONS.contains(found.path());
        return text ? Sort.NEITHER : Sort.EXPRESSION;
    }

    private boolean isIt(String id) {
        return Rows.fold(id).equals(folded);
    }
}
