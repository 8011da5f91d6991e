package farwatt.language;

import farwatt.quantity.Typed;
import farwatt.quantity.Unit;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Makes expressions of every shape; what they mean does not matter. */
final class RandomExpr {
    private static final Span SPAN = new Span(0, 0);
    private static final String[] NAMES = {"a", "draw", "größe", "x_1", "iffy", "min", "m", "ft", "e5", "カメラ"};
    private static final String[] NUMBERS = {"0", "5", "007", "0.5", "1.50", "12e3", "1e-5", "3.25e2"};
    private static final String[] UNITS = {"", "", "W", "m", "ohm/km", "%", "%/K", "b/s", "EUR", "K", "degC", "degF"};
    private static final String[] TEXTS = {"", "a", "fixed camera", "say \"on\"", "it's", "if", "5 W"};

    private final Random random;

    RandomExpr(Random random) {
        this.random = random;
    }

    private String one(String[] among) {
        return among[random.nextInt(among.length)];
    }

    /** An expression; the more depth, the larger it may get. */
    Expr any(int depth) {
        if (depth <= 0) {
            return leaf();
        }
        return switch (random.nextInt(12)) {
            case 0 -> leaf();
            case 1, 2, 3 -> chain(depth);
            case 4 -> new Expr.Compare(SPAN, any(depth - 1), Comparison.values()[random.nextInt(6)], any(depth - 1));
            case 5 -> new Expr.Negative(SPAN, any(depth - 1));
            case 6 -> new Expr.Not(SPAN, any(depth - 1));
            case 7 -> new Expr.Power(SPAN, any(depth - 1), any(depth - 1));
            case 8 -> condition(depth);
            case 9 -> new Expr.Call(SPAN, part(), some(depth));
            case 10 -> gather(depth);
            default -> path(depth);
        };
    }

    private Expr leaf() {
        return switch (random.nextInt(6)) {
            case 0, 1 -> quantity();
            case 2 -> new Expr.Text(SPAN, one(TEXTS));
            case 3 -> new Expr.Row(SPAN, one(TEXTS));
            case 4 ->
                new Expr.Word(
                        SPAN,
                        List.of(Keyword.YES, Keyword.NO, Keyword.THIS, Keyword.PLAN)
                                .get(random.nextInt(4)));
            default -> new Expr.Name(SPAN, one(NAMES));
        };
    }

    private Expr quantity() {
        if (random.nextInt(8) == 0) {
            return new Expr.Quantity(SPAN, new Typed(one(NUMBERS), one(NUMBERS), Site.UNITS.need("ft")));
        }
        Unit unit = Site.UNITS.need(one(UNITS));
        Typed typed = new Typed(one(NUMBERS), "", unit);
        boolean below = unit.isAbsoluteTemperature() && random.nextBoolean();
        return new Expr.Quantity(SPAN, below ? typed.negated() : typed);
    }

    private Expr.Part part() {
        return new Expr.Part(SPAN, one(NAMES));
    }

    private List<Expr> some(int depth) {
        List<Expr> all = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            all.add(any(depth - 1));
        }
        return all;
    }

    private Expr chain(int depth) {
        Operator[] all = Operator.values();
        Operator.Level level = all[random.nextInt(all.length)].level();
        List<Operator> operators =
                List.of(all).stream().filter(o -> o.level() == level).toList();
        List<Expr.Step> rest = new ArrayList<>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            rest.add(new Expr.Step(operators.get(random.nextInt(operators.size())), any(depth - 1)));
        }
        return Shape.chain(SPAN, any(depth - 1), rest);
    }

    private Expr condition(int depth) {
        List<Expr.Branch> branches = new ArrayList<>();
        for (int i = random.nextInt(2); i >= 0; i--) {
            branches.add(new Expr.Branch(any(depth - 1), any(depth - 1)));
        }
        return Shape.condition(SPAN, branches, any(depth - 1));
    }

    private Expr path(int depth) {
        List<Expr.Part> members = new ArrayList<>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            members.add(part());
        }
        return Shape.path(SPAN, any(depth - 1), members);
    }

    private Expr gather(int depth) {
        GatherKind kind = GatherKind.values()[random.nextInt(7)];
        Optional<Expr> body = kind == GatherKind.COUNT ? Optional.empty() : Optional.of(any(depth - 1));
        Reach reach = Reach.values()[random.nextInt(3)];
        Optional<Expr> base = reach == Reach.ALL ? Optional.empty() : Optional.of(any(depth - 1));
        Optional<Expr> where = random.nextBoolean() ? Optional.of(any(depth - 1)) : Optional.empty();
        return new Expr.Gather(SPAN, kind, body, new Expr.RowsOf(part(), reach, base, where));
    }
}
