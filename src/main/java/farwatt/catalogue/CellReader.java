package farwatt.catalogue;

import farwatt.plan.Cell;
import farwatt.quantity.Decimal;
import farwatt.quantity.Reader;
import farwatt.quantity.Show;
import farwatt.quantity.Typed;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Code;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Understands the literal in a cell by what its column holds; anything else may be an expression. */
public final class CellReader {
    private static final Set<String> SHARES = Set.of("efficiency", "load_efficiency", "efficiency_ac");

    private final Units units;
    private final Map<Name, Unit> unitOf = new HashMap<>();

    /** @param units with the plan's currency */
    public CellReader(Units units) {
        this.units = units;
    }

    /** The unit in which a name is typed and shown; {@link Unit#ONE} where it has none. */
    public Unit unit(Name name) {
        return unitOf.computeIfAbsent(name, n -> {
            if (n.kind() instanceof Kind.Quantity quantity) {
                return quantity.unit(units);
            }
            return n.kind() instanceof Kind.Gauge ? units.need("AWG") : Unit.ONE;
        });
    }

    /** The inside value of a name's fixed default. */
    public double literal(Name name) {
        return read(name, Cell.text(name.fallback().literal()), Place.NONE).inside();
    }

    /** What a filled cell holds. */
    public Reading read(Name name, Cell cell, Place place) {
        String text = cell.text().strip();
        if (cell.form() == Cell.Form.OTHER) {
            return Reading.wrong(text, Notice.of(Level.FAIL, CatalogueCode.NOT_A_CELL, place, text));
        }
        if (name.kind() instanceof Kind.Choice choice) {
            return word(choice.words(), text);
        }
        if (name.kind() instanceof Kind.YesNo) {
            return yesNo(cell, text, place);
        }
        if (name.kind() instanceof Kind.Quantity || name.kind() instanceof Kind.Gauge) {
            return quantity(name, cell, text, place);
        }
        return Reading.text(cell.text());
    }

    private static Reading word(List<String> words, String text) {
        for (int i = 0; i < words.size(); i++) {
            if (words.get(i).equalsIgnoreCase(text)) {
                return Reading.number(i, words.get(i), Optional.empty());
            }
        }
        return Reading.expression(text);
    }

    private static Reading yesNo(Cell cell, String text, Place place) {
        String word = text.toLowerCase(Locale.ROOT);
        if (word.equals("yes") || word.equals("no")) {
            return Reading.number(word.equals("yes") ? 1 : 0, word, Optional.empty());
        }
        if (cell.form() == Cell.Form.NUMBER) {
            return Reading.wrong(text, Notice.of(Level.FAIL, CatalogueCode.NOT_YES_NO, place, text));
        }
        return Reading.expression(text);
    }

    private Reading quantity(Name name, Cell cell, String text, Place place) {
        Optional<Typed> read = Reader.read(text, units, Decimal.POINT);
        if (read.isEmpty()) {
            return Reading.expression(text);
        }
        Unit wanted = unit(name);
        Typed typed = read.get();
        boolean bare = typed.unit().equals(Unit.ONE) && !wanted.symbol().isEmpty();
        if (bare) {
            typed = typed.in(wanted);
        }
        if (!typed.unit().sameMeasure(wanted)) {
            String found = typed.unit().symbol();
            String unit = wanted.symbol().isEmpty() ? "a bare number" : wanted.symbol();
            return Reading.wrong(text, Notice.of(Level.FAIL, CatalogueCode.WRONG_UNIT, place, found, unit));
        }
        double inside = typed.inside();
        Optional<Code> never = impossible(name, inside);
        if (never.isPresent()) {
            return Reading.wrong(text, Notice.of(Level.FAIL, never.get(), place, typed.text()));
        }
        return Reading.number(inside, typed.text(), question(name, cell, typed, bare, wanted, place));
    }

    /** What no edition of any code allows: less than nothing, a share above all. */
    private static Optional<Code> impossible(Name name, double inside) {
        if (SHARES.contains(name.key())) {
            return inside > 0 && inside <= 1 ? Optional.empty() : Optional.of(CatalogueCode.NOT_A_SHARE);
        }
        if (name.key().equals("volts") && inside <= 0) {
            return Optional.of(CatalogueCode.NOT_ABOVE_ZERO);
        }
        boolean temperature =
                name.kind() instanceof Kind.Quantity q && q.symbol().startsWith("deg");
        if (inside < 0 && !temperature) {
            return Optional.of(CatalogueCode.BELOW_ZERO);
        }
        boolean count = name.kind() instanceof Kind.Quantity q && q.symbol().isEmpty() && isCount(name);
        return count && inside != Math.rint(inside) ? Optional.of(CatalogueCode.NOT_WHOLE) : Optional.empty();
    }

    private static boolean isCount(Name name) {
        return Set.of("ports", "port", "joints", "priority", "others").contains(name.key());
    }

    private Optional<Notice> question(Name name, Cell cell, Typed typed, boolean bare, Unit wanted, Place place) {
        if (name.plausible().isPresent()) {
            Name.Range range = name.plausible().get();
            double shown = wanted.fromInside(typed.inside());
            if (shown < range.low() - 1e-9 || shown > range.high() + 1e-9) {
                String low = Show.text(wanted.toInside(range.low()), wanted);
                String high = Show.text(wanted.toInside(range.high()), wanted);
                return Optional.of(Notice.of(Level.WARN, CatalogueCode.IMPLAUSIBLE, place, typed.text(), low, high));
            }
        }
        if (!bare) {
            return Optional.empty();
        }
        CatalogueCode code = cell.form() == Cell.Form.NUMBER ? CatalogueCode.PLAIN_NUMBER : CatalogueCode.UNIT_ADDED;
        Level level = cell.form() == Cell.Form.NUMBER ? Level.WARN : Level.NOTE;
        return Optional.of(Notice.of(level, code, place, typed.text()));
    }
}
