package farwatt.language;

import farwatt.quantity.Typed;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The shape of an expression as text, every part in its own brackets; places left out. */
final class Tree implements Expr.Visitor<String, String> {
    private static final Tree TREE = new Tree();

    static String of(Expr expr) {
        return expr.accept(TREE, "");
    }

    private static String all(List<Expr> parts) {
        return parts.stream().map(Tree::of).collect(Collectors.joining(" "));
    }

    @Override
    public String quantity(Expr.Quantity e, String with) {
        Typed typed = e.typed();
        return typed.text().replace(' ', '_');
    }

    @Override
    public String text(Expr.Text e, String with) {
        return "\"" + e.text() + "\"";
    }

    @Override
    public String word(Expr.Word e, String with) {
        return e.keyword().name();
    }

    @Override
    public String name(Expr.Name e, String with) {
        return e.name();
    }

    @Override
    public String row(Expr.Row e, String with) {
        return "'" + e.id() + "'";
    }

    @Override
    public String path(Expr.Path e, String with) {
        String members = e.members().stream().map(Expr.Part::name).collect(Collectors.joining(" "));
        return "(. " + of(e.root()) + " " + members + ")";
    }

    @Override
    public String negative(Expr.Negative e, String with) {
        return "(neg " + of(e.of()) + ")";
    }

    @Override
    public String not(Expr.Not e, String with) {
        return "(not " + of(e.of()) + ")";
    }

    @Override
    public String power(Expr.Power e, String with) {
        return "(^ " + of(e.base()) + " " + of(e.exponent()) + ")";
    }

    @Override
    public String chain(Expr.Chain e, String with) {
        String rest = e.rest().stream()
                .map(s -> " " + s.operator().sign() + " " + of(s.of()))
                .collect(Collectors.joining());
        return "[" + of(e.first()) + rest + "]";
    }

    @Override
    public String compare(Expr.Compare e, String with) {
        return "(" + of(e.left()) + " " + e.how() + " " + of(e.right()) + ")";
    }

    @Override
    public String condition(Expr.If e, String with) {
        String branches = e.branches().stream()
                .map(b -> of(b.condition()) + ": " + of(b.then()) + ", ")
                .collect(Collectors.joining());
        return "(if " + branches + of(e.otherwise()) + ")";
    }

    @Override
    public String call(Expr.Call e, String with) {
        return "(" + e.function().name() + ": " + all(e.arguments()) + ")";
    }

    @Override
    public String gather(Expr.Gather e, String with) {
        Expr.RowsOf rows = e.rows();
        return "(" + e.kind() + e.body().map(b -> " " + of(b)).orElse("") + " of "
                + rows.table().name() + part(" " + rows.reach(), rows.base()) + part(" where", rows.where()) + ")";
    }

    private static String part(String word, Optional<Expr> expr) {
        return expr.map(e -> word + " " + of(e)).orElse("");
    }

    @Override
    public String broken(Expr.Broken e, String with) {
        return "(broken" + (e.parts().isEmpty() ? "" : " " + all(e.parts())) + ")";
    }
}
