package farwatt.language;

import farwatt.language.Operator.Level;
import farwatt.quantity.Literal;
import farwatt.quantity.Unit;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The rules of the grammar that have to do with operators, loosest first. */
final class Operators {
    private final Parser parser;
    private final Words words;
    private final Primaries primaries;

    Operators(Parser parser, Words words) {
        this.parser = parser;
        this.words = words;
        this.primaries = new Primaries(parser, words);
    }

    /** What binds at least as tightly as a level; one call for all levels, so that deep texts need little stack. */
    Expr climb(Level least) {
        int from = words.from();
        Expr left = least.compareTo(Level.NOT) <= 0 && words.take(Keyword.NOT) ? not(from) : unary();
        Optional<Expr> longer = Optional.of(left);
        while (longer.isPresent()) {
            left = longer.get();
            longer = continued(from, left, least);
        }
        return left;
    }

    /** What was read with the operator behind it and all that belongs to that. */
    private Optional<Expr> continued(int from, Expr left, Level least) {
        Operator operator = operator(least);
        if (operator != null) {
            return Optional.of(chain(from, left, operator.level()));
        }
        Comparison how = least.compareTo(Level.COMPARE) <= 0 ? comparison() : null;
        return how == null ? Optional.empty() : Optional.of(compare(from, left, how));
    }

    private Expr not(int from) {
        Expr of = climb(Level.COMPARE);
        return new Expr.Not(words.since(from), of);
    }

    private Expr chain(int from, Expr first, Level level) {
        List<Expr.Step> rest = new ArrayList<>();
        Operator operator = operator(level);
        while (operator != null && operator.level() == level) {
            words.next();
            rest.add(new Expr.Step(operator, climb(Level.values()[level.ordinal() + 1])));
            operator = operator(level);
        }
        return Shape.chain(words.since(from), first, rest);
    }

    private Expr compare(int from, Expr left, Comparison how) {
        Expr right = climb(Level.SUM);
        Expr read = new Expr.Compare(words.since(from), left, how, right);
        List<Expr> more = new ArrayList<>(List.of(read));
        while (isComparison()) {
            words.complain(ProblemCode.SECOND_COMPARISON);
            comparison();
            more.add(climb(Level.SUM));
        }
        return more.size() == 1 ? read : new Expr.Broken(words.since(from), more);
    }

    /** The operator here, if it binds at least as tightly as a level. */
    private @Nullable Operator operator(Level least) {
        for (Operator operator : Operator.values()) {
            boolean here = operator.level().compareTo(Level.NOT) < 0
                    ? operator.level().compareTo(least) >= 0 && words.is(operator.keyword())
                    : words.here().is(operator.sign());
            if (here && operator.level().compareTo(least) >= 0) {
                return operator;
            }
        }
        return null;
    }

    private boolean isComparison() {
        Token here = words.here();
        return here.is("<") || here.is("<=") || here.is(">") || here.is(">=") || here.is(Keyword.IS);
    }

    private @Nullable Comparison comparison() {
        if (words.take(Keyword.IS)) {
            return words.take(Keyword.NOT) ? Comparison.IS_NOT : Comparison.IS;
        }
        for (Comparison how : Comparison.values()) {
            if (!how.isSameness() && words.take(how.sign())) {
                return how;
            }
        }
        return null;
    }

    private Expr unary() {
        int from = words.from();
        if (!words.here().is("-")) {
            return power(from, primaries.primary());
        }
        if (isTemperature(words.following())) {
            words.next();
            Literal literal = words.next().literal().orElseThrow();
            Span span = new Span(from, literal.end());
            return power(
                    from,
                    primaries.path(from, new Expr.Quantity(span, literal.typed().negated())));
        }
        words.next();
        if (!parser.enter()) {
            return parser.nothing();
        }
        Expr of = unary();
        parser.leave();
        return new Expr.Negative(words.since(from), of);
    }

    private static boolean isTemperature(Token token) {
        return token.literal()
                .filter(l -> l.doubt() == Literal.Doubt.NONE)
                .map(l -> l.typed().unit())
                .filter(Unit::isAbsoluteTemperature)
                .isPresent();
    }

    private Expr power(int from, Expr base) {
        if (!words.take("^")) {
            return base;
        }
        if (!parser.enter()) {
            return parser.nothing();
        }
        Expr exponent = unary();
        parser.leave();
        return new Expr.Power(words.since(from), base, exponent);
    }
}
