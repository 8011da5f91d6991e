package farwatt.language;

import farwatt.quantity.Dimension;
import farwatt.quantity.Typed;
import farwatt.quantity.Unit;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds out what an expression means: resolves names, checks types and puts formulas together, in one walk. One checker
 * for each scope; the ones of inner scopes share what is found. The visitor's extra value is the type wanted, a help
 * for literals and completion; the caller still checks the type it gets.
 */
final class Checker implements Expr.Visitor<Type, Meaning> {
    /** What the checkers of one text share. */
    record Shared(Problems problems, List<Checked.Known> known, Hoist hoist, Hole hole) {
        static Shared of(List<Problem> before, Hoist hoist, Hole hole) {
            return new Shared(new Problems(before), new ArrayList<>(), hoist, hole);
        }
    }

    private final Shared shared;
    private final Scope scope;
    private final Uses.Builder uses = new Uses.Builder();
    private final Names names;

    Checker(Shared shared, Scope scope) {
        this.shared = shared;
        this.scope = scope;
        this.names = new Names(this);
    }

    /** The checker of names inside a gather. */
    Checker inside(String kind) {
        return new Checker(shared, scope.inside(kind));
    }

    Scope scope() {
        return scope;
    }

    Problems problems() {
        return shared.problems;
    }

    List<Checked.Known> known() {
        return shared.known;
    }

    Hoist hoist() {
        return shared.hoist;
    }

    Hole hole() {
        return shared.hole;
    }

    Uses.Builder uses() {
        return uses;
    }

    /** What a whole text means, fitted to what its place asks for. */
    Meaning whole(Expr expr, Wanted wanted) {
        Meaning found = meaning(expr, wanted.type());
        if (found.type() instanceof Type.Choice from
                && wanted.type() instanceof Type.Choice to
                && to.words().containsAll(from.words())) {
            return Comparisons.translated(found, from, to);
        }
        if (!fits(found.type(), wanted.type())) {
            mismatch(expr, found.type(), wanted.type(), ProblemCode.CLASH);
            return Meaning.WRONG;
        }
        return found;
    }

    Meaning meaning(Expr expr, Type wanted) {
        return expr.accept(this, wanted);
    }

    Meaning meaning(Expr expr) {
        return expr.accept(this, Type.Plain.UNKNOWN);
    }

    /** A part that must be yes or no. */
    Formula answer(Expr expr) {
        Meaning found = meaning(expr, Type.Plain.YES_NO);
        if (!fits(found.type(), Type.Plain.YES_NO)) {
            mismatch(expr, found.type(), Type.Plain.YES_NO, ProblemCode.CLASH);
        }
        return found.formula();
    }

    /** True if a value of one type may stand where the other is wanted. */
    boolean fits(Type found, Type wanted) {
        if (found == Type.Plain.UNKNOWN || wanted == Type.Plain.UNKNOWN || found.equals(wanted)) {
            return true;
        }
        return found instanceof Type.RowOf row
                && wanted instanceof Type.RowOf other
                && scope.join(row.kind(), other.kind()).isPresent();
    }

    /** Says that a type was found where another was wanted, with the remedy where it is a known one. */
    void mismatch(Expr expr, Type found, Type wanted, ProblemCode code) {
        String wantedText = Say.type(wanted, scope);
        Unit unit = wanted.unit(scope.units());
        if (isBareNumber(expr) && !unit.symbol().isEmpty()) {
            Optional<Expr> mended = withUnit(expr, unit);
            String typed = Language.print(expr);
            String instead = mended.map(Language::print).orElse(typed);
            problems()
                    .instead(
                            expr.span(),
                            ProblemCode.UNIT_MISSING,
                            instead,
                            Say.quoted(typed),
                            wantedText,
                            Say.quoted(instead));
            return;
        }
        boolean scale = (isDifference(found) && wanted == Type.Plain.TEMPERATURE)
                || (found == Type.Plain.TEMPERATURE && isDifference(wanted));
        ProblemCode said = scale ? ProblemCode.TEMPERATURE_NOT_DIFFERENCE : code;
        problems().add(expr.span(), said, Say.type(found, scope), wantedText);
    }

    /** Says that two values that must be alike are not; a number without a unit is to blame before anything else. */
    void unlike(Expr first, Type one, Expr second, Type other, ProblemCode code) {
        if (fits(other, one)) {
            return;
        }
        if (isBareNumber(first) && !isBareNumber(second)) {
            mismatch(first, one, other, code);
        } else {
            mismatch(second, other, one, code);
        }
    }

    static boolean isDifference(Type type) {
        return type instanceof Type.Amount amount && amount.dimension().equals(Dimension.KELVIN);
    }

    /** True for a number typed without a unit, with or without a minus. */
    static boolean isBareNumber(Expr expr) {
        Expr of = expr instanceof Expr.Negative negative ? negative.of() : expr;
        return of instanceof Expr.Quantity quantity && quantity.typed().unit().equals(Unit.ONE);
    }

    /** A bare number with a unit; empty for anything else. */
    static Optional<Expr> withUnit(Expr expr, Unit unit) {
        if (!isBareNumber(expr)) {
            return Optional.empty();
        }
        if (expr instanceof Expr.Quantity quantity) {
            return Optional.of(new Expr.Quantity(expr.span(), quantity.typed().in(unit)));
        }
        Expr.Quantity of = (Expr.Quantity) ((Expr.Negative) expr).of();
        Typed typed = of.typed().in(unit);
        // the minus of a temperature belongs to its literal
        return Optional.of(
                unit.isAbsoluteTemperature()
                        ? new Expr.Quantity(expr.span(), typed.negated())
                        : new Expr.Negative(expr.span(), new Expr.Quantity(of.span(), typed)));
    }

    @Override
    public Meaning quantity(Expr.Quantity e, Type wanted) {
        if (wanted instanceof Type.Choice choice) {
            String said = e.typed().text().replace(" ", "");
            int place = choice.words().indexOf(said);
            boolean bare = e.typed().unit().equals(Unit.ONE);
            if (place >= 0 && bare) {
                return Meaning.constant(choice, place);
            }
            if (place >= 0 || bare) {
                unknownChoice(e.span(), said, said, choice);
                return Meaning.WRONG;
            }
        }
        return Meaning.constant(Type.of(e.typed().unit()), e.typed().inside());
    }

    @Override
    public Meaning text(Expr.Text e, Type wanted) {
        if (!(wanted instanceof Type.Choice choice)) {
            return Meaning.constant(Type.Plain.TEXT, scope.word(e.text()));
        }
        int place = choice.words().indexOf(e.text());
        if (place < 0) {
            unknownChoice(e.span(), e.text(), Say.quoted(e.text()), choice);
            return Meaning.WRONG;
        }
        return Meaning.constant(choice, place);
    }

    private void unknownChoice(Span span, String word, String said, Type.Choice choice) {
        Optional<String> near = Near.best(word, choice.words()).map(Printer::quotedText);
        problems().near(span, ProblemCode.UNKNOWN_CHOICE, near, said, Say.oneOf(choice.words()));
    }

    @Override
    public Meaning word(Expr.Word e, Type wanted) {
        return names.word(e);
    }

    @Override
    public Meaning name(Expr.Name e, Type wanted) {
        return names.bare(e, wanted);
    }

    @Override
    public Meaning row(Expr.Row e, Type wanted) {
        return names.row(e);
    }

    @Override
    public Meaning path(Expr.Path e, Type wanted) {
        return names.path(e);
    }

    @Override
    public Meaning negative(Expr.Negative e, Type wanted) {
        return Sums.negative(this, e);
    }

    @Override
    public Meaning not(Expr.Not e, Type wanted) {
        return Meaning.of(Type.Plain.YES_NO, new Logic.Not(answer(e.of())));
    }

    @Override
    public Meaning power(Expr.Power e, Type wanted) {
        return Sums.power(this, e);
    }

    @Override
    public Meaning chain(Expr.Chain e, Type wanted) {
        return switch (e.level()) {
            case SUM -> Sums.sum(this, e);
            case PRODUCT -> Sums.product(this, e);
            default -> joined(e);
        };
    }

    private Meaning joined(Expr.Chain e) {
        Formula[] parts = new Formula[e.rest().size() + 1];
        parts[0] = answer(e.first());
        for (int i = 1; i < parts.length; i++) {
            parts[i] = answer(e.rest().get(i - 1).of());
        }
        Operator operator = e.rest().get(0).operator();
        return Meaning.of(Type.Plain.YES_NO, new Logic.Joined(operator, parts));
    }

    @Override
    public Meaning compare(Expr.Compare e, Type wanted) {
        return Comparisons.compare(this, e);
    }

    @Override
    public Meaning condition(Expr.If e, Type wanted) {
        return Branches.condition(this, e, wanted);
    }

    @Override
    public Meaning call(Expr.Call e, Type wanted) {
        return Calls.call(this, e);
    }

    @Override
    public Meaning gather(Expr.Gather e, Type wanted) {
        return Gathers.gather(this, e);
    }

    @Override
    public Meaning broken(Expr.Broken e, Type wanted) {
        e.parts().forEach(this::meaning);
        return Meaning.WRONG;
    }
}
