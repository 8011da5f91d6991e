package farwatt.window.grid;

import farwatt.catalogue.edit.Rename;
import farwatt.language.Completion;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The form for a column of the person's own, new or changed: what it holds, what is wrong with it, what it makes. */
final class OwnColumn {
    /** What a column can hold, as the plan names it. */
    static final List<String> KINDS = List.of("quantity", "yes/no", "text");

    private final GridModel model;
    private final Optional<Row> before;
    private String name;
    private String kind;
    private String unit;
    private String expression;

    /** @param before the column as it is; empty for a new one */
    OwnColumn(GridModel model, Optional<Row> before) {
        this.model = model;
        this.before = before;
        name = before.map(Row::id).orElse("");
        kind = before.map(row -> row.text("kind")).filter(k -> !k.isEmpty()).orElse(KINDS.get(0));
        unit = before.map(row -> row.text("unit")).orElse("");
        expression = before.map(row -> row.text("is")).orElse("");
    }

    boolean isNew() {
        return before.isEmpty();
    }

    String name() {
        return name;
    }

    String kind() {
        return kind;
    }

    String unit() {
        return unit;
    }

    String expression() {
        return expression;
    }

    void fill(String newName, String newKind, String newUnit, String newExpression) {
        name = newName.strip();
        kind = newKind;
        unit = newUnit.strip();
        expression = newExpression.strip();
    }

    /** What may stand at a place of the expression. */
    Completion complete(String text, int caret) {
        return model.sheet().complete(model.table(), "", "", text, caret);
    }

    /** What is wrong with the form as it is filled; empty where the column can be made. */
    Optional<Notice> notice() {
        if (!StepPath.isName(name)) {
            return wrong(GridCode.OWN_NO_NAME, name);
        }
        boolean same = before.filter(row -> row.id().equals(name)).isPresent();
        boolean taken = model.columnSet().all().stream().anyMatch(c -> c.key().equals(name));
        if (taken && !same) {
            return wrong(GridCode.OWN_TAKEN, name);
        }
        Units units = new Units(model.shown().plan().currency());
        if (isQuantity() && units.of(unit).isEmpty()) {
            return wrong(GridCode.OWN_BAD_UNIT, unit, units.near(unit).orElse("W"));
        }
        return model.sheet().checkColumn(row());
    }

    private Optional<Notice> wrong(GridCode code, Object... parts) {
        return Optional.of(Notice.of(Level.FAIL, code, Place.row(Table.COLUMNS.key(), name), parts));
    }

    private boolean isQuantity() {
        return kind.equals(KINDS.get(0));
    }

    /** The row of the plan that makes the column. */
    Row row() {
        Row row = before.map(r -> r.renamed(name)).orElseGet(() -> Row.of(name));
        row = row.with("table", model.table().key());
        row = isQuantity() ? row.without("kind") : row.with("kind", kind);
        row = expression.isEmpty() ? row.without("is") : row.with("is", Cell.text(canonical()));
        return isQuantity() && !unit.isEmpty() ? row.with("unit", unit) : row.without("unit");
    }

    private String canonical() {
        return model.sheet().wording().canonical(expression, model.sheet().decimal());
    }

    /** Makes or changes the column as one step. False where something is wrong with it. */
    boolean apply() {
        Optional<Notice> wrong = notice().filter(n -> n.level() == Level.FAIL);
        if (wrong.isPresent()) {
            return false;
        }
        try {
            Change change = before.isPresent() ? changed(before.get()) : added();
            GridCode code = isNew() ? GridCode.OWN_ADDED : GridCode.OWN_CHANGED;
            model.sheet().apply(Messages.text(code, name), change);
        } catch (Refusal refused) {
            model.sheet().say(refused.notice());
            return false;
        }
        int at = model.columnSet().indexOf(name);
        if (at >= 0) {
            model.pick(model.range().row(), at);
        }
        return true;
    }

    private Change added() {
        return new Change.AddRow(
                Table.COLUMNS, model.shown().plan().rows(Table.COLUMNS).size(), row());
    }

    private Change changed(Row old) throws Refusal {
        int place = place(old);
        List<Change> changes = new ArrayList<>();
        changes.add(new Change.ReplaceRow(Table.COLUMNS, place, row().renamed(old.id())));
        if (!old.id().equals(name)) {
            Plan now = Edit.apply(model.shown().plan(), changes.get(0)).plan();
            changes.addAll(
                    Rename.of(now, Table.COLUMNS, place, name, model.sheet().wording())
                            .changes());
        }
        return new Change.Batch(Messages.text(GridCode.OWN_CHANGED, name), changes);
    }

    private int place(Row old) {
        int at = 0;
        while (!model.shown().plan().rows(Table.COLUMNS).at(at).equals(old)) {
            at++;
        }
        return at;
    }
}
