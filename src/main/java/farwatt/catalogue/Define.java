package farwatt.catalogue;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the names of one table; the words in which the catalogue's pages are written. */
final class Define {
    private final Table table;
    private final List<Name> names = new ArrayList<>();

    Define(Table table) {
        this.table = table;
    }

    static Kind.Quantity in(String unit) {
        return new Kind.Quantity(unit);
    }

    static Kind.Choice oneOf(String... words) {
        return new Kind.Choice(List.of(words));
    }

    static Kind.RowOf rowOf(Table... tables) {
        return new Kind.RowOf(List.of(tables));
    }

    /** A cell without a default. */
    Define given(String key, Kind kind, String sentence) {
        return add(key, kind, Stage.GIVEN, Name.Fallback.NONE, sentence, "", "");
    }

    /** A cell with a fixed default. */
    Define given(String key, Kind kind, String literal, String sentence) {
        return add(key, kind, Stage.GIVEN, new Name.Fallback(literal, ""), sentence, "", "");
    }

    /** A cell whose default is found by a rule. */
    Define ruled(String key, Kind kind, String rule, String sentence, String source) {
        return add(key, kind, Stage.GIVEN, new Name.Fallback("", rule), sentence, "", source);
    }

    /** A named constant. */
    Define constant(String key, Kind kind, String literal, String sentence, String source) {
        return add(key, kind, Stage.GIVEN, new Name.Fallback(literal, ""), sentence, "", source);
    }

    Define solved(String key, Kind kind, String sentence, String formula) {
        return add(key, kind, Stage.SOLVED, Name.Fallback.NONE, sentence, formula, "");
    }

    Define solved(String key, Kind kind, String sentence, String formula, String source) {
        return add(key, kind, Stage.SOLVED, Name.Fallback.NONE, sentence, formula, source);
    }

    Define derived(String key, Kind kind, String sentence, String formula, String source) {
        return add(key, kind, Stage.DERIVED, Name.Fallback.NONE, sentence, formula, source);
    }

    /** What is plausible for the name defined last, in its unit. */
    Define within(double low, double high) {
        Name last = names.remove(names.size() - 1);
        names.add(new Name(
                last.table(),
                last.key(),
                last.kind(),
                last.stage(),
                last.fallback(),
                Optional.of(new Name.Range(low, high)),
                last.sentence(),
                last.formula(),
                last.source()));
        return this;
    }

    private Define add(
            String key,
            Kind kind,
            Stage stage,
            Name.Fallback fallback,
            String sentence,
            String formula,
            String source) {
        names.add(new Name(table, key, kind, stage, fallback, Optional.empty(), sentence, formula, source));
        return this;
    }

    List<Name> names() {
        return List.copyOf(names);
    }
}
