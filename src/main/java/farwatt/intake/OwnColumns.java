package farwatt.intake;

import farwatt.catalogue.Catalogue;
import farwatt.plan.Row;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The columns of a list that a plan has no name for, kept as columns of the person's own: texts byte for byte; numbers
 * only where the heading names a unit and every cell is a number.
 */
final class OwnColumns {
    /** Names that every row has, or that a way through the plan begins with. */
    private static final Set<String> ROW_WORDS = Set.of("id", "run", "feeder", "name");

    private static final Set<Meaning> KEPT =
            Set.of(Meaning.OWN, Meaning.SERIAL, Meaning.MAC, Meaning.ASSET, Meaning.PRICE);

    /**
     * @param column the list's column
     * @param name its name in the plan
     * @param unit unit of a quantity, "" for a text
     */
    record Own(Column column, String name, String unit) {}

    /** No columns at all. */
    static final OwnColumns NONE = new OwnColumns();

    private final List<Own> all = new ArrayList<>();

    private OwnColumns() {}

    OwnColumns(Listing listing, List<RawRow> rows) {
        Set<String> used = new HashSet<>();
        for (Column column : listing.columns()) {
            boolean direction = column.meaning() == Meaning.DIRECTION;
            if (direction || KEPT.contains(column.meaning())) {
                String unit = unit(column, rows);
                String heading =
                        unit.isEmpty() ? column.shown() : column.heading().words();
                all.add(new Own(column, free(name(heading, column.at()), used), unit));
            }
        }
    }

    /** The name a column of the list gets in the plan, "" if it is none of these. */
    String name(Column column) {
        for (Own own : all) {
            if (own.column().at() == column.at()) {
                return own.name();
            }
        }
        return "";
    }

    List<Own> all() {
        return all;
    }

    /** The columns as rows of the plan's table of own columns. */
    List<Row> rows() {
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Own own : all) {
            Row row = Row.of(own.name()).with("table", Table.DEVICES.key());
            boolean text = own.unit().isEmpty();
            row = row.with("kind", text ? "text" : "quantity");
            rows.put(own.name(), text ? row : row.with("unit", own.unit()));
        }
        return List.copyOf(rows.values());
    }

    private static String name(String heading, int at) {
        String folded = Spelling.fold(heading).replace(' ', '_');
        String name = folded.isEmpty() ? "column_" + (at + 1) : folded;
        return Character.isLetter(name.charAt(0)) ? name : "c_" + name;
    }

    private static String free(String wanted, Set<String> used) {
        String base = isTaken(wanted) ? wanted + "_listed" : wanted;
        String name = base;
        int next = 2;
        while (!used.add(name)) {
            name = base + "_" + next++;
        }
        return name;
    }

    private static boolean isTaken(String name) {
        return StepPath.isReserved(name)
                || ROW_WORDS.contains(name)
                || Table.of(name).isPresent()
                || Catalogue.all().stream().anyMatch(n -> n.key().equals(name));
    }

    private static String unit(Column column, List<RawRow> rows) {
        boolean named = column.heading().unit().isPresent() && column.meaning() == Meaning.OWN;
        if (!named || column.heading().unit().get().measure() == Measure.MONEY) {
            return "";
        }
        for (RawRow row : rows) {
            RawCell cell = row.cell(column.at());
            if (!cell.isBlank() && quantity(cell, column).isEmpty()) {
                return "";
            }
        }
        return column.heading().unit().get().symbol();
    }

    /** The canonical text of a cell that is one plain number; empty for anything else. */
    static Optional<String> quantity(RawCell cell, Column column) {
        String text = Spelling.tidy(cell.text()).replace('−', '-');
        if (cell.form() != RawCell.Form.TEXT && !cell.isExact()) {
            return Optional.empty();
        }
        boolean minus = text.startsWith("-");
        Figures read = FigureReader.read(
                minus ? text.substring(1) : text, cell.isExact() ? Optional.of(Decimal.POINT) : column.decimal());
        ListUnit unit = column.heading().unit().orElseThrow();
        boolean one = read.list().size() == 1
                && !read.broken()
                && !read.negative()
                && read.words().isEmpty()
                && read.remarks().isEmpty()
                && read.join() == Figures.Join.SEPARATE
                && read.list().get(0).bound() == Figure.Bound.NONE
                && read.list().get(0).measure(unit) == unit.measure();
        if (!one) {
            return Optional.empty();
        }
        BigDecimal value =
                read.list().get(0).unit().orElse(unit).base(read.list().get(0).value());
        return Optional.of(PowerReader.plain(minus ? value.negate() : value) + " " + unit.symbol());
    }
}
