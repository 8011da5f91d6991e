package farwatt.engine;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.CellReader;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Reading;
import farwatt.catalogue.Stage;
import farwatt.catalogue.Wording;
import farwatt.language.Completion;
import farwatt.language.Item;
import farwatt.language.Language;
import farwatt.language.Type;
import farwatt.language.Wanted;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What can be said about cells and expressions of a plan without working it out: which names there are, what may stand
 * at the caret, what is wrong with a text. For one thread at a time.
 */
public final class Terms {
    private final Plan plan;
    private final Model model;
    private final PlanCells cells;
    private final Wording wording;

    private Terms(Plan plan) {
        this.plan = plan;
        Layout layout = new Layout(plan);
        boolean[] used = new boolean[layout.rows()];
        Arrays.fill(used, true);
        model = new Model(plan, layout, used);
        cells = PlanCells.of(plan);
        wording = new PlanWording(model);
    }

    public static Terms of(Plan plan) {
        return new Terms(plan);
    }

    /** True where another plan has the same names, so that these terms hold for it too. */
    public boolean cover(Plan other) {
        if (other.equals(plan)) {
            return true;
        }
        for (Table table : Table.values()) {
            boolean names = table == Table.VALUES || table == Table.COLUMNS || table == Table.PLAN;
            if (!(names ? plan.rows(table).equals(other.rows(table)) : sameIds(plan.rows(table), other.rows(table)))) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameIds(Rows one, Rows other) {
        boolean same = one.size() == other.size();
        for (int i = 0; same && i < one.size(); i++) {
            same = one.at(i).id().equals(other.at(i).id());
        }
        return same;
    }

    /** What is known about expressions here; renames mean the plan these terms were made of. */
    public Wording wording() {
        return wording;
    }

    /** What is wrong with what a cell would hold, or to be told about it; empty where it is fine. */
    public Optional<Notice> check(Table table, String id, String name, Cell cell) {
        Optional<CellReader> reader = cells.reader(table, id, name);
        if (reader.isEmpty()) {
            return Optional.empty();
        }
        Place place = new Place(table.key(), id, name);
        Reading reading = reader.get().read(id, cell);
        if (reading instanceof Reading.Wrong wrong) {
            return Optional.of(wrong.notice());
        }
        if (reading instanceof Reading.Literal literal) {
            return literal.notice();
        }
        if (reading instanceof Reading.RowId row) {
            return row(table, name, row.id(), place);
        }
        if (reading instanceof Reading.Expression expression) {
            return expression(table, id, name, expression.text(), place);
        }
        boolean free = isExpression(table, name) && !cell.text().isBlank();
        return free ? expression(table, id, name, cell.text(), place) : Optional.empty();
    }

    private Optional<Notice> row(Table table, String name, String id, Place place) {
        int row = model.layout.siteRow(id);
        if (row < 0) {
            return Optional.of(Notice.of(Level.FAIL, EngineCode.NO_SUCH_ROW, place, id));
        }
        Table found = model.layout.table(row);
        boolean fits = name(table, "", name)
                .filter(n -> n.kind() instanceof Kind.RowOf of && !of.tables().contains(found))
                .isEmpty();
        return fits
                ? Optional.empty()
                : Optional.of(Notice.of(
                        Level.FAIL,
                        EngineCode.WRONG_TABLE,
                        place,
                        id,
                        RowKinds.called(RowKinds.of(found)),
                        "another table's row"));
    }

    private Optional<Notice> expression(Table table, String id, String name, String text, Place place) {
        Stage latest = isExpression(table, name) && table != Table.VALUES ? Stage.DERIVED : Stage.GIVEN;
        List<Notice> notices = model.compiler
                .compile(text, kind(table, id), wanted(table, id, name), latest, place)
                .notices();
        return notices.stream().findFirst();
    }

    private static boolean isExpression(Table table, String name) {
        return CellReader.EXPRESSIONS.contains(table.key() + "." + name) && table != Table.PRACTICE;
    }

    /** The kind of row whose names an expression sees; an own column's are those of its table. */
    private String kind(Table table, String id) {
        Table of = table == Table.COLUMNS
                ? plan.rows(Table.COLUMNS)
                        .row(id)
                        .flatMap(row -> Table.of(row.text("table")))
                        .orElse(Table.PLAN)
                : table;
        return of.isSite() ? RowKinds.of(of) : "";
    }

    private Wanted wanted(Table table, String id, String name) {
        if (table == Table.NEEDS && name.equals("holds")) {
            return Wanted.a(Type.Plain.YES_NO);
        }
        if (isExpression(table, name)) {
            return Wanted.ANY;
        }
        return name(table, id, name)
                .map(n -> new Types(model.units).wanted(n.kind()))
                .orElse(Wanted.ANY);
    }

    private Optional<Name> name(Table table, String id, String name) {
        if (table == Table.PRACTICE && name.equals("is")) {
            return Catalogue.find(table, id);
        }
        return model.columns.find(table, name).map(col -> col.name);
    }

    /** The expression of a column that is not there yet, checked among the names of its table. */
    public Optional<Notice> checkColumn(Row column) {
        String text = column.text("is");
        Optional<Table> of = Table.of(column.text("table"));
        if (text.isBlank() || of.isEmpty()) {
            return Optional.empty();
        }
        String unit = column.text("unit");
        Wanted wanted = model.units
                .of(unit)
                .filter(u -> !unit.isEmpty())
                .map(Wanted::in)
                .orElse(Wanted.ANY);
        Place place = new Place(Table.COLUMNS.key(), column.id(), "is");
        return model
                .compiler
                .compile(text, of.get().isSite() ? RowKinds.of(of.get()) : "", wanted, Stage.DERIVED, place)
                .notices()
                .stream()
                .findFirst();
    }

    /** What may stand at the caret of a cell's text, best first. */
    public Completion complete(Table table, String id, String name, String text, int caret, Decimal decimal) {
        Optional<Kind> kind = name(table, id, name).map(Name::kind);
        List<Completion.Offer> whole = new ArrayList<>();
        String typed = text.substring(0, Math.min(caret, text.length())).strip().toLowerCase(Locale.ROOT);
        if (kind.orElse(null) instanceof Kind.RowOf of) {
            of.tables().forEach(each -> plan.rows(each).forEach(row -> offer(whole, typed, row.id(), Item.What.ROW)));
            return new Completion(new Span(0, text.length()), whole);
        }
        if (kind.orElse(null) instanceof Kind.Choice choice) {
            choice.words().forEach(word -> offer(whole, typed, word, Item.What.CHOICE));
        }
        boolean plain = kind.orElse(null) instanceof Kind.Text && !isExpression(table, name);
        if (!whole.isEmpty() || plain) {
            return new Completion(new Span(0, text.length()), whole);
        }
        String rows = kind(table, id);
        PlanScope scope = new PlanScope(model.names, rows, rows);
        return Language.complete(text, caret, scope, wanted(table, id, name), decimal);
    }

    private static void offer(List<Completion.Offer> offers, String typed, String text, Item.What what) {
        if (text.toLowerCase(Locale.ROOT).contains(typed)) {
            offers.add(new Completion.Offer(text, new Item(text, what, Type.Plain.TEXT, "", "")));
        }
    }
}
