package farwatt.script;

import farwatt.catalogue.Name;
import farwatt.engine.Answer;
import farwatt.engine.Calculation;
import farwatt.engine.Explanation;
import farwatt.engine.Fault;
import farwatt.engine.Value;
import farwatt.language.Marked;
import farwatt.language.Problem;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Progress;
import farwatt.review.Remedies;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.review.Verdict;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What scripts may ask of a plan. */
final class Asking {
    private static final int DEEPEST = 12;

    private Asking() {}

    /** The value of an expression; a failure if it cannot be understood. */
    static Value value(WorkingPlan working, String text) {
        Calculation calculation = working.calculation();
        Optional<Value> direct = path(calculation, text);
        if (direct.isPresent()) {
            return direct.get();
        }
        Answer answer = calculation.ask(text);
        if (!answer.problems().isEmpty()) {
            throw misunderstood(text, answer.problems().get(0));
        }
        return answer.value().orElseThrow();
    }

    static ScriptFailure misunderstood(String text, Problem problem) {
        return ScriptFailure.said(problem.text() + "\n" + Marked.show(text, problem.span()));
    }

    /** A cell of a row goes without reading an expression, since loops ask for it again and again. */
    private static Optional<Value> path(Calculation calculation, String text) {
        Optional<StepPath> path = StepPath.of(text).filter(p -> !p.row().isEmpty());
        Optional<Plan.Spot> spot = path.flatMap(p -> calculation.plan().find(p.row()));
        return spot.filter(s -> calculation.has(s.table(), path.get().name()))
                .map(s -> calculation.value(s.table(), s.place(), path.get().name()));
    }

    /** A value that must be there. */
    static Value present(WorkingPlan working, String text) {
        Value value = value(working, text);
        if (!value.isPresent()) {
            throw ScriptFailure.of(
                    ScriptCode.NO_VALUE, text, value.fault().map(Fault::text).orElse(""));
        }
        return value;
    }

    /** How a value came about, as a tree. */
    static String explain(WorkingPlan working, String text) {
        Calculation calculation = working.calculation();
        Answer answer = calculation.ask(text);
        if (!answer.problems().isEmpty()) {
            throw misunderstood(text, answer.problems().get(0));
        }
        JsonText json = new JsonText();
        explain(json, calculation.explain(text, DEEPEST).orElseThrow());
        return json.toString();
    }

    private static void explain(JsonText json, Explanation explanation) {
        json.open('{')
                .text("title", explanation.title())
                .text("value", explanation.value())
                .text("how", explanation.how())
                .text("source", explanation.source());
        json.key("inputs").open('[');
        explanation.inputs().forEach(input -> explain(json, input));
        json.close(']').number("more", explanation.more()).close('}');
    }

    /** Every row of a table with the value of every name; as typed where nothing is worked out. */
    static String rows(WorkingPlan working, Table table) {
        Calculation calculation = working.calculation();
        List<String> names =
                calculation.names(table).stream().map(Name::key).distinct().toList();
        JsonText json = new JsonText().open('[');
        if (names.isEmpty() || table == Table.NEEDS || table == Table.COLUMNS) {
            working.plan().rows(table).forEach(row -> typed(json, table, row));
        } else {
            for (int place = 0; place < calculation.rows(table); place++) {
                json.open('{').text(table.idKey(), calculation.id(table, place));
                for (String name : names) {
                    if (!name.equals(table.idKey())) {
                        json.key(name).value(calculation.value(table, place, name));
                    }
                }
                json.close('}');
            }
        }
        return json.close(']').toString();
    }

    private static void typed(JsonText json, Table table, Row row) {
        json.open('{').text(table.idKey(), row.id());
        row.forEach((name, cell) -> json.text(name, cell.text()));
        json.close('}');
    }

    /** The findings of the review over all corners with what mends them; of one level unless it is "". */
    static String findings(WorkingPlan working, String level) {
        List<String> levels = Arrays.stream(Level.values()).map(Level::word).toList();
        if (!level.isEmpty() && !levels.contains(level)) {
            throw ScriptFailure.of(ScriptCode.NO_LEVEL, level, Near.hint(level, levels));
        }
        Calculation calculation = working.calculation();
        Review review = Reviewer.review(calculation);
        boolean mended = Found.hasRemedies(level);
        return Found.json(mended ? Remedies.of(calculation, review, Progress.SILENT, new Cancel()) : review, level);
    }

    /** Whether the plan holds. */
    static String verdict(WorkingPlan working) {
        Verdict verdict = Reviewer.review(working.calculation()).verdict();
        return new JsonText()
                .open('{')
                .key("holds")
                .bool(verdict.holds())
                .text("text", verdict.text())
                .text("corner", verdict.corner().word())
                .text("row", verdict.place().row())
                .text("name", verdict.place().name())
                .close('}')
                .toString();
    }
}
