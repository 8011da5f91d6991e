package farwatt.language;

import farwatt.quantity.Literal;
import farwatt.quantity.Unit;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
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

    /** Parts of one level with the operators between them. */
    Expr chain(Operator.Level level) {
        int from = words.from();
        Expr first = part(level);
        List<Expr.Step> rest = new ArrayList<>(0);
        Operator operator = operator(level);
        while (operator != null) {
            words.next();
            rest.add(new Expr.Step(operator, part(level)));
            operator = operator(level);
        }
        return Shape.chain(words.since(from), first, rest);
    }

    private Expr part(Operator.Level level) {
        return switch (level) {
            case OR -> chain(Operator.Level.AND);
            case AND -> not();
            case SUM -> chain(Operator.Level.PRODUCT);
            default -> unary();
        };
    }

    private @Nullable Operator operator(Operator.Level level) {
        return switch (level) {
            case OR -> words.is(Keyword.OR) ? Operator.OR : null;
            case AND -> words.is(Keyword.AND) ? Operator.AND : null;
            case SUM -> sign("+", Operator.PLUS, "-", Operator.MINUS);
            default -> sign("*", Operator.TIMES, "/", Operator.OVER);
        };
    }

    private @Nullable Operator sign(String one, Operator first, String other, Operator second) {
        if (words.here().is(one)) {
            return first;
        }
        return words.here().is(other) ? second : null;
    }

    private Expr not() {
        int from = words.from();
        if (!words.take(Keyword.NOT)) {
            return compare();
        }
        Expr of = compare();
        return new Expr.Not(words.since(from), of);
    }

    private Expr compare() {
        int from = words.from();
        Expr left = chain(Operator.Level.SUM);
        Comparison how = comparison();
        if (how == null) {
            return left;
        }
        Expr right = chain(Operator.Level.SUM);
        Expr read = new Expr.Compare(words.since(from), left, how, right);
        List<Expr> more = new ArrayList<>(List.of(read));
        while (isComparison()) {
            words.complain(ProblemCode.SECOND_COMPARISON);
            comparison();
            more.add(chain(Operator.Level.SUM));
        }
        return more.size() == 1 ? read : new Expr.Broken(words.since(from), more);
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
