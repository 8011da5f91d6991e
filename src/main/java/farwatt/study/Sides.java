package farwatt.study;

import farwatt.language.Expr;
import farwatt.language.Language;
import farwatt.quantity.Decimal;
import farwatt.report.Refusal;
import java.util.List;
import java.util.Optional;

/** The two quantities that a condition compares, so that one sees how near to each other they come. */
public final class Sides {
    private Sides() {}

    /** Both as expressions; empty where the condition does not compare two quantities by size. */
    public static List<String> of(Ground ground, String condition) {
        Expr expr = Language.parse(condition, ground.units(), Decimal.POINT).expr();
        if (!(expr instanceof Expr.Compare compare) || compare.how().isSameness()) {
            return List.of();
        }
        List<String> both = List.of(Language.print(compare.left()), Language.print(compare.right()));
        try {
            boolean numbers = ground.headings(both).stream().allMatch(Heading::isNumber);
            return numbers ? both : List.of();
        } catch (Refusal e) {
            return List.of();
        }
    }

    /**
     * Both at every value that was tried in search of a limit: the varied cell, then the two sides. Empty where the
     * condition does not compare two quantities.
     *
     * @throws Refusal if the cell cannot be varied
     */
    public static Optional<Points> along(Ground ground, Vary vary, String holds, Limited limited, Effort effort)
            throws Refusal {
        List<String> both = of(ground, holds);
        Points tried = limited.points();
        if (both.isEmpty() || tried.size() == 0) {
            return Optional.empty();
        }
        double[] steps = new double[tried.size()];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = tried.inside(i, 0);
        }
        Values span = new Values.Span(steps[0], steps[steps.length - 1], Optional.of(steps));
        Vary again = new Vary(vary.knob(), vary.heading(), vary.now(), span);
        return Optional.of(Sweep.of(ground, List.of(again), both).points(effort));
    }
}
