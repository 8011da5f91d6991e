package farwatt.window.grid;

import farwatt.catalogue.edit.Rename;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.quantity.Reader;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Texts put into cells: turned into the changes that make one step. */
final class CellWork {
    private final GridModel model;

    CellWork(GridModel model) {
        this.model = model;
    }

    /**
     * One text for one cell.
     *
     * @param place of the row in the plan
     */
    record Fill(int place, Column column, String text) {}

    /** What a text becomes in a cell; a bare number takes the column's unit. */
    Filled check(String id, Column column, String text) {
        if (text.isBlank()) {
            return new Filled(Optional.empty(), Optional.empty());
        }
        return model.sheet().check(model.table(), id, column.key(), withUnit(column, text));
    }

    private String withUnit(Column column, String text) {
        if (column.unit().isEmpty()) {
            return text;
        }
        Units units = new Units(model.shown().plan().currency());
        boolean bare = Reader.read(text, units, model.sheet().decimal())
                .filter(typed -> typed.unit().equals(Unit.ONE))
                .isPresent();
        return bare ? text.strip() + " " + column.unit() : text;
    }

    /**
     * Puts texts into cells as one step; nothing happens where all of them stand there already.
     *
     * @throws Refusal if a row cannot have the id it would get; nothing is changed then
     */
    void fill(String what, List<Fill> fills) throws Refusal {
        List<Change> changes = changes(fills);
        if (changes.size() == 1) {
            model.sheet().apply(what, changes.get(0));
        } else if (!changes.isEmpty()) {
            model.sheet().apply(what, new Change.Batch(what, changes));
        }
    }

    /** The changes that put texts into cells of rows that are there. */
    List<Change> changes(List<Fill> fills) throws Refusal {
        List<Change> changes = new ArrayList<>();
        Map<Integer, Row> twins = new LinkedHashMap<>();
        List<Fill> renames = new ArrayList<>();
        for (Fill fill : fills) {
            if (fill.column().tint() == Column.Tint.IDENTITY) {
                renames.add(fill);
            } else if (fill.column().tint().isTyped()) {
                set(fill, changes, twins);
            }
        }
        twins.forEach((place, row) -> changes.add(new Change.ReplaceRow(model.table(), place, row)));
        rename(renames, changes);
        return changes;
    }

    private void set(Fill fill, List<Change> changes, Map<Integer, Row> twins) {
        Table table = model.table();
        Rows rows = model.rows();
        Row row = twins.getOrDefault(fill.place(), rows.at(fill.place()));
        String key = fill.column().key();
        Optional<Cell> cell = check(row.id(), fill.column(), fill.text()).cell();
        if (cell.equals(row.cell(key))) {
            return;
        }
        if (table == Table.PLAN || rows.place(row.id()) == fill.place()) {
            changes.add(new Change.SetCell(table, row.id(), key, cell));
        } else {
            // a change names rows by id, and of two rows with one id it would find the first
            twins.put(fill.place(), cell.map(c -> row.with(key, c)).orElseGet(() -> row.without(key)));
        }
    }

    private void rename(List<Fill> renames, List<Change> changes) throws Refusal {
        Plan plan = model.shown().plan();
        boolean started = false;
        for (Fill fill : renames) {
            String to = fill.text().strip();
            if (!plan.rows(model.table()).at(fill.place()).id().equals(to)) {
                if (!started) {
                    plan = Edit.apply(plan, new Change.Batch("", changes)).plan();
                    started = true;
                }
                Change.Batch batch = Rename.of(
                        plan, model.table(), fill.place(), to, model.sheet().wording());
                plan = Edit.apply(plan, batch).plan();
                changes.addAll(batch.changes());
            }
        }
    }
}
