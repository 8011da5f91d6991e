package farwatt.language;

/** What comparisons mean. */
final class Comparisons {
    private Comparisons() {}

    static Meaning compare(Checker checker, Expr.Compare e) {
        // a word in quotes takes its meaning from what it is compared with
        boolean otherFirst =
                isWord(e.left()) || checker.hole().span().equals(e.left().span());
        Meaning left;
        Meaning right;
        if (otherFirst) {
            right = checker.meaning(e.right());
            left = checker.meaning(e.left(), right.type());
        } else {
            left = checker.meaning(e.left());
            right = checker.meaning(e.right(), left.type());
        }
        Formula compared =
                left.isWrong() || right.isWrong() ? new Nodes.Constant(0) : compared(checker, e, left, right);
        return Meaning.of(Type.Plain.YES_NO, compared);
    }

    private static boolean isWord(Expr expr) {
        return expr instanceof Expr.Text;
    }

    private static Formula compared(Checker checker, Expr.Compare e, Meaning left, Meaning right) {
        Type type = left.type();
        Formula other = right.formula();
        if (type instanceof Type.Choice to && right.type() instanceof Type.Choice from && share(from, to)) {
            other = translated(right, from, to).formula();
        } else if (!checker.fits(right.type(), type)) {
            checker.unlike(e.left(), type, e.right(), right.type(), ProblemCode.COMPARE_CLASH);
            return other;
        }
        if (left.isAmount() || left.isTemperature()) {
            double shift = left.isTemperature() ? Tolerance.KELVIN_AT_ZERO : 0;
            return new Logic.Compared(e.how(), left.formula(), other, shift);
        }
        if (!e.how().isSameness()) {
            boolean gauge = type == Type.Plain.GAUGE;
            checker.problems()
                    .add(
                            e.span(),
                            gauge ? ProblemCode.GAUGE_ORDER : ProblemCode.ONLY_SAMENESS,
                            Say.type(type, checker.scope()));
        }
        return type == Type.Plain.GAUGE
                ? new Logic.Compared(e.how(), left.formula(), other, 0)
                : new Logic.Same(left.formula(), other, e.how() == Comparison.IS ? 1 : 0);
    }

    private static boolean share(Type.Choice one, Type.Choice other) {
        return one.words().stream().anyMatch(other.words()::contains);
    }

    /** A word as its place in another list. */
    static Meaning translated(Meaning found, Type.Choice from, Type.Choice to) {
        if (from.equals(to)) {
            return found;
        }
        int[] places = from.words().stream().mapToInt(to.words()::indexOf).toArray();
        return Meaning.of(to, new Nodes.Translate(found.formula(), places));
    }
}
