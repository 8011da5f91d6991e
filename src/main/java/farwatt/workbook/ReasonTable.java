package farwatt.workbook;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Name;
import farwatt.catalogue.Stage;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Explanation;
import farwatt.plan.Table;
import farwatt.quantity.Units;
import farwatt.report.Place;
import farwatt.review.Verdict;
import java.util.ArrayList;
import java.util.List;

/** How figures come about: the decisive one step by step, and every name with its formula. */
final class ReasonTable {
    private static final int DEEPEST = 3;
    private static final int MOST_STEPS = 80;

    private ReasonTable() {}

    /** The figure that decides the verdict, down to what was typed; without lines where there is none. */
    static Schedule why(Calculation calc, Verdict verdict) {
        List<List<Entry>> lines = new ArrayList<>();
        Place place = verdict.place();
        if (!place.row().isEmpty() && !place.name().isEmpty()) {
            Corner before = calc.corner();
            try {
                calc.look(verdict.corner());
                String path = "'" + place.row().replace("'", "''") + "'." + place.name();
                calc.explain(path, DEEPEST).ifPresent(explanation -> add(explanation, 0, lines));
            } finally {
                calc.look(before);
            }
        }
        return new Schedule(
                Titles.WHY,
                "The deciding figure " + verdict.corner().phrase() + ", step by step down to what was typed.",
                List.of(
                        Column.of("figure", "figure", Form.WORD),
                        Column.of("step", "step", Form.WHOLE),
                        Column.of("value", "value", Form.SENTENCE),
                        Column.of("how", "how it came about", Form.SENTENCE),
                        Column.of("source", "rests on", Form.SENTENCE)),
                Schedule.Lines.of(lines));
    }

    private static void add(Explanation one, int depth, List<List<Entry>> lines) {
        if (lines.size() >= MOST_STEPS) {
            return;
        }
        lines.add(List.of(
                Entry.words("  ".repeat(depth) + one.title()),
                Entry.number(depth),
                Entry.words(one.value()),
                Entry.words(one.how()),
                Entry.words(one.source())));
        one.inputs().forEach(input -> add(input, depth + 1, lines));
    }

    /** Every solved and derived name with its formula. */
    static Schedule names(Units units) {
        List<List<Entry>> lines = new ArrayList<>();
        for (Name name : Catalogue.all()) {
            if (name.stage() != Stage.GIVEN) {
                lines.add(List.of(
                        Entry.words(name.key().replace('_', ' ')),
                        Entry.words(
                                name.table() == Table.PLAN
                                        ? "the plan"
                                        : name.table().key()),
                        Entry.words(Figure.symbol(name.kind().symbol(units))),
                        Entry.words(name.sentence()),
                        Entry.words(name.formula()),
                        Entry.words(name.source())));
            }
        }
        return new Schedule(
                Titles.NAMES,
                "Formulas are written in names; each name is a column of its table.",
                List.of(
                        Column.of("name", "name", Form.WORD),
                        Column.of("table", "of", Form.WORD),
                        Column.of("unit", "unit", Form.WORD),
                        Column.of("sentence", "what it is", Form.SENTENCE),
                        Column.of("formula", "formula", Form.SENTENCE),
                        Column.of("source", "rests on", Form.SENTENCE)),
                Schedule.Lines.of(lines));
    }
}
