package farwatt.language;

import farwatt.language.Type.Amount;
import farwatt.quantity.Dimension;
import farwatt.quantity.Unit;
import farwatt.report.Messages;
import farwatt.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What sums, products, powers and signs mean, and which of them have no meaning. */
final class Sums {
    /** Higher powers of a unit than anyone has a use for. */
    private static final int HIGHEST = 24;

    private static final Type NUMBER = new Amount(Dimension.NONE);

    private Sums() {}

    static Meaning negative(Checker checker, Expr.Negative e) {
        Meaning of = checker.meaning(e.of());
        if (of.isTemperature()) {
            checker.problems().add(e.span(), ProblemCode.TEMPERATURE_SIGN);
            return Meaning.WRONG;
        }
        if (!isQuantity(checker, e.of(), of)) {
            return Meaning.WRONG;
        }
        return of.formula() instanceof Nodes.Constant constant
                ? Meaning.constant(of.type(), -constant.number())
                : Meaning.of(of.type(), new Arithmetic.Negate(of.formula()));
    }

    /** True for amounts; says so where it is something else. */
    static boolean isQuantity(Checker checker, Expr expr, Meaning found) {
        if (!found.isAmount() && !found.isWrong()) {
            String said = Say.type(found.type(), checker.scope());
            checker.problems().add(expr.span(), ProblemCode.NOT_A_QUANTITY, said);
        }
        return found.isAmount();
    }

    static Meaning sum(Checker checker, Expr.Chain e) {
        Meaning first = checker.meaning(e.first());
        Type sum = added(checker, e.first(), first);
        Formula[] rest = new Formula[e.rest().size()];
        for (int i = 0; i < rest.length; i++) {
            Expr.Step step = e.rest().get(i);
            Meaning next = checker.meaning(step.of());
            rest[i] = next.formula();
            Type part = added(checker, step.of(), next);
            boolean numberFirst = i == 0 && Checker.isBareNumber(e.first());
            sum = plus(checker, numberFirst ? Optional.of(e.first()) : Optional.empty(), sum, step, part);
        }
        return chained(e, sum, first.formula(), rest);
    }

    /** The type of a part of a sum, unknown if it cannot be one. */
    private static Type added(Checker checker, Expr expr, Meaning found) {
        return found.isTemperature() || isQuantity(checker, expr, found) ? found.type() : Type.Plain.UNKNOWN;
    }

    /**
     * The type of a sum with one part more.
     *
     * @param number the sum so far if it is a number without a unit: then that is what is missing one
     */
    private static Type plus(Checker checker, Optional<Expr> number, Type sum, Expr.Step step, Type part) {
        if (sum == Type.Plain.UNKNOWN || part == Type.Plain.UNKNOWN) {
            return Type.Plain.UNKNOWN;
        }
        boolean less = step.operator() == Operator.MINUS;
        if (sum == Type.Plain.TEMPERATURE && part == Type.Plain.TEMPERATURE) {
            if (less) {
                return new Amount(Dimension.KELVIN);
            }
            checker.problems().add(step.of().span(), ProblemCode.TEMPERATURES_ADDED);
            return Type.Plain.UNKNOWN;
        }
        if (sum == Type.Plain.TEMPERATURE && Checker.isDifference(part)) {
            return sum;
        }
        if (Checker.isDifference(sum) && part == Type.Plain.TEMPERATURE) {
            if (!less) {
                return part;
            }
            checker.problems().add(step.of().span(), ProblemCode.DIFFERENCE_LESS_TEMPERATURE);
            return Type.Plain.UNKNOWN;
        }
        if (!sum.equals(part)) {
            boolean unitMissing = number.isPresent()
                    && !(part instanceof Amount a && a.dimension().isNone());
            if (unitMissing) {
                checker.mismatch(number.get(), sum, addable(part), ProblemCode.ADD_CLASH);
            } else {
                checker.mismatch(step.of(), part, addable(sum), ProblemCode.ADD_CLASH);
            }
            return Type.Plain.UNKNOWN;
        }
        return sum;
    }

    /** What may be added to a value of a type. */
    private static Type addable(Type type) {
        return type == Type.Plain.TEMPERATURE ? new Amount(Dimension.KELVIN) : type;
    }

    static Meaning product(Checker checker, Expr.Chain e) {
        Meaning first = checker.meaning(e.first());
        Type product = factor(checker, e.first(), first);
        Formula[] rest = new Formula[e.rest().size()];
        for (int i = 0; i < rest.length; i++) {
            Expr.Step step = e.rest().get(i);
            Meaning next = checker.meaning(step.of());
            rest[i] = next.formula();
            Type part = factor(checker, step.of(), next);
            if (product instanceof Amount a && part instanceof Amount b) {
                boolean over = step.operator() == Operator.OVER;
                Dimension d =
                        over ? a.dimension().over(b.dimension()) : a.dimension().times(b.dimension());
                product = bounded(checker, e.span(), d);
            } else {
                product = Type.Plain.UNKNOWN;
            }
        }
        return chained(e, product, first.formula(), rest);
    }

    private static Type factor(Checker checker, Expr expr, Meaning found) {
        if (scaled(checker, expr, found, Messages.text(Phrase.A_PRODUCT)) || !isQuantity(checker, expr, found)) {
            return Type.Plain.UNKNOWN;
        }
        return found.type();
    }

    /** True, and said, for a temperature where only amounts can be used. */
    static boolean scaled(Checker checker, Expr expr, Meaning found, String where) {
        if (found.isTemperature()) {
            checker.problems().add(expr.span(), ProblemCode.TEMPERATURE_SCALED, where);
        }
        return found.isTemperature();
    }

    private static Type bounded(Checker checker, Span span, Dimension dimension) {
        if (dimension.highest() <= HIGHEST) {
            return new Amount(dimension);
        }
        checker.problems().add(span, ProblemCode.TOO_HIGH);
        return Type.Plain.UNKNOWN;
    }

    private static Meaning chained(Expr.Chain e, Type type, Formula first, Formula[] rest) {
        if (type == Type.Plain.UNKNOWN) {
            return Meaning.WRONG;
        }
        List<Expr.Step> steps = e.rest();
        if (rest.length == 1) {
            return Meaning.of(type, pair(steps.get(0), first, rest[0], e.span()));
        }
        Operator[] operators = steps.stream().map(Expr.Step::operator).toArray(Operator[]::new);
        Span[] spans = steps.stream()
                .map(step -> step.operator() == Operator.OVER ? step.of().span() : e.span())
                .toArray(Span[]::new);
        return Meaning.of(type, new Arithmetic.Run(first, operators, rest, spans));
    }

    private static Formula pair(Expr.Step step, Formula first, Formula other, Span span) {
        return switch (step.operator()) {
            case PLUS -> new Arithmetic.Plus(first, other, span);
            case MINUS -> new Arithmetic.Minus(first, other, span);
            case TIMES -> new Arithmetic.Times(first, other, span);
            default -> new Arithmetic.Over(first, other, step.of().span());
        };
    }

    static Meaning power(Checker checker, Expr.Power e) {
        Meaning base = checker.meaning(e.base());
        Meaning exponent = checker.meaning(e.exponent());
        if (scaled(checker, e.base(), base, Messages.text(Phrase.AN_EXPONENT))
                || !isQuantity(checker, e.base(), base)
                || exponent.isWrong()) {
            return Meaning.WRONG;
        }
        Scope scope = checker.scope();
        if (!exponent.type().equals(NUMBER)) {
            String said = Say.type(exponent.type(), scope);
            checker.problems().add(e.exponent().span(), ProblemCode.POWER_UNIT, said);
            return Meaning.WRONG;
        }
        Dimension dimension = ((Amount) base.type()).dimension();
        Formula formula = new Arithmetic.Power(base.formula(), exponent.formula(), e.span());
        if (dimension.isNone()) {
            return Meaning.of(NUMBER, formula);
        }
        OptionalInt whole = whole(e.exponent());
        if (whole.isEmpty()) {
            checker.problems().add(e.exponent().span(), ProblemCode.POWER_WHOLE, Say.type(base.type(), scope));
            return Meaning.WRONG;
        }
        return Meaning.of(bounded(checker, e.span(), dimension.power(whole.getAsInt())), formula);
    }

    /** A small whole number as it stands in the text. */
    private static OptionalInt whole(Expr expr) {
        Expr of = expr instanceof Expr.Negative negative ? negative.of() : expr;
        Optional<String> digits =
                of instanceof Expr.Quantity q && q.typed().unit().equals(Unit.ONE)
                        ? Optional.of(q.typed().number())
                        : Optional.empty();
        if (digits.filter(d -> d.matches("[0-9]{1,2}")).isEmpty()) {
            return OptionalInt.empty();
        }
        int number = Integer.parseInt(digits.get());
        return OptionalInt.of(of == expr ? number : -number);
    }
}
