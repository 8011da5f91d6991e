package farwatt.window.grid;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Reading;
import farwatt.catalogue.Wording;
import farwatt.catalogue.edit.Entry;
import farwatt.document.Document;
import farwatt.engine.Answer;
import farwatt.engine.Calculation;
import farwatt.engine.PlanWording;
import farwatt.engine.Value;
import farwatt.language.Completion;
import farwatt.language.Item;
import farwatt.language.Type;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A sheet over a document that works values out at once, and remembers what the grid told it. */
final class PlainSheet implements Sheet {
    final Document document;
    final Decimal decimal;
    final List<String> steps = new ArrayList<>();
    final List<Notice> said = new ArrayList<>();
    final List<String> explained = new ArrayList<>();
    List<String> pointed = List.of();
    Map<String, Level> verdicts = Map.of();
    Optional<Plan> base = Optional.empty();

    private final List<Runnable> watchers = new ArrayList<>();
    private volatile Seen seen;

    PlainSheet(Plan plan, Decimal decimal) {
        this.decimal = decimal;
        document = new Document(plan);
        seen = new Seen(this, plan, Calculation.of(plan));
        document.watch((before, done, after) -> refresh());
    }

    void refresh() {
        seen = new Seen(this, document.plan(), Calculation.of(document.plan()));
        List.copyOf(watchers).forEach(Runnable::run);
    }

    Plan plan() {
        return seen.plan();
    }

    @Override
    public Shown now() {
        return seen;
    }

    @Override
    public Decimal decimal() {
        return decimal;
    }

    @Override
    public Wording wording() {
        return new PlanWording(seen.calculation());
    }

    @Override
    public Filled check(Table table, String id, String name, String text) {
        PlanCells cells = PlanCells.of(plan());
        Optional<Cell> cell = new Entry(cells, wording(), decimal).cell(table, id, name, text);
        Optional<Reading> reading =
                cell.flatMap(c -> cells.reader(table, id, name).map(r -> r.read(id, c)));
        return new Filled(cell, reading.flatMap(this::notice));
    }

    private Optional<Notice> notice(Reading reading) {
        if (reading instanceof Reading.Wrong wrong) {
            return Optional.of(wrong.notice());
        }
        if (reading instanceof Reading.Literal literal) {
            return literal.notice();
        }
        if (reading instanceof Reading.Expression expression) {
            return unread(expression.text());
        }
        return Optional.empty();
    }

    private Optional<Notice> unread(String text) {
        Answer answer = seen.calculation().ask(text);
        return answer.problems().stream()
                .findFirst()
                .map(problem -> new Notice(Level.FAIL, "test", Place.NONE, problem.text()));
    }

    @Override
    public Completion complete(Table table, String id, String name, String text, int caret) {
        int from = caret;
        while (from > 0 && Character.isLetterOrDigit(text.charAt(from - 1))) {
            from--;
        }
        String stem = text.substring(from, caret).toLowerCase(Locale.ROOT);
        List<Completion.Offer> offers = new ArrayList<>();
        for (String word : words(table, name)) {
            if (word.toLowerCase(Locale.ROOT).startsWith(stem)) {
                Item item = new Item(word, Item.What.CHOICE, Type.Plain.UNKNOWN, "", "One of the words.");
                offers.add(new Completion.Offer(word, item));
            }
        }
        return new Completion(new Span(from, caret), offers);
    }

    private List<String> words(Table table, String name) {
        Optional<Name> found = seen.columns(table).stream()
                .map(Column::name)
                .filter(n -> n.key().equals(name))
                .findFirst();
        if (found.isPresent() && found.get().kind() instanceof Kind.Choice choice) {
            return choice.words();
        }
        if (found.isPresent() && found.get().kind() instanceof Kind.RowOf rows) {
            return rows.tables().stream().flatMap(t -> ids(t).stream()).toList();
        }
        return seen.columns(table).stream().map(Column::key).toList();
    }

    List<String> ids(Table table) {
        List<String> ids = new ArrayList<>();
        plan().rows(table).forEach(row -> ids.add(row.id()));
        return ids;
    }

    @Override
    public Optional<Notice> checkColumn(Row column) {
        Calculation trial = Calculation.of(plan().and(Table.COLUMNS, column));
        return trial.notices().stream()
                .filter(n -> n.place().table().equals("columns") && n.line().contains(column.id()))
                .findFirst();
    }

    @Override
    public void apply(String what, Change change) {
        steps.add(what);
        document.apply(change);
    }

    @Override
    public void explain(Table table, String id, String name) {
        explained.add(table.key() + "/" + id + "/" + name);
    }

    @Override
    public void pointed(Table table, List<String> ids, String name) {
        pointed = ids;
    }

    @Override
    public void say(Notice notice) {
        said.add(notice);
    }

    @Override
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    /** One plan with its values. */
    record Seen(PlainSheet sheet, Plan plan, Calculation calculation) implements Shown {
        @Override
        public List<Table> tables() {
            return List.of(
                    Table.ZONES, Table.SOURCES, Table.SWITCHES, Table.RUNS, Table.DEVICES, Table.VALUES, Table.NEEDS);
        }

        @Override
        public int failing(Table table) {
            return (int) sheet.ids(table).stream()
                    .filter(id -> sheet.verdicts.get(id) == Level.FAIL)
                    .count();
        }

        @Override
        public List<Column> columns(Table table) {
            return Column.all(plan, table);
        }

        @Override
        public Optional<Level> verdict(Table table, int place) {
            return Optional.ofNullable(
                    sheet.verdicts.get(plan.rows(table).at(place).id()));
        }

        @Override
        public Face face(Table table, int place, Column column) {
            Row row = plan.rows(table).at(place);
            if (column.tint() == Column.Tint.IDENTITY) {
                return Face.text(row.id(), Face.Origin.TYPED);
            }
            Optional<Cell> typed = row.cell(column.key());
            Optional<Value> value = calculation.names(table).stream()
                    .filter(n -> n.key().equals(column.key()))
                    .findFirst()
                    .map(n -> calculation.value(table, place, n.key()));
            Optional<String> before = sheet.base
                    .flatMap(p -> p.rows(table).row(row.id()))
                    .map(r -> r.text(column.key()))
                    .filter(t -> !t.equals(row.text(column.key())));
            return value.map(v -> valued(column, row.id(), typed, v, before))
                    .orElseGet(() -> typed.map(c -> Face.text(c.text(), Face.Origin.TYPED))
                            .orElse(Face.empty()));
        }

        private Face valued(Column column, String id, Optional<Cell> typed, Value value, Optional<String> before) {
            Optional<Notice> notice =
                    typed.flatMap(c -> sheet.check(column.name().table(), id, column.key(), c.text())
                            .notice());
            if (!value.isPresent()) {
                boolean none = typed.isEmpty() && column.tint() == Column.Tint.GIVEN;
                String text = typed.map(Cell::text).orElse(none ? "" : "–");
                Optional<Notice> why =
                        notice.or(() -> value.fault().map(f -> new Notice(Level.NOTE, "test", f.origin(), f.text())));
                return new Face(
                        text, none ? Face.Origin.EMPTY : Face.Origin.FAULT, Double.NaN, none ? notice : why, before);
            }
            double figure = value.isNumber() ? value.inside() : Double.NaN;
            return new Face(value.text(), origin(column, id, typed), figure, notice, before);
        }

        private Face.Origin origin(Column column, String id, Optional<Cell> typed) {
            return switch (column.tint()) {
                case SOLVED -> Face.Origin.SOLVED;
                case OWN -> Face.Origin.OWN;
                case IDENTITY, GIVEN, OWN_GIVEN ->
                    typed.map(c -> isExpression(column, id, c) ? Face.Origin.EXPRESSION : Face.Origin.TYPED)
                            .orElse(Face.Origin.DEFAULT);
            };
        }

        private boolean isExpression(Column column, String id, Cell cell) {
            return PlanCells.of(plan)
                    .reader(column.name().table(), id, column.key())
                    .map(reader -> reader.read(id, cell))
                    .filter(Reading.Expression.class::isInstance)
                    .isPresent();
        }
    }
}
