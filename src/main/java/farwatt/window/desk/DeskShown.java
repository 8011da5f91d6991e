package farwatt.window.desk;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Reading;
import farwatt.engine.Still;
import farwatt.engine.Value;
import farwatt.language.Type;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.review.Finding;
import farwatt.window.grid.Column;
import farwatt.window.grid.Face;
import farwatt.window.grid.Shown;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the grid shows of a desk at one moment. Immutable but for what it looks up once. */
final class DeskShown implements Shown {
    private static final List<Table> TABLES = List.of(
            Table.PLAN,
            Table.ZONES,
            Table.BUNDLES,
            Table.SOURCES,
            Table.SWITCHES,
            Table.RUNS,
            Table.DEVICES,
            Table.VALUES,
            Table.PRACTICE,
            Table.NEEDS,
            Table.COLUMNS);

    private final Plan plan;
    private final Plan base;
    private final Optional<Still> still;
    private final Units units;
    private final PlanCells cells;
    private final UnitsShown unitsShown;
    private final boolean inScenario;
    /** Whether a table has the very rows that the values are of. */
    private final Map<Table, Boolean> sameRows = new EnumMap<>(Table.class);

    private final Map<Table, List<Column>> columns = new EnumMap<>(Table.class);
    private final Map<Place, Notice> notices = new HashMap<>();
    private final Map<Table, Map<String, Level>> verdicts = new EnumMap<>(Table.class);

    DeskShown(Desk desk, UnitsShown unitsShown) {
        this.plan = desk.shown();
        this.base = desk.base();
        this.still = desk.still();
        this.unitsShown = unitsShown;
        this.inScenario = !desk.scenario().isEmpty();
        this.units = new Units(plan.currency());
        this.cells = PlanCells.of(plan);
        desk.review().ifPresent(review -> review.findings().forEach(this::take));
        still.ifPresent(s -> s.notices().forEach(notice -> take(notice.place(), notice)));
    }

    private void take(Finding finding) {
        take(finding.place(), new Notice(finding.level(), finding.code(), finding.place(), finding.text()));
    }

    private void take(Place place, Notice notice) {
        Notice known = notices.get(place);
        if (known == null || notice.level().compareTo(known.level()) < 0) {
            notices.put(place, notice);
        }
        Table.of(place.table())
                .ifPresent(table -> verdicts.computeIfAbsent(table, t -> new HashMap<>())
                        .merge(Rows.fold(place.row()), notice.level(), (a, b) -> a.compareTo(b) <= 0 ? a : b));
    }

    @Override
    public Plan plan() {
        return plan;
    }

    @Override
    public List<Table> tables() {
        return TABLES;
    }

    @Override
    public int failing(Table table) {
        Set<String> failing = new HashSet<>();
        verdicts.getOrDefault(table, Map.of()).forEach((row, level) -> {
            if (level == Level.FAIL) {
                failing.add(row);
            }
        });
        return failing.size();
    }

    @Override
    public List<Column> columns(Table table) {
        return columns.computeIfAbsent(
                table,
                t -> Column.all(plan, t).stream()
                        .map(column -> new Column(column.name(), symbol(column), column.tint()))
                        .toList());
    }

    private String symbol(Column column) {
        if (column.name().kind() instanceof Kind.Quantity quantity
                && !column.unit().isEmpty()) {
            return unitsShown.shown(quantity.unit(units), units).symbol();
        }
        return column.unit();
    }

    @Override
    public Optional<Level> verdict(Table table, int place) {
        String id = Rows.fold(plan.rows(table).at(place).id());
        return Optional.ofNullable(verdicts.getOrDefault(table, Map.of()).get(id));
    }

    @Override
    public Face face(Table table, int place, Column column) {
        Row row = plan.rows(table).at(place);
        if (column.tint() == Column.Tint.IDENTITY) {
            return with(Face.text(row.id(), Face.Origin.TYPED), table, row, "");
        }
        String key = column.key();
        Optional<Cell> cell = row.cell(key).filter(c -> !c.text().isBlank());
        Optional<Value> value = still.isEmpty() ? Optional.empty() : value(still.get(), table, place, row, key);
        Face face;
        if (value.isPresent() && value.get().isPresent()) {
            face = worked(table, row, column, cell, value.get());
        } else if (cell.isPresent()) {
            Face.Origin origin = value.isPresent() ? Face.Origin.FAULT : Face.Origin.TYPED;
            face = Face.text(cell.get().text(), origin);
        } else {
            face = absent(table, column, value, row);
        }
        return with(face, table, row, key);
    }

    private Face worked(Table table, Row row, Column column, Optional<Cell> cell, Value value) {
        Face.Origin origin;
        if (!column.tint().isTyped()) {
            origin = column.tint() == Column.Tint.OWN ? Face.Origin.OWN : Face.Origin.SOLVED;
        } else if (cell.isEmpty()) {
            origin = Face.Origin.DEFAULT;
        } else {
            boolean expression = cells.reader(table, row.id(), column.key())
                    .filter(reader -> reader.read(row.id(), cell.get()) instanceof Reading.Expression)
                    .isPresent();
            origin = expression ? Face.Origin.EXPRESSION : Face.Origin.TYPED;
        }
        double figure = value.isNumber() || value.type() == Type.Plain.YES_NO ? value.inside() : Double.NaN;
        return new Face(text(value, column), origin, figure, Optional.empty(), Optional.empty());
    }

    /** In the column's unit without saying it, where the value is of the column's measure. */
    private String text(Value value, Column column) {
        if (!value.isNumber() || value.unit().isGauge()) {
            return value.text();
        }
        Unit unit = unitsShown.shown(value.unit(), units);
        boolean own = column.unit().isEmpty() && !(column.name().kind() instanceof Kind.Quantity);
        return own
                ? Show.text(value.inside(), unit)
                : Show.text(value.inside(), unit).split(" ", 2)[0];
    }

    private Face absent(Table table, Column column, Optional<Value> value, Row row) {
        if (column.tint().isTyped()) {
            String quiet = column.name().kind() instanceof Kind.RowOf
                    ? ""
                    : column.name().fallback().literal();
            return quiet.isEmpty() ? Face.empty() : Face.text(quiet, Face.Origin.DEFAULT);
        }
        if (value.isEmpty()) {
            return Face.text("…", Face.Origin.WAITING);
        }
        Optional<Notice> why = value.get()
                .fault()
                .map(fault -> new Notice(Level.NOTE, "", new Place(table.key(), row.id(), column.key()), fault.text()));
        return new Face("–", Face.Origin.FAULT, Double.NaN, why, Optional.empty());
    }

    private Optional<Value> value(Still s, Table table, int place, Row row, String key) {
        int at = place;
        if (table == Table.PRACTICE) {
            return Catalogue.find(Table.PRACTICE, row.id()).isPresent() && key.equals("is")
                    ? constant(s, row.id())
                    : Optional.empty();
        }
        if (table == Table.COLUMNS) {
            return Optional.empty();
        }
        Rows then = s.plan().rows(table);
        if (!sameRows.computeIfAbsent(table, t -> then.equals(plan.rows(t)))) {
            boolean same = at < then.size() && then.at(at).id().equals(row.id());
            at = same ? at : then.place(row.id());
        }
        return at < 0 ? Optional.empty() : s.value(table, at, key);
    }

    private static Optional<Value> constant(Still s, String id) {
        List<Name> all = Catalogue.of(Table.PRACTICE);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).key().equals(id)) {
                return s.value(Table.PRACTICE, i, "is");
            }
        }
        return Optional.empty();
    }

    private Face with(Face face, Table table, Row row, String key) {
        Optional<Notice> notice = Optional.ofNullable(notices.get(new Place(table.key(), row.id(), key)))
                .or(face::notice);
        Optional<String> other = !inScenario ? Optional.empty() : other(table, row, key);
        return notice.isEmpty() && other.isEmpty()
                ? face
                : new Face(face.text(), face.origin(), face.figure(), notice, other);
    }

    /** What base has there, where that is something else. */
    private Optional<String> other(Table table, Row row, String key) {
        if (table == Table.PLAN) {
            return differs(base.settings().text(key), row.text(key));
        }
        Optional<Row> below = base.rows(table).row(row.id());
        if (below.isEmpty()) {
            return key.isEmpty() ? Optional.of("not in the plan") : Optional.empty();
        }
        return key.isEmpty() ? Optional.empty() : differs(below.get().text(key), row.text(key));
    }

    private static Optional<String> differs(String below, String now) {
        return below.equals(now) ? Optional.empty() : Optional.of(below.isEmpty() ? "nothing typed" : below);
    }
}
