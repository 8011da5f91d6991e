package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.Answer;
import farwatt.engine.Calculation;
import farwatt.engine.Explanation;
import java.io.IOException;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how a value came about. */
@Command(name = "explain", description = "Tells how a value came about, down to what was typed or which table came in.")
final class ExplainVerb extends PlanVerb {
    @Parameters(index = "1", paramLabel = "EXPR", description = "What to explain, such as 'gate.available'.")
    private String expression = "";

    @Option(names = "--depth", paramLabel = "N", description = "How many steps down; 3 unless said.")
    private int depth = 3;

    @Override
    public Integer call() throws Exception {
        Calculation calculation = calculation();
        sayNotices();
        Answer answer = calculation.ask(expression);
        if (!AskVerb.understood(output(), answer)) {
            return Exit.WRONG;
        }
        Optional<Explanation> explanation = calculation.explain(expression, depth);
        if (explanation.isEmpty()) {
            return Exit.WRONG;
        }
        if (json) {
            try (JsonOut out = new JsonOut(output())) {
                json(out.json(), explanation.get());
            }
        } else {
            text(explanation.get(), 0);
        }
        return Exit.DONE;
    }

    private void text(Explanation e, int down) {
        String source = e.source().isEmpty() ? "" : "  {" + e.source() + "}";
        String how = e.how().isEmpty() || e.how().equals(e.title()) ? "" : "   <- " + e.how();
        output().line("  ".repeat(down) + e.title() + " = " + e.value() + how + source);
        e.inputs().forEach(input -> text(input, down + 1));
        if (e.more() > 0) {
            output().line("  ".repeat(down + 1) + "and " + e.more() + " more");
        }
    }

    private static void json(JsonGenerator json, Explanation e) throws IOException {
        json.writeStartObject();
        json.writeStringField("title", e.title());
        json.writeStringField("value", e.value());
        json.writeStringField("how", e.how());
        json.writeStringField("source", e.source());
        json.writeNumberField("more", e.more());
        json.writeArrayFieldStart("inputs");
        for (Explanation input : e.inputs()) {
            json(json, input);
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
