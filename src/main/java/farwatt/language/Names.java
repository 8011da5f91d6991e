package farwatt.language;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What names, ids and paths mean in a scope. */
final class Names {
    private final Checker checker;
    private final Scope scope;

    Names(Checker checker) {
        this.checker = checker;
        this.scope = checker.scope();
    }

    Meaning word(Expr.Word e) {
        switch (e.keyword()) {
            case YES, NO -> {
                return Meaning.constant(Type.Plain.YES_NO, e.keyword() == Keyword.YES ? 1 : 0);
            }
            case THIS -> {
                if (scope.self().isPresent()) {
                    Way self = Way.from(Way.Start.SELF);
                    return row(new Type.RowOf(scope.self().get()), new Nodes.Self(), List.of(self));
                }
                checker.problems().add(e.span(), ProblemCode.NO_THIS);
            }
            default -> checker.problems().add(e.span(), ProblemCode.PLAN_ALONE);
        }
        return Meaning.WRONG;
    }

    Meaning bare(Expr.Name e, Type wanted) {
        if (checker.hole().fill(e.span(), new Hole.Value(scope, wanted))) {
            return Meaning.WRONG;
        }
        Optional<Ref> ref = scope.bare(e.name());
        if (ref.isPresent()) {
            return refer(ref.get(), here(), e, e.span());
        }
        unknown(e, wanted);
        return Meaning.WRONG;
    }

    private void unknown(Expr.Name e, Type wanted) {
        String said = Say.quoted(e.name());
        if (scope.units().of(e.name()).isPresent()) {
            checker.problems().add(e.span(), ProblemCode.UNIT_ALONE, said);
        } else if (Function.of(e.name()).isPresent()) {
            checker.problems().add(e.span(), ProblemCode.FUNCTION_ALONE, said);
        } else {
            checker.problems().near(e.span(), ProblemCode.UNKNOWN_NAME, () -> nearBare(e.name(), wanted), said);
        }
    }

    /** What an unknown bare name may have been meant to be, as it would be typed. */
    private Optional<String> nearBare(String name, Type wanted) {
        if (wanted instanceof Type.Choice choice && choice.words().contains(name)) {
            return Optional.of(Printer.quotedText(name));
        }
        Optional<String> throughRelation = scope.items().stream()
                .filter(item -> item.what() == Item.What.RELATION)
                .filter(item -> scope.bare(item.name())
                        .filter(ref -> ref instanceof Ref.Leads leads
                                && scope.member(leads.kind(), name).isPresent())
                        .isPresent())
                .map(item -> item.name() + "." + name)
                .findFirst();
        if (throughRelation.isPresent()) {
            return throughRelation;
        }
        Map<String, String> typed = new LinkedHashMap<>();
        for (Item item : scope.items()) {
            typed.putIfAbsent(
                    item.name(), item.what() == Item.What.ROW ? Language.row(item.name(), scope) : item.name());
        }
        Keyword.startingValues().forEach(keyword -> typed.put(keyword.word(), keyword.word()));
        return Near.best(name, typed.keySet()).map(typed::get);
    }

    Meaning row(Expr.Row e) {
        Optional<Ref.Fixed> ref = scope.row(e.id());
        if (ref.isPresent()) {
            return refer(ref.get(), here(), e, e.span());
        }
        String said = Say.quoted(Printer.quotedRow(e.id()));
        checker.problems().near(e.span(), ProblemCode.UNKNOWN_ROW, () -> nearRow(e.id()), said);
        return Meaning.WRONG;
    }

    private Optional<String> nearRow(String id) {
        List<String> rows = scope.items().stream()
                .filter(item -> item.what() == Item.What.ROW)
                .map(Item::name)
                .toList();
        return Near.best(id, rows).map(row -> Language.row(row, scope));
    }

    Meaning path(Expr.Path e) {
        List<Expr.Part> members = e.members();
        Meaning found;
        int next = 0;
        if (e.root() instanceof Expr.Word word && word.keyword() == Keyword.PLAN) {
            found = ofPlan(members.get(next++), prefix(e, 1));
        } else {
            found = checker.meaning(e.root());
        }
        for (; next < members.size() && !found.isWrong(); next++) {
            found = member(found, members.get(next), prefix(e, next + 1));
        }
        return found;
    }

    private static Expr prefix(Expr.Path e, int members) {
        return new Expr.Path(e.span(), e.root(), e.members().subList(0, members));
    }

    private Meaning ofPlan(Expr.Part name, Expr path) {
        if (checker.hole().fill(name.span(), new Hole.OfPlan(scope))) {
            return Meaning.WRONG;
        }
        Optional<Ref> ref = scope.plan(name.name());
        if (ref.isPresent()) {
            return refer(ref.get(), here(), path, name.span());
        }
        unknownMember(name, ProblemCode.UNKNOWN_PLAN_NAME, scope.planItems().stream(), "");
        return Meaning.WRONG;
    }

    private Meaning member(Meaning of, Expr.Part name, Expr path) {
        if (!(of.type() instanceof Type.RowOf row)) {
            checker.problems().add(name.span(), ProblemCode.NOT_A_ROW, Say.type(of.type(), scope));
            return Meaning.WRONG;
        }
        if (checker.hole().fill(name.span(), new Hole.Member(scope, row.kind()))) {
            return Meaning.WRONG;
        }
        Optional<Ref> ref = scope.member(row.kind(), name.name());
        if (ref.isPresent()) {
            return refer(ref.get(), of, path, name.span());
        }
        Stream<Item> known = scope.members(row.kind()).stream();
        unknownMember(name, ProblemCode.UNKNOWN_MEMBER, known, scope.called(row.kind()));
        return Meaning.WRONG;
    }

    private void unknownMember(Expr.Part name, ProblemCode code, Stream<Item> known, String of) {
        checker.problems()
                .near(
                        name.span(),
                        code,
                        () -> Near.best(name.name(), known.map(Item::name).toList()),
                        Say.quoted(name.name()),
                        of);
    }

    private static Meaning here() {
        return new Meaning(Type.Plain.UNKNOWN, new Nodes.Here(), List.of(Way.from(Way.Start.HERE)));
    }

    /** What a name stands for, asked of a row. */
    private Meaning refer(Ref ref, Meaning of, Expr expr, farwatt.report.Span span) {
        checker.known().add(new Checked.Known(span, ref, scope));
        if (ref instanceof Ref.Reads reads) {
            of.ways().forEach(way -> use(new Read(reads.column(), way, reads.type(), expr)));
            boolean own = of.formula() instanceof Nodes.Here;
            Formula far = of.formula() instanceof Nodes.Constant row
                    ? new Nodes.Fixed(reads.column(), (int) row.number())
                    : new Nodes.Far(of.formula(), reads.column());
            return value(reads.type(), own ? new Nodes.Own(reads.column()) : far);
        }
        if (ref instanceof Ref.Cell cell) {
            use(new Read(cell.column(), Way.at(cell.row()), cell.type(), expr));
            return value(cell.type(), new Nodes.Fixed(cell.column(), cell.row()));
        }
        if (ref instanceof Ref.Leads leads) {
            List<Way> ways = new ArrayList<>();
            of.ways().forEach(way -> ways.add(way.and(leads.link())));
            return row(new Type.RowOf(leads.kind()), new Nodes.Follow(of.formula(), leads.link()), ways);
        }
        Ref.Fixed fixed = (Ref.Fixed) ref;
        Formula number = new Nodes.Constant(fixed.row());
        return row(new Type.RowOf(fixed.kind()), number, List.of(Way.at(fixed.row())));
    }

    private void use(Read read) {
        checker.uses().read(read);
        checker.uses().way(read.way());
    }

    /** A value that was read; if it is a row, only the calculation tells which. */
    private Meaning value(Type type, Formula formula) {
        return type instanceof Type.RowOf
                ? row(type, formula, List.of(Way.from(Way.Start.ANY)))
                : Meaning.of(type, formula);
    }

    private Meaning row(Type type, Formula formula, List<Way> ways) {
        ways.forEach(checker.uses()::way);
        return new Meaning(type, formula, ways);
    }
}
