package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.Answer;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.ScenarioPlans;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Scenario;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import farwatt.review.Reviewer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays scenarios side by side. */
@Command(name = "compare", description = "Scenarios side by side; what differs from the first is marked.")
final class CompareVerb extends PlanVerb {
    private static final String BASE = "base";

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "SCENARIO", description = "All of them unless named.")
    private List<String> ids = new ArrayList<>();

    @Option(names = "--read", paramLabel = "EXPR", description = "What to compare; a usual set unless said.")
    private List<String> reads = new ArrayList<>();

    @Override
    public Integer call() throws Exception {
        Plan base = base();
        sayNotices();
        Map<String, Calculation> scenarios = scenarios(base);
        List<String> names = reads.isEmpty() ? usual(base) : reads;
        Map<String, List<Value>> rows = new LinkedHashMap<>();
        for (String name : names) {
            List<Value> values = new ArrayList<>();
            for (Calculation calculation : scenarios.values()) {
                Answer answer = calculation.ask(name);
                if (!AskVerb.understood(output(), answer)) {
                    return Exit.WRONG;
                }
                answer.value().ifPresent(values::add);
            }
            rows.put(name, values);
        }
        if (json) {
            json(scenarios, rows);
        } else {
            text(scenarios, rows);
        }
        return Exit.DONE;
    }

    private Map<String, Calculation> scenarios(Plan base) throws Refusal {
        List<String> wanted = new ArrayList<>(List.of(BASE));
        if (ids.isEmpty()) {
            base.scenarios().stream().map(Scenario::id).forEach(wanted::add);
        } else {
            wanted.addAll(ids);
        }
        Map<String, Calculation> all = new LinkedHashMap<>();
        Optional<Corner> corner = corner();
        for (String id : wanted) {
            ScenarioPlans made = id.equals(BASE) ? new ScenarioPlans(base, List.of()) : ScenarioPlans.of(base, id);
            for (Notice notice : made.notices()) {
                output().say(notice.line());
            }
            Calculation calculation = Calculation.of(made.plan());
            corner.ifPresent(calculation::look);
            all.put(id, calculation);
        }
        return all;
    }

    /** The measures a person looks at first: reserve of every node, losses, headroom, cable, needs. */
    private static List<String> usual(Plan plan) {
        List<String> names = new ArrayList<>();
        for (Table node : List.of(Table.SOURCES, Table.SWITCHES)) {
            for (Row row : plan.rows(node)) {
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

    private void text(Map<String, Calculation> scenarios, Map<String, List<Value>> rows) {
        List<String> headings = new ArrayList<>(List.of(""));
        headings.addAll(scenarios.keySet());
        TextTable table = new TextTable(headings);
        List<String> verdicts = new ArrayList<>(List.of("holds in every corner"));
        scenarios
                .values()
                .forEach(c -> verdicts.add(Reviewer.review(c).verdict().holds() ? "yes" : "no"));
        table.row(verdicts);
        rows.forEach((name, values) -> {
            List<String> cells = new ArrayList<>(List.of(name));
            for (Value value : values) {
                boolean other = !value.text().equals(values.get(0).text());
                cells.add(other ? value.text() + " *" : value.text());
            }
            table.row(cells);
        });
        table.lines().forEach(output()::line);
        output().line("");
        output().line("* differs from base");
    }

    private void json(Map<String, Calculation> scenarios, Map<String, List<Value>> rows) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeArrayFieldStart("scenarios");
            for (String id : scenarios.keySet()) {
                json.writeString(id);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("rows");
            for (Map.Entry<String, List<Value>> row : rows.entrySet()) {
                json.writeStartObject();
                json.writeStringField("name", row.getKey());
                json.writeArrayFieldStart("values");
                boolean differs = false;
                for (Value value : row.getValue()) {
                    out.value(value);
                    differs |= value.inside() != row.getValue().get(0).inside();
                }
                json.writeEndArray();
                json.writeBooleanField("differs", differs);
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }
}
