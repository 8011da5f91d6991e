package farwatt.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a choice between values means: all of them have one type. */
final class Branches {
    private Branches() {}

    static Meaning condition(Checker checker, Expr.If e, Type wanted) {
        int count = e.branches().size();
        Formula[] conditions = new Formula[count];
        List<Expr> values = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            conditions[i] = checker.answer(e.branches().get(i).condition());
            values.add(e.branches().get(i).then());
        }
        values.add(e.otherwise());
        List<Meaning> found = alike(checker, values, wanted, ProblemCode.BRANCHES_DIFFER);
        Type type = joined(checker, found);
        if (type == Type.Plain.UNKNOWN) {
            return Meaning.WRONG;
        }
        List<Way> ways = new ArrayList<>();
        found.forEach(meaning -> ways.addAll(meaning.ways()));
        Formula[] chosen = found.stream().limit(count).map(Meaning::formula).toArray(Formula[]::new);
        return new Meaning(
                type, new Nodes.Choose(conditions, chosen, found.get(count).formula()), ways);
    }

    /**
     * What some values mean that must be of one type. Literals that may take a type from the others wait for them.
     *
     * @param amongThem said of one that does not go with the others
     */
    static List<Meaning> alike(Checker checker, List<Expr> values, Type wanted, ProblemCode amongThem) {
        Meaning[] found = new Meaning[values.size()];
        Type type = wanted;
        ProblemCode code = wanted == Type.Plain.UNKNOWN ? amongThem : ProblemCode.CLASH;
        for (boolean literals : new boolean[] {false, true}) {
            for (int i = 0; i < found.length; i++) {
                Expr value = values.get(i);
                boolean literal = value instanceof Expr.Text || Checker.isBareNumber(value);
                if (literal == literals) {
                    found[i] = fitted(checker, value, type, code);
                    type = type == Type.Plain.UNKNOWN ? found[i].type() : type;
                }
            }
        }
        return List.of(found);
    }

    private static Meaning fitted(Checker checker, Expr value, Type type, ProblemCode code) {
        Meaning found = checker.meaning(value, type);
        if (found.type() instanceof Type.Choice from
                && type instanceof Type.Choice to
                && to.words().containsAll(from.words())) {
            return Comparisons.translated(found, from, to);
        }
        if (checker.fits(found.type(), type)) {
            return found;
        }
        checker.mismatch(value, found.type(), type, code);
        return Meaning.WRONG;
    }

    private static Type joined(Checker checker, List<Meaning> found) {
        Type type = found.get(0).type();
        for (Meaning next : found) {
            if (next.isWrong()) {
                return next.type();
            }
            if (type instanceof Type.RowOf row && next.type() instanceof Type.RowOf other) {
                Optional<String> both = checker.scope().join(row.kind(), other.kind());
                type = both.<Type>map(Type.RowOf::new).orElse(Type.Plain.UNKNOWN);
            }
        }
        return type;
    }
}
