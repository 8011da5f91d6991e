package farwatt.workbook;

import farwatt.catalogue.CellReader;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.catalogue.Reading;
import farwatt.engine.Calculation;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Code;
import farwatt.report.Messages;
import farwatt.report.Place;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Collects what a workbook brings back, cell by cell, and says why something cannot be taken. For one thread. */
final class Gathered {
    /** Digits that every program keeps. */
    private static final MathContext KEPT = new MathContext(15, RoundingMode.HALF_EVEN);

    /**
     * A cell that is to change.
     *
     * @param cell empty to empty it
     * @param rule true when an expression is put in, which is to be tried first
     */
    record Wish(Table table, String id, String name, Optional<Cell> cell, String where, String before, boolean rule) {}

    /** A row that is to be added. */
    record Fresh(Table table, Row row, String where) {}

    final Plan base;
    final Calculation calc;
    private final Units units;
    private final Map<Name, CellReader> readers = new LinkedHashMap<>();
    final List<Wish> wishes = new ArrayList<>();
    final List<Fresh> fresh = new ArrayList<>();
    final List<Back.Left> left = new ArrayList<>();
    final List<Back.Formula> formulas = new ArrayList<>();
    final List<Place> missing = new ArrayList<>();

    /**
     * Starts a collection.
     *
     * @param base the plan that is to take it
     * @param calc what the workbook was written from: the plan itself or a scenario of it
     */
    Gathered(Plan base, Calculation calc) {
        this.base = base;
        this.calc = calc;
        units = new Units(base.currency());
    }

    void leave(String where, SheetIn.Cell cell, Code why, Object... parts) {
        left.add(new Back.Left(where, text(cell), Messages.text(why, parts)));
    }

    /** Notes a formula of a person's own. */
    void formula(String where, SheetIn.Cell cell) {
        formulas.add(new Back.Formula(where, "=" + cell.formula()));
    }

    /** A given cell that no longer says what was written. */
    void change(Table table, String id, Name name, SheetIn.Cell cell, String where) {
        Optional<Row> row = base.rows(table).row(id);
        if (row.isEmpty()) {
            leave(where, cell, WorkbookCode.OF_SCENARIO);
            return;
        }
        Optional<Cell> before = row.get().cell(name.key());
        Optional<Cell> shown = calc.plan().rows(table).row(id).flatMap(r -> r.cell(name.key()));
        if (!before.equals(shown)) {
            leave(where, cell, WorkbookCode.OF_SCENARIO);
            return;
        }
        if (cell.isBlank()) {
            before.ifPresent(
                    b -> wishes.add(new Wish(table, id, name.key(), Optional.empty(), where, b.text(), false)));
            return;
        }
        Cell typed = alike(typed(name, cell), before);
        Reading reading = reader(name).read(id, typed);
        boolean wasRule = before.isPresent() && reader(name).read(id, before.get()) instanceof Reading.Expression;
        boolean isRule = reading instanceof Reading.Expression;
        if (reading instanceof Reading.Wrong wrong) {
            left.add(new Back.Left(where, text(cell), wrong.notice().text()));
        } else if (wasRule && !isRule && !isFree(name)) {
            leave(where, cell, WorkbookCode.RULE_STANDS, before.orElseThrow().text());
        } else if (before.isEmpty() || !before.get().text().equals(typed.text())) {
            String was = before.map(Cell::text).orElse("");
            wishes.add(new Wish(table, id, name.key(), Optional.of(typed), where, was, isRule));
        }
    }

    /** A plain number that took the place of one stays one in the file. */
    private static Cell alike(Cell typed, Optional<Cell> before) {
        boolean number = before.filter(cell -> cell.form() == Cell.Form.NUMBER).isPresent();
        return number && typed.text().matches("[0-9]+") ? Cell.number(typed.text()) : typed;
    }

    private static boolean isFree(Name name) {
        return CellReader.EXPRESSIONS.contains(name.path());
    }

    /** A cell of a row that the plan does not have yet. */
    Optional<Cell> given(String id, Name name, SheetIn.Cell cell, String where) {
        Cell typed = typed(name, cell);
        if (reader(name).read(id, typed) instanceof Reading.Wrong wrong) {
            left.add(new Back.Left(where, text(cell), wrong.notice().text()));
            return Optional.empty();
        }
        return Optional.of(typed);
    }

    private CellReader reader(Name name) {
        return readers.computeIfAbsent(name, n -> CellReader.of(n, units));
    }

    /** What was typed, in the form of a plan's cell. */
    private Cell typed(Name name, SheetIn.Cell cell) {
        if (!Double.isFinite(cell.number())) {
            return name.kind() instanceof Kind.YesNo
                    ? yesNo(cell.text().strip())
                    : Cell.text(cell.text().strip());
        }
        BigDecimal number = new BigDecimal(cell.number()).round(KEPT);
        boolean measured = name.kind() instanceof Kind.Quantity || name.kind() instanceof Kind.Gauge;
        Unit unit = measured ? unit(name) : Unit.ONE;
        BigDecimal shown = Form.of(unit) == Form.SHARE ? number.movePointRight(2) : number;
        String digits = shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
        return unit.symbol().isEmpty() ? Cell.number(digits) : Cell.text(digits + " " + unit.symbol());
    }

    private static Cell yesNo(String text) {
        return text.equals("yes") ? Cell.YES : text.equals("no") ? Cell.NO : Cell.text(text);
    }

    /** The unit in which the workbook shows a column. */
    private Unit unit(Name name) {
        if (calc.rows(name.table()) > 0) {
            return calc.value(name.table(), 0, name.key()).unit();
        }
        return name.kind() instanceof Kind.Quantity quantity ? quantity.unit(units) : units.need("AWG");
    }

    /** True when a cell still says what was written into it. */
    static boolean isSame(Entry entry, SheetIn.Cell cell) {
        Entry.Content shown = entry.shown();
        if (shown instanceof Entry.Amount amount) {
            double there = cell.number();
            return Math.abs(there - amount.value()) <= 1e-9 * Math.max(Math.abs(there), Math.abs(amount.value()));
        }
        if (shown instanceof Entry.Words words) {
            return plain(words.text()).equals(plain(text(cell)));
        }
        return cell.isBlank();
    }

    private static String text(SheetIn.Cell cell) {
        if (!Double.isFinite(cell.number())) {
            return cell.text();
        }
        BigDecimal number = new BigDecimal(cell.number()).round(KEPT);
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static String plain(String text) {
        return text.replace("\r", "").strip();
    }
}
