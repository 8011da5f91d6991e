package farwatt.review;

import farwatt.engine.Answer;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.ScenarioPlans;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Scenarios side by side.
 *
 * @param columns the scenarios in their order, "" standing for the plan without one
 * @param rows what was asked, in its order
 * @param notices changes of scenarios that could not be made
 */
public record SideBySide(List<Column> columns, List<Row> rows, List<Notice> notices) {
    public SideBySide {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        notices = List.copyOf(notices);
    }

    /**
     * One scenario.
     *
     * @param id its name, "" for the plan without one
     */
    public record Column(String id, Verdict verdict) {}

    /**
     * One measure.
     *
     * @param name the expression
     * @param answers one a scenario
     */
    public record Row(String name, List<Answer> answers) {
        public Row {
            answers = List.copyOf(answers);
        }

        /** Whether any scenario has another value than the first, be it by too little to be read. */
        public boolean differs() {
            double first = inside(0);
            for (int i = 1; i < answers.size(); i++) {
                double other = inside(i);
                boolean same = Double.isNaN(first) || Double.isNaN(other)
                        ? !differs(i)
                        : !Near.over(first, other) && !Near.under(first, other);
                if (!same) {
                    return true;
                }
            }
            return false;
        }

        private double inside(int column) {
            return answers.get(column).value().map(Value::inside).orElse(Double.NaN);
        }

        /** Whether a scenario's value is another than the first one's as people read it. */
        public boolean differs(int column) {
            return !text(column).equals(text(0));
        }

        /** A scenario's value as people read it, or what is wrong with the expression. */
        public String text(int column) {
            Answer answer = answers.get(column);
            return answer.value().map(Value::text).orElse("–");
        }
    }

    /**
     * Works out scenarios of a plan.
     *
     * @param ids "" for the plan without one
     * @param reads expressions
     * @param corner the one that they are read in; the plan's own if empty
     * @throws Refusal if there is no such scenario
     */
    public static SideBySide of(Plan base, List<String> ids, List<String> reads, Optional<Corner> corner, Cancel cancel)
            throws Refusal {
        List<Column> columns = new ArrayList<>();
        List<List<Answer>> answers = new ArrayList<>();
        reads.forEach(read -> answers.add(new ArrayList<>()));
        List<Notice> notices = new ArrayList<>();
        for (String id : ids) {
            cancel.check();
            ScenarioPlans made = id.isEmpty() ? new ScenarioPlans(base, List.of()) : ScenarioPlans.of(base, id);
            notices.addAll(made.notices());
            Calculation calculation = Calculation.of(made.plan());
            columns.add(new Column(id, Reviewer.review(calculation).verdict()));
            corner.ifPresent(calculation::look);
            for (int k = 0; k < reads.size(); k++) {
                answers.get(k).add(calculation.ask(reads.get(k)));
            }
        }
        List<Row> rows = new ArrayList<>();
        for (int k = 0; k < reads.size(); k++) {
            rows.add(new Row(reads.get(k), answers.get(k)));
        }
        return new SideBySide(columns, rows, notices);
    }

    /** The measures a person looks at first: reserve of every node, losses, headroom, cable, what stays dark. */
    public static List<String> usual(Plan plan) {
        List<String> names = new ArrayList<>();
        for (Table node : List.of(Table.SOURCES, Table.SWITCHES)) {
            for (farwatt.plan.Row row : plan.rows(node)) {
                String id = StepPath.quoted(row.id());
                names.add(id + ".sent");
                names.add(id + ".available");
                names.add(id + ".reserve_share");
            }
        }
        names.addAll(List.of("plan.lost", "plan.mains", "plan.least_headroom", "plan.cable_length"));
        names.add("count(devices where not powered)");
        return names;
    }
}
