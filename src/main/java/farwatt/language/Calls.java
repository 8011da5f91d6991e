package farwatt.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What functions mean. */
final class Calls {
    private Calls() {}

    static Meaning call(Checker checker, Expr.Call e) {
        Optional<Function> function = Function.of(e.function().name());
        if (function.isEmpty()) {
            if (!checker.hole().fill(e.function().span(), new Hole.Called())) {
                unknown(checker, e.function());
            }
            e.arguments().forEach(checker::meaning);
            return Meaning.WRONG;
        }
        int given = e.arguments().size();
        if (given < function.get().fewest() || given > function.get().most()) {
            arguments(checker, e, function.get());
            e.arguments().forEach(checker::meaning);
            return Meaning.WRONG;
        }
        return switch (function.get()) {
            case MIN, MAX -> extreme(checker, e, function.get());
            case ABS, SQRT -> single(checker, e, function.get());
            case ROUND, DOWN, UP -> stepped(checker, e, function.get());
        };
    }

    private static void unknown(Checker checker, Expr.Part name) {
        List<String> functions = new ArrayList<>();
        for (Function function : Function.values()) {
            functions.add(function.word());
        }
        List<String> all = new ArrayList<>(functions);
        for (GatherKind gather : GatherKind.values()) {
            all.add(gather.word());
        }
        Optional<String> near = Near.best(name.name(), all);
        checker.problems()
                .near(name.span(), ProblemCode.UNKNOWN_FUNCTION, near, Say.quoted(name.name()), Say.oneOf(functions));
    }

    private static void arguments(Checker checker, Expr.Call e, Function function) {
        boolean open = function.most() > function.fewest();
        checker.problems()
                .add(
                        e.span(),
                        open ? ProblemCode.ARGUMENTS_OR_MORE : ProblemCode.ARGUMENTS,
                        Say.quoted(function.word()),
                        e.arguments().size(),
                        function.fewest());
    }

    private static Meaning extreme(Checker checker, Expr.Call e, Function function) {
        List<Meaning> values = Branches.alike(checker, e.arguments(), Type.Plain.UNKNOWN, ProblemCode.COMPARE_CLASH);
        for (int i = 0; i < values.size(); i++) {
            if (!isOrdered(checker, e.arguments().get(i), values.get(i))) {
                return Meaning.WRONG;
            }
        }
        Formula[] formulas = values.stream().map(Meaning::formula).toArray(Formula[]::new);
        return Meaning.of(values.get(0).type(), new Arithmetic.Extreme(function, formulas));
    }

    /** True for what has a least and a greatest; says so where it has none. */
    static boolean isOrdered(Checker checker, Expr expr, Meaning found) {
        if (found.type() == Type.Plain.GAUGE) {
            checker.problems().add(expr.span(), ProblemCode.GAUGE_ORDER);
            return false;
        }
        return found.isTemperature() || Sums.isQuantity(checker, expr, found);
    }

    private static Meaning single(Checker checker, Expr.Call e, Function function) {
        Expr argument = e.arguments().get(0);
        Meaning of = checker.meaning(argument);
        if (Sums.scaled(checker, argument, of, Say.quoted(function.word()))
                || !Sums.isQuantity(checker, argument, of)) {
            return Meaning.WRONG;
        }
        if (function == Function.ABS) {
            return Meaning.of(of.type(), new Arithmetic.Abs(of.formula()));
        }
        Optional<Type> root = ((Type.Amount) of.type()).dimension().root().map(Type.Amount::new);
        if (root.isEmpty()) {
            String said = Say.type(of.type(), checker.scope());
            checker.problems().add(argument.span(), ProblemCode.ROOT_UNIT, said);
            return Meaning.WRONG;
        }
        return Meaning.of(root.get(), new Arithmetic.Root(of.formula(), e.span()));
    }

    private static Meaning stepped(Checker checker, Expr.Call e, Function function) {
        Expr first = e.arguments().get(0);
        Meaning of = checker.meaning(first);
        if (Sums.scaled(checker, first, of, Say.quoted(function.word())) || !Sums.isQuantity(checker, first, of)) {
            return Meaning.WRONG;
        }
        Expr second = e.arguments().get(1);
        Meaning step = checker.meaning(second, of.type());
        if (step.isWrong() || !of.type().equals(step.type())) {
            checker.unlike(first, of.type(), second, step.type(), ProblemCode.COMPARE_CLASH);
            return Meaning.WRONG;
        }
        return Meaning.of(of.type(), new Arithmetic.Stepped(function, of.formula(), step.formula(), e.span()));
    }
}
