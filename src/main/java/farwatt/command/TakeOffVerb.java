package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.Calculation;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Plan;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.review.TakeOff;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says what to order. */
@Command(name = "takeoff", description = "What to order: cable by kind with slack and boxes, what goes onto it, gear.")
final class TakeOffVerb extends PlanVerb {
    private static final String BASE = "base";
    private static final int DIGITS = 4;

    @Option(
            names = "--against",
            paramLabel = "ID",
            description = "Only what is needed more or less than in that scenario, or in base.")
    private String against = "";

    @Override
    public Integer call() throws Exception {
        Plan plan = plan();
        sayNotices();
        TakeOff all = TakeOff.of(Calculation.of(plan));
        if (against.isEmpty()) {
            if (json) {
                json(all);
            } else {
                text(plan, all);
            }
        } else {
            List<TakeOff.Difference> differences = other().to(all);
            if (json) {
                json(differences);
            } else {
                text(plan, differences);
            }
        }
        return Exit.DONE;
    }

    private TakeOff other() throws Refusal {
        Plan base = base();
        return TakeOff.of(Calculation.of(
                against.equals(BASE) ? base : ScenarioPlans.of(base, against).plan()));
    }

    private static String amount(Units units, TakeOff.Part part, double value) {
        return part.isLength() ? Show.text(value, units.need("m"), DIGITS) : Show.number(value, DIGITS);
    }

    private static String price(Unit money, Optional<Double> cost) {
        return cost.map(c -> Show.text(c, money)).orElse("");
    }

    private static String boxes(int count) {
        return count == 0 ? "" : Integer.toString(count);
    }

    private void text(Plan plan, TakeOff all) {
        Units units = new Units(plan.currency());
        Unit money = units.need(plan.currency());
        TextTable table =
                new TextTable(List.of("what", "kind", "for", "planned", "with slack", "boxes", "cost", "note"));
        for (TakeOff.Line line : all.lines()) {
            table.row(List.of(
                    line.part().word(),
                    line.kind(),
                    Integer.toString(line.rows().size()),
                    amount(units, line.part(), line.planned()),
                    amount(units, line.part(), line.order()),
                    boxes(line.boxes()),
                    price(money, line.cost()),
                    note(line)));
        }
        table.lines().forEach(output()::line);
        if (all.cost() > 0) {
            output().line("");
            output().line(Messages.text(CommandCode.TAKE_OFF_COST, Show.text(all.cost(), money)));
        }
    }

    private static String note(TakeOff.Line line) {
        List<String> said = new ArrayList<>();
        if (line.boxes() > 0) {
            said.add("boxes of " + (int) TakeOff.BOX + " m, no run in two pieces");
        }
        if (!line.overlong().isEmpty()) {
            said.add("from a reel: " + String.join(", ", line.overlong()));
        }
        if (!line.unmeasured().isEmpty()) {
            said.add("no length yet: " + String.join(", ", line.unmeasured()));
        }
        return String.join("; ", said);
    }

    private void text(Plan plan, List<TakeOff.Difference> differences) {
        if (differences.isEmpty()) {
            output().line(Messages.text(CommandCode.TAKE_OFF_SAME));
            return;
        }
        Units units = new Units(plan.currency());
        Unit money = units.need(plan.currency());
        String first = against;
        TextTable table =
                new TextTable(List.of("what", "kind", first, "needs", "more", "boxes", "boxes needed", "costs more"));
        for (TakeOff.Difference one : differences) {
            table.row(List.of(
                    one.part().word(),
                    one.kind(),
                    amount(units, one.part(), one.before()),
                    amount(units, one.part(), one.after()),
                    amount(units, one.part(), one.after() - one.before()),
                    boxes(one.boxesBefore()),
                    boxes(one.boxesAfter()),
                    price(money, one.cost())));
        }
        table.lines().forEach(output()::line);
    }

    private void json(TakeOff all) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeArrayFieldStart("lines");
            for (TakeOff.Line line : all.lines()) {
                json.writeStartObject();
                json.writeStringField("part", line.part().word());
                json.writeStringField("kind", line.kind());
                ids(json, "rows", line.rows());
                out.number("planned", line.planned());
                out.number("order", line.order());
                json.writeNumberField("boxes", line.boxes());
                ids(json, "unmeasured", line.unmeasured());
                ids(json, "overlong", line.overlong());
                out.number("cost", line.cost().orElse(Double.NaN));
                json.writeEndObject();
            }
            json.writeEndArray();
            out.number("cost", all.cost());
            json.writeEndObject();
        }
    }

    private static void ids(JsonGenerator json, String name, List<String> ids) throws IOException {
        json.writeArrayFieldStart(name);
        for (String id : ids) {
            json.writeString(id);
        }
        json.writeEndArray();
    }

    private void json(List<TakeOff.Difference> differences) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeArrayFieldStart("differences");
            for (TakeOff.Difference one : differences) {
                json.writeStartObject();
                json.writeStringField("part", one.part().word());
                json.writeStringField("kind", one.kind());
                out.number("before", one.before());
                out.number("after", one.after());
                json.writeNumberField("boxes_before", one.boxesBefore());
                json.writeNumberField("boxes_after", one.boxesAfter());
                out.number("cost", one.cost().orElse(Double.NaN));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }
}
