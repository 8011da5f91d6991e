package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.Answer;
import farwatt.engine.Calculation;
import farwatt.engine.Fault;
import farwatt.engine.Value;
import farwatt.language.Marked;
import farwatt.language.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Works out expressions. */
@Command(name = "ask", description = "Works out expressions, such as 'gate.reserve_share' or 'total(draw of devices)'.")
final class AskVerb extends PlanVerb {
    @Parameters(index = "1..*", arity = "1..*", paramLabel = "EXPR", description = "What to work out.")
    private List<String> expressions = new ArrayList<>();

    @Override
    public Integer call() throws Exception {
        Calculation calculation = calculation();
        sayNotices();
        List<Answer> answers = expressions.stream().map(calculation::ask).toList();
        boolean understood = true;
        for (Answer answer : answers) {
            understood &= understood(output(), answer);
        }
        if (json) {
            json(answers);
        } else {
            for (Answer answer : answers) {
                answer.value().ifPresent(value -> output().line(answer.text() + " = " + said(value)));
            }
        }
        return understood ? Exit.DONE : Exit.WRONG;
    }

    static String said(Value value) {
        return value.fault().map(fault -> "no value: " + fault.text()).orElseGet(value::text);
    }

    /** Shows what could not be understood, with the place marked. */
    static boolean understood(Output output, Answer answer) {
        for (Problem problem : answer.problems()) {
            Marked.show(answer.text(), problem.span()).lines().forEach(output::say);
            output.say(problem.text());
        }
        return answer.problems().isEmpty();
    }

    private void json(List<Answer> answers) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeArrayFieldStart("answers");
            for (Answer answer : answers) {
                json.writeStartObject();
                json.writeStringField("expr", answer.text());
                json.writeFieldName("value");
                if (answer.value().isPresent()) {
                    Value value = answer.value().get();
                    out.value(value);
                    json.writeStringField(
                            "unit", value.isNumber() ? value.unit().symbol() : "");
                    json.writeStringField("text", value.text());
                    json.writeStringField("why", value.fault().map(Fault::text).orElse(""));
                } else {
                    json.writeNull();
                    json.writeStringField("unit", "");
                    json.writeStringField("text", "");
                    json.writeStringField("why", answer.problems().get(0).text());
                }
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }
}
