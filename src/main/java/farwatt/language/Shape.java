package farwatt.language;

import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;

/** Builds expressions in the one shape each meaning has, so that printing and reading again changes nothing. */
final class Shape {
    private Shape() {}

    /** A chain; a chain of the same level in front is laid open, and of {@code and} and {@code or} anywhere. */
    static Expr chain(Span span, Expr first, List<Expr.Step> rest) {
        if (rest.isEmpty()) {
            return first;
        }
        Operator.Level level = rest.get(0).operator().level();
        List<Expr.Step> flat = new ArrayList<>(rest.size());
        Expr head = first;
        if (first instanceof Expr.Chain chain && chain.level() == level) {
            head = chain.first();
            flat.addAll(chain.rest());
        }
        for (Expr.Step step : rest) {
            boolean anyOrder = level == Operator.Level.AND || level == Operator.Level.OR;
            if (anyOrder && step.of() instanceof Expr.Chain chain && chain.level() == level) {
                flat.add(new Expr.Step(step.operator(), chain.first()));
                flat.addAll(chain.rest());
            } else {
                flat.add(step);
            }
        }
        return new Expr.Chain(span, head, flat);
    }

    /** A path; a path in front is laid open. */
    static Expr path(Span span, Expr root, List<Expr.Part> members) {
        if (members.isEmpty()) {
            return root;
        }
        if (root instanceof Expr.Path path) {
            List<Expr.Part> all = new ArrayList<>(path.members());
            all.addAll(members);
            return new Expr.Path(span, path.root(), all);
        }
        return new Expr.Path(span, root, members);
    }

    /** A choice between values; one after the last {@code else} is laid open. */
    static Expr condition(Span span, List<Expr.Branch> branches, Expr otherwise) {
        if (otherwise instanceof Expr.If more) {
            List<Expr.Branch> all = new ArrayList<>(branches);
            all.addAll(more.branches());
            return new Expr.If(span, all, more.otherwise());
        }
        return new Expr.If(span, branches, otherwise);
    }
}
