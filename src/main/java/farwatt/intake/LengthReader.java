package farwatt.intake;

import farwatt.quantity.Decimal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Understands a cell that should say a length of cable. */
final class LengthReader {
    private static final BigDecimal LONGEST = BigDecimal.valueOf(1000);
    private static final Map<String, BigDecimal> METRES = Map.of(
            "m", BigDecimal.ONE,
            "km", BigDecimal.valueOf(1000),
            "cm", new BigDecimal("0.01"),
            "mm", new BigDecimal("0.001"),
            "ft", new BigDecimal("0.3048"),
            "in", new BigDecimal("0.0254"));

    private final String original;
    private final ListUnit usual;
    private final List<Remark> remarks = new ArrayList<>();

    private LengthReader(String original, ListUnit usual) {
        this.original = original;
        this.usual = usual;
    }

    static Length read(RawCell cell, Column column) {
        String text = Spelling.tidy(cell.text());
        Optional<Remark> unusable = Cells.unusable(cell, column.shown());
        if (unusable.isPresent()) {
            return Length.none(List.of(unusable.get()));
        }
        if (text.isEmpty()) {
            return Length.none(List.of());
        }
        if (Cells.isMissing(text)) {
            return Length.none(List.of(Remark.flag(IntakeSays.NO_LENGTH, text)));
        }
        Optional<Decimal> habit = cell.isExact() ? Optional.of(Decimal.POINT) : column.decimal();
        ListUnit usual = column.heading().unit().orElse(ListUnit.METRE);
        LengthReader reader = new LengthReader(text, usual);
        return reader.length(FigureReader.read(text, habit));
    }

    private Length length(Figures figures) {
        boolean bare = figures.list().stream().anyMatch(f -> f.unit().isEmpty());
        boolean lengths = figures.list().stream().allMatch(f -> f.measure(usual) == Measure.LENGTH);
        boolean cloudy = bare && !figures.words().isEmpty();
        if (figures.negative()) {
            return hold(IntakeSays.NEGATIVE, original);
        }
        if (figures.broken() || figures.isEmpty() || !lengths || cloudy) {
            return hold(IntakeSays.NOT_READ, original);
        }
        return switch (figures.join()) {
            case RANGE -> range(figures.list());
            case SUM -> sum(figures.list());
            case FEET_INCHES -> feet(figures.list());
            case SEPARATE ->
                figures.list().size() == 1 ? single(figures.list().get(0)) : hold(IntakeSays.NOT_READ, original);
            case PRODUCT, SPREAD -> hold(IntakeSays.NOT_READ, original);
        };
    }

    private Length single(Figure figure) {
        if (figure.bound() == Figure.Bound.LOWER) {
            return hold(IntakeSays.LOWER_BOUND, original);
        }
        ListUnit unit = figure.unit().orElse(usual);
        if (figure.other().isPresent()) {
            return ambiguous(figure, unit);
        }
        if (figure.bound() != Figure.Bound.NONE || figure.label() == Figure.Label.MOST) {
            IntakeSays code = figure.bound() == Figure.Bound.ABOUT ? IntakeSays.APPROXIMATE : IntakeSays.LONGEST;
            remarks.add(Remark.change(code, original, PowerReader.plain(figure.value()) + " " + unit.symbol()));
        }
        return checked(figure.value(), unit);
    }

    private Length ambiguous(Figure figure, ListUnit unit) {
        BigDecimal other = figure.other().orElseThrow();
        boolean otherFits = metres(other, unit).compareTo(LONGEST) <= 0;
        if (otherFits) {
            return hold(IntakeSays.AMBIGUOUS, original, PowerReader.plain(figure.value()), PowerReader.plain(other));
        }
        remarks.add(
                Remark.change(IntakeSays.PLAUSIBLE, original, PowerReader.plain(figure.value()) + " " + unit.symbol()));
        return checked(figure.value(), unit);
    }

    private Length range(List<Figure> list) {
        if (list.size() != 2 || list.get(0).value().compareTo(list.get(1).value()) > 0) {
            return hold(IntakeSays.NOT_READ, original);
        }
        ListUnit unit = list.get(1).unit().orElse(usual);
        remarks.add(Remark.change(
                IntakeSays.RANGE_UPPER, original, PowerReader.plain(list.get(1).value()) + " " + unit.symbol()));
        return checked(list.get(1).value(), unit);
    }

    private Length sum(List<Figure> list) {
        ListUnit unit = list.get(list.size() - 1).unit().orElse(usual);
        boolean same = list.stream().allMatch(f -> f.unit().orElse(unit).equals(unit));
        if (!same) {
            return hold(IntakeSays.NOT_READ, original);
        }
        BigDecimal sum = list.stream().map(Figure::value).reduce(BigDecimal.ZERO, BigDecimal::add);
        remarks.add(Remark.change(IntakeSays.SUMMED, original, PowerReader.plain(sum) + " " + unit.symbol()));
        return checked(sum, unit);
    }

    private Length feet(List<Figure> list) {
        BigDecimal metres = metres(list.get(0).value(), list.get(0).unit().orElseThrow())
                .add(metres(list.get(1).value(), list.get(1).unit().orElseThrow()));
        String text = PowerReader.plain(list.get(0).value()) + " ft "
                + PowerReader.plain(list.get(1).value()) + " in";
        return new Length(Optional.of(text), Optional.of(metres), remarks);
    }

    private Length checked(BigDecimal value, ListUnit unit) {
        BigDecimal metres = metres(value, unit);
        String text = PowerReader.plain(value) + " " + unit.symbol();
        if (metres.compareTo(LONGEST) > 0) {
            return hold(IntakeSays.TOO_LONG, text);
        }
        if (metres.signum() == 0) {
            remarks.add(Remark.flag(IntakeSays.ZERO_LENGTH));
            return Length.none(remarks);
        }
        return new Length(Optional.of(text), Optional.of(metres), remarks);
    }

    private Length hold(IntakeSays code, Object... parts) {
        return Length.none(List.of(Remark.hold(code, parts)));
    }

    private static BigDecimal metres(BigDecimal value, ListUnit unit) {
        return METRES.getOrDefault(unit.symbol(), BigDecimal.ONE).multiply(value);
    }
}
