package farwatt.window.grid;

import farwatt.catalogue.Wording;
import farwatt.language.Completion;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Very many rows and sixty columns, with values that cost nothing. */
final class LongSheet implements Sheet, Shown {
    private final List<Column> columns = new ArrayList<>();
    private final List<Runnable> watchers = new ArrayList<>();
    private Plan plan;

    LongSheet(int rows) {
        List<Row> all = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            all.add(Row.of("gear " + i).with("draw", i % 25 + " W"));
        }
        plan = Plan.EMPTY.with(Table.DEVICES, Rows.of(all));
        columns.addAll(Column.all(plan, Table.DEVICES));
        List<Column> more = Column.all(plan, Table.RUNS);
        columns.addAll(more.subList(1, 61 - columns.size() + 1));
    }

    @Override
    public Shown now() {
        return this;
    }

    @Override
    public Plan plan() {
        return plan;
    }

    @Override
    public List<Table> tables() {
        return List.of(Table.DEVICES);
    }

    @Override
    public int failing(Table table) {
        return 0;
    }

    @Override
    public List<Column> columns(Table table) {
        return columns;
    }

    @Override
    public Face face(Table table, int place, Column column) {
        Row row = plan.rows(table).at(place);
        if (column.tint() == Column.Tint.IDENTITY) {
            return Face.text(row.id(), Face.Origin.TYPED);
        }
        int hash = place * 31 + column.key().hashCode();
        double figure = Math.floorMod(hash, 1000) / 10.0;
        Face.Origin origin = column.tint() == Column.Tint.SOLVED
                ? Face.Origin.SOLVED
                : hash % 3 == 0 ? Face.Origin.TYPED : Face.Origin.DEFAULT;
        return new Face(figure + " " + column.unit(), origin, figure, Optional.empty(), Optional.empty());
    }

    @Override
    public Optional<Level> verdict(Table table, int place) {
        return place % 50 == 7 ? Optional.of(Level.WARN) : Optional.empty();
    }

    @Override
    public Decimal decimal() {
        return Decimal.POINT;
    }

    @Override
    public Wording wording() {
        return Wording.PLAIN;
    }

    @Override
    public Filled check(Table table, String id, String name, String text) {
        return new Filled(Optional.of(Cell.text(text)), Optional.empty());
    }

    @Override
    public Completion complete(Table table, String id, String name, String text, int caret) {
        return new Completion(new Span(caret, caret), List.of());
    }

    @Override
    public Optional<Notice> checkColumn(Row column) {
        return Optional.empty();
    }

    @Override
    public void apply(String what, Change change) {
        plan = Edit.apply(plan, change).plan();
        watchers.forEach(Runnable::run);
    }

    @Override
    public void explain(Table table, String id, String name) {}

    @Override
    public void pointed(Table table, List<String> ids, String name) {}

    @Override
    public void say(Notice notice) {}

    @Override
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }
}
