package farwatt.language;

import farwatt.quantity.Dimension;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What gathers mean. */
final class Gathers {
    private Gathers() {}

    static Meaning gather(Checker checker, Expr.Gather e) {
        Optional<Source> source = source(checker, e.rows().table());
        Optional<Meaning> base = e.rows().base().map(node -> base(checker, e, node, source));
        if (source.isEmpty()) {
            return Meaning.WRONG;
        }
        Checker inner = checker.inside(source.get().kind());
        Optional<Formula> where = e.rows().where().map(inner::answer);
        Optional<Meaning> body = e.body().map(value -> body(inner, e, value));
        boolean wrong = body.filter(Meaning::isWrong).isPresent()
                || base.filter(Meaning::isWrong).isPresent();
        return wrong ? Meaning.WRONG : planned(checker, e, source.get(), base, new Inner(inner, body, where));
    }

    private static Optional<Source> source(Checker checker, Expr.Part table) {
        Scope scope = checker.scope();
        if (checker.hole().fill(table.span(), new Hole.Table(scope))) {
            return Optional.empty();
        }
        Optional<Source> source = scope.table(table.name());
        if (source.isEmpty() && !table.name().isEmpty()) {
            List<String> tables = scope.tables().stream().map(Item::name).toList();
            checker.problems()
                    .near(
                            table.span(),
                            ProblemCode.UNKNOWN_TABLE,
                            Near.best(table.name(), tables),
                            Say.quoted(table.name()),
                            Say.oneOf(tables));
        }
        return source;
    }

    private static Meaning base(Checker checker, Expr.Gather e, Expr node, Optional<Source> source) {
        Meaning found = checker.meaning(node);
        if (source.isEmpty() || found.isWrong()) {
            return Meaning.WRONG;
        }
        String reach = Say.quoted(e.rows().reach().word());
        if (source.get().nodes().isEmpty()) {
            String table = Say.quoted(e.rows().table().name());
            checker.problems().add(node.span(), ProblemCode.HANGS_ON_NOTHING, reach, table);
            return Meaning.WRONG;
        }
        if (found.type() instanceof Type.RowOf row && source.get().nodes().contains(row.kind())) {
            return found;
        }
        Scope scope = checker.scope();
        List<String> wanted = source.get().nodes().stream()
                .filter(kind -> !isCovered(kind, source.get(), scope))
                .sorted()
                .map(scope::called)
                .toList();
        checker.problems()
                .add(
                        node.span(),
                        ProblemCode.NOT_A_NODE,
                        Say.type(found.type(), scope),
                        reach,
                        Say.alternatives(wanted));
        return Meaning.WRONG;
    }

    /** True for a kind that is part of another one that may stand in the same place. */
    private static boolean isCovered(String kind, Source source, Scope scope) {
        return source.nodes().stream()
                .anyMatch(other -> !other.equals(kind)
                        && scope.join(kind, other).filter(other::equals).isPresent());
    }

    private static Meaning body(Checker inner, Expr.Gather e, Expr value) {
        switch (e.kind()) {
            case EVERY, SOME -> {
                return Meaning.of(Type.Plain.YES_NO, inner.answer(value));
            }
            case LEAST, GREATEST -> {
                Meaning found = inner.meaning(value);
                return Calls.isOrdered(inner, value, found) ? found : Meaning.WRONG;
            }
            default -> {
                return summed(inner, e.kind(), value);
            }
        }
    }

    private static Meaning summed(Checker inner, GatherKind kind, Expr value) {
        Meaning found = inner.meaning(value);
        if (found.isTemperature() && kind == GatherKind.MEAN) {
            return found;
        }
        if (found.isTemperature()) {
            inner.problems().add(value.span(), ProblemCode.TEMPERATURE_TOTAL);
        } else if (found.type() == Type.Plain.YES_NO) {
            inner.problems().add(value.span(), ProblemCode.TOTAL_OF_ANSWERS);
        } else if (Sums.isQuantity(inner, value, found)) {
            return found;
        }
        return Meaning.WRONG;
    }

    /** What was found inside a gather. */
    private record Inner(Checker checker, Optional<Meaning> body, Optional<Formula> where) {}

    private static Meaning planned(Checker checker, Expr.Gather e, Source source, Optional<Meaning> base, Inner inner) {
        Type type = inner.body.map(Meaning::type).orElse(new Type.Amount(Dimension.NONE));
        Formula none = new Nodes.Constant(1);
        Formula node = base.map(Meaning::formula).orElse(none);
        Formula body = inner.body.map(Meaning::formula).orElse(none);
        @Nullable Formula where = inner.where.orElse(null);
        Formula formula = new GatherFormula(e, source.set(), node, body, where);
        GatherPlan plan = new GatherPlan(
                e,
                source.set(),
                base.map(Meaning::formula),
                base.map(Meaning::ways).orElse(List.of()),
                inner.body.map(Meaning::formula),
                inner.where,
                type,
                inner.checker.uses().build(),
                formula);
        Optional<Ref.Cell> lifted = plan.standsAlone() ? checker.hoist().lift(plan) : Optional.empty();
        if (lifted.isPresent()) {
            Ref.Cell cell = lifted.get();
            Way way = Way.at(cell.row());
            checker.uses().read(new Read(cell.column(), way, type, e));
            checker.uses().way(way);
            return Meaning.of(type, new Nodes.Fixed(cell.column(), cell.row()));
        }
        checker.uses().gather(plan);
        return Meaning.of(type, formula);
    }
}
