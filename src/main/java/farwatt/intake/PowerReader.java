package farwatt.intake;

import farwatt.quantity.Decimal;
import farwatt.standard.PowerClass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Understands a cell that should say watts. */
final class PowerReader {
    private static final BigDecimal MOST_WATTS = BigDecimal.valueOf(100);

    private final String original;
    private final Figures figures;
    private final ListUnit usual;
    private final Optional<BigDecimal> volts;
    private final List<Remark> remarks = new ArrayList<>();

    private PowerReader(String original, Figures figures, ListUnit usual, Optional<BigDecimal> volts) {
        this.original = original;
        this.figures = figures;
        this.usual = usual;
        this.volts = volts;
    }

    /**
     * The watts of a cell.
     *
     * @param volts by which amps become watts, where the list names them
     */
    static Power read(RawCell cell, Column column, Optional<BigDecimal> volts) {
        String text = Spelling.tidy(cell.text());
        Optional<Remark> unusable = Cells.unusable(cell, column.shown());
        if (unusable.isPresent()) {
            return Power.held(text, unusable.get());
        }
        if (text.isEmpty() || Cells.isMissing(text)) {
            return Power.none(text);
        }
        Optional<Decimal> habit = cell.isExact() ? Optional.of(Decimal.POINT) : column.decimal();
        Figures figures = FigureReader.read(text, habit);
        ListUnit usual = column.heading().unit().orElse(usual(column.meaning()));
        Power read = new PowerReader(
                        text, figures, usual, volts.or(() -> column.heading().volts()))
                .power();
        boolean workedOut = cell.form() == RawCell.Form.WORKED_OUT;
        if (read.isHeld() || (!workedOut && !cell.filled())) {
            return read;
        }
        IntakeSays code = workedOut ? IntakeSays.WORKED_OUT : IntakeSays.MERGED_FIGURE;
        List<Remark> said = new ArrayList<>(read.remarks());
        said.add(Remark.change(code, column.shown(), text));
        Source source = workedOut ? Source.COMPUTED : read.source();
        return new Power(read.most(), read.typical(), read.start(), source, text, said);
    }

    private static ListUnit usual(Meaning meaning) {
        return meaning == Meaning.CURRENT ? ListUnit.AMPERE : ListUnit.WATT;
    }

    private Power power() {
        if (figures.negative()) {
            return hold(IntakeSays.NEGATIVE, original);
        }
        if (figures.broken() || figures.isEmpty() || isCloudy()) {
            return hold(IntakeSays.NOT_READ, original);
        }
        List<Figure> watts = of(Measure.POWER);
        List<Figure> amps = of(Measure.CURRENT);
        List<Figure> ownVolts = of(Measure.VOLTS);
        if (!watts.isEmpty()) {
            return watts(watts);
        }
        if (!amps.isEmpty()) {
            Optional<BigDecimal> at = ownVolts.isEmpty() ? volts : Optional.of(base(ownVolts.get(0)));
            BigDecimal current = base(greatest(amps));
            return at.map(v -> computed(v, current)).orElseGet(() -> hold(IntakeSays.NEEDS_VOLTS, plain(current)));
        }
        return hold(IntakeSays.NOT_WATTS, original);
    }

    /** A number without a unit beside a word nobody knows is no number to trust. */
    private boolean isCloudy() {
        boolean bare = figures.list().stream().anyMatch(f -> f.unit().isEmpty());
        return bare && !figures.words().isEmpty();
    }

    private Power computed(BigDecimal v, BigDecimal a) {
        BigDecimal product = v.multiply(a);
        remarks.add(Remark.change(IntakeSays.VOLTS_TIMES_AMPS, plain(v), plain(a), plain(product)));
        return checked(Power.of(product, Source.COMPUTED, original, remarks));
    }

    private Power watts(List<Figure> watts) {
        Optional<Figure> open =
                watts.stream().filter(f -> f.other().isPresent()).findFirst();
        if (open.isPresent()) {
            return ambiguous(open.get());
        }
        return switch (figures.join()) {
            case RANGE -> range(watts);
            case SUM -> sum(watts);
            case SPREAD -> spread(watts.get(0));
            case PRODUCT -> product(watts);
            case SEPARATE, FEET_INCHES -> watts.size() == 1 ? single(watts.get(0)) : modes(watts);
        };
    }

    private Power product(List<Figure> watts) {
        boolean withVolts = watts.size() == 1
                && figures.list().size() > 1
                && of(Measure.POWER).size() == 1;
        return withVolts && watts.get(0).unit().isPresent() ? single(watts.get(0)) : hold(IntakeSays.TIMES, original);
    }

    /** One mark that may be read either way: the plausible reading, if only one is. */
    private Power ambiguous(Figure figure) {
        BigDecimal other = figure.other().orElseThrow();
        boolean fits = base(figure).compareTo(MOST_WATTS) <= 0;
        boolean otherFits = factor(figure).multiply(other).compareTo(MOST_WATTS) <= 0;
        if (fits == otherFits || figures.list().size() > 1) {
            return hold(IntakeSays.AMBIGUOUS, original, plain(figure.value()), plain(other));
        }
        BigDecimal taken = fits ? base(figure) : factor(figure).multiply(other);
        remarks.add(Remark.change(IntakeSays.PLAUSIBLE, original, plain(taken) + " W"));
        return checked(Power.of(taken, Source.TYPED, original, remarks));
    }

    private Power single(Figure figure) {
        BigDecimal value = base(figure);
        String shown = plain(value) + " W";
        Source source = Source.TYPED;
        if (figure.bound() == Figure.Bound.LOWER) {
            return hold(IntakeSays.LOWER_BOUND, original);
        }
        if (figure.bound() == Figure.Bound.UPPER || figure.label() == Figure.Label.MOST) {
            source = Source.BOUND;
            remarks.add(
                    Remark.change(IntakeSays.UPPER_BOUND, original, shown, PowerClass.holding(value.doubleValue())));
        } else if (figure.bound() == Figure.Bound.ABOUT) {
            source = Source.APPROXIMATE;
            remarks.add(Remark.change(IntakeSays.APPROXIMATE, original, shown));
        } else if (factor(figure).compareTo(BigDecimal.ONE) != 0) {
            remarks.add(Remark.change(IntakeSays.CONVERTED, original, shown));
        }
        leftover();
        return checked(Power.of(value, source, original, remarks));
    }

    private Power range(List<Figure> watts) {
        if (watts.size() != 2 || figures.list().size() != 2) {
            return hold(IntakeSays.NOT_READ, original);
        }
        ListUnit unit = watts.get(1).unit().or(() -> watts.get(0).unit()).orElse(usual);
        BigDecimal low = unit.base(watts.get(0).value());
        BigDecimal high = unit.base(watts.get(1).value());
        if (low.compareTo(high) > 0) {
            return hold(IntakeSays.NOT_READ, original);
        }
        remarks.add(Remark.change(IntakeSays.RANGE_UPPER, original, plain(high) + " W"));
        return checked(Power.of(high, Source.RANGE, original, remarks));
    }

    private Power sum(List<Figure> watts) {
        BigDecimal sum = watts.stream().map(this::base).reduce(BigDecimal.ZERO, BigDecimal::add);
        remarks.add(Remark.change(IntakeSays.SUMMED, original, plain(sum) + " W"));
        Power most = Power.of(sum, Source.COMPUTED, original, remarks);
        return checked(most.withTypical(base(watts.get(0))));
    }

    private Power spread(Figure figure) {
        Figure second = figures.list().get(figures.list().size() - 1);
        BigDecimal value = base(figure);
        boolean share = second.unit().filter(u -> u.measure() == Measure.SHARE).isPresent();
        BigDecimal more = share
                ? value.multiply(second.value()).movePointLeft(2)
                : factor(second).multiply(second.value());
        BigDecimal high = value.add(more);
        remarks.add(Remark.change(IntakeSays.RANGE_UPPER, original, plain(high) + " W"));
        return checked(Power.of(high, Source.RANGE, original, remarks));
    }

    private Power modes(List<Figure> watts) {
        ListUnit last = watts.get(watts.size() - 1).unit().orElse(usual);
        Comparator<Figure> bySize = Comparator.comparing(f -> value(f, last));
        Figure most = watts.stream().max(bySize).orElseThrow();
        Figure least = watts.stream().min(bySize).orElseThrow();
        Figure typical = watts.stream()
                .filter(f -> f.label() == Figure.Label.TYPICAL)
                .findFirst()
                .orElse(least);
        Optional<Figure> start =
                watts.stream().filter(f -> f.label() == Figure.Label.START).findFirst();
        if (start.isPresent() && watts.size() > 1) {
            most = watts.stream()
                    .filter(f -> f.label() != Figure.Label.START)
                    .max(bySize)
                    .orElse(most);
        }
        String shown = plain(value(most, last)) + " W";
        remarks.add(Remark.change(IntakeSays.MODES, original, shown, plain(value(typical, last)) + " W"));
        Power power =
                Power.of(value(most, last), Source.MODES, original, remarks).withTypical(value(typical, last));
        return checked(start.map(f -> power.withStart(value(f, last))).orElse(power));
    }

    private void leftover() {
        List<String> said = new ArrayList<>(figures.words());
        said.addAll(figures.remarks());
        if (!said.isEmpty()) {
            remarks.add(Remark.flag(IntakeSays.REMARK_LEFT, original, String.join(" ", said)));
        }
    }

    private Power checked(Power power) {
        BigDecimal most = power.most().orElseThrow();
        if (most.compareTo(MOST_WATTS) > 0) {
            BigDecimal thousandth = most.movePointLeft(3);
            boolean mayBe = thousandth.compareTo(MOST_WATTS) <= 0 && most.compareTo(BigDecimal.valueOf(500)) >= 0;
            return mayBe
                    ? hold(IntakeSays.OVER_PORT_MILLI, plain(most) + " W", plain(thousandth) + " W")
                    : hold(IntakeSays.OVER_PORT, plain(most) + " W");
        }
        return power;
    }

    private Power hold(IntakeSays code, Object... parts) {
        return Power.held(original, Remark.hold(code, parts));
    }

    private List<Figure> of(Measure measure) {
        List<Figure> some = new ArrayList<>(figures.list().size());
        for (Figure figure : figures.list()) {
            if (figure.measure(usual) == measure) {
                some.add(figure);
            }
        }
        return some;
    }

    private Figure greatest(List<Figure> some) {
        return some.stream().max(Comparator.comparing(this::base)).orElseThrow();
    }

    private BigDecimal value(Figure figure, ListUnit otherwise) {
        return figure.unit().orElse(otherwise).base(figure.value());
    }

    private BigDecimal base(Figure figure) {
        return factor(figure).multiply(figure.value());
    }

    private BigDecimal factor(Figure figure) {
        return figure.unit().orElse(usual).factor();
    }

    /** Digits without needless zeros; more than six decimals are rounded away. */
    static String plain(BigDecimal value) {
        BigDecimal rounded = value.scale() > 6 ? value.setScale(6, RoundingMode.HALF_EVEN) : value;
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
