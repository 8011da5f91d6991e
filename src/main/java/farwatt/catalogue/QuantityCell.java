package farwatt.catalogue;

import farwatt.plan.Cell;
import farwatt.quantity.Decimal;
import farwatt.quantity.Dimension;
import farwatt.quantity.Reader;
import farwatt.quantity.Show;
import farwatt.quantity.Typed;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Level;
import farwatt.report.Notice;
import java.util.Optional;

/** A column of quantities or gauges. */
final class QuantityCell implements CellReader {
    private final Name name;
    private final Unit unit;
    private final Units units;
    private final Bounds bounds;
    private final double low;
    private final double high;

    QuantityCell(Name name, Unit unit, Units units) {
        this.name = name;
        this.unit = unit;
        this.units = units;
        this.bounds = Bounds.of(name, unit);
        this.low = name.plausible().map(range -> unit.toInside(range.low())).orElse(Double.NEGATIVE_INFINITY);
        this.high = name.plausible().map(range -> unit.toInside(range.high())).orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    public Reading read(String row, Cell cell) {
        return switch (cell.form()) {
            case TEXT -> text(row, cell.text());
            case NUMBER ->
                unit.equals(Unit.ONE)
                        ? text(row, cell.text())
                        : Mistake.of(name, row, CatalogueCode.PLAIN_NUMBER, cell.text(), unit.symbol());
            case YES_NO -> Mistake.of(name, row, CatalogueCode.NO_QUANTITY, cell.text(), example());
            case OTHER -> Mistake.of(name, row, CatalogueCode.NO_CELL, cell.text());
        };
    }

    @Override
    public Optional<Typed> literal(String text, Decimal decimal) {
        return Reader.read(text, units, decimal);
    }

    private Reading text(String row, String text) {
        int plain = PlainNumber.end(text);
        if (plain > 0 && isUnit(text, plain)) {
            double inside = unit.toInside(PlainNumber.value(text, plain));
            return judged(row, new Typed(text.substring(0, plain), "", unit), inside, text, Optional.empty());
        }
        if (text.isBlank()) {
            return EMPTY;
        }
        return Reader.read(text, units, Decimal.POINT)
                .map(typed -> typed(row, typed, text.strip()))
                .orElseGet(() -> new Reading.Expression(text));
    }

    /** True when nothing but the column's own unit follows the number, one space between. */
    private boolean isUnit(String text, int at) {
        String symbol = unit.symbol();
        if (symbol.isEmpty()) {
            return at == text.length();
        }
        return text.length() == at + 1 + symbol.length()
                && text.charAt(at) == ' '
                && text.regionMatches(at + 1, symbol, 0, symbol.length());
    }

    private Reading typed(String row, Typed typed, String text) {
        if (typed.unit().equals(Unit.ONE) && !unit.equals(Unit.ONE)) {
            Typed whole = typed.in(unit);
            return judged(row, whole, whole.inside(), text, Optional.of(whole.text()));
        }
        if (!typed.unit().sameMeasure(unit)) {
            return Mistake.of(name, row, otherMeasure(typed.unit()), text, unit.symbol());
        }
        return judged(row, typed, typed.inside(), text, Optional.empty());
    }

    private CatalogueCode otherMeasure(Unit typed) {
        if (!typed.dimension().equals(Dimension.KELVIN) || !unit.dimension().equals(Dimension.KELVIN)) {
            return CatalogueCode.OTHER_MEASURE;
        }
        return typed.isAbsoluteTemperature() ? CatalogueCode.NO_DIFFERENCE : CatalogueCode.NO_TEMPERATURE;
    }

    /** The literal with what there is to say about it; {@code taken} is its text where the unit was missing. */
    private Reading judged(String row, Typed typed, double inside, String text, Optional<String> taken) {
        Optional<CatalogueCode> broken = bounds.broken(inside);
        if (broken.isPresent()) {
            return Mistake.of(name, row, broken.get(), text);
        }
        Optional<Notice> notice = Optional.empty();
        if (inside < low || inside > high) {
            notice = Optional.of(implausible(row, text, taken));
        } else if (taken.isPresent()) {
            notice = Optional.of(
                    Notice.of(Level.NOTE, CatalogueCode.TAKEN_AS, Mistake.place(name, row), text, taken.get()));
        }
        return new Reading.Literal(inside, typed, notice);
    }

    private Notice implausible(String row, String text, Optional<String> taken) {
        String least = Show.text(low, unit);
        String most = Show.text(high, unit);
        return taken.isPresent()
                ? Notice.of(
                        Level.WARN,
                        CatalogueCode.TAKEN_IMPLAUSIBLE,
                        Mistake.place(name, row),
                        text,
                        taken.get(),
                        least,
                        most)
                : Notice.of(Level.WARN, CatalogueCode.IMPLAUSIBLE, Mistake.place(name, row), text, least, most);
    }

    private String example() {
        return name.fallback().literal().isEmpty()
                ? Show.text(unit.toInside(1), unit)
                : name.fallback().literal();
    }
}
