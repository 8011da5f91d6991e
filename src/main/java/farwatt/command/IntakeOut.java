package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.intake.Outcome;
import farwatt.intake.Question;
import farwatt.intake.ReportLine;
import farwatt.intake.RowState;
import farwatt.intake.TotalsCheck;
import farwatt.plan.Row;
import farwatt.report.Notice;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Says what was understood of a list: a line a row, as text or as JSON. */
final class IntakeOut {
    private final Output output;

    IntakeOut(Output output) {
        this.output = output;
    }

    void text(Outcome outcome) {
        TextTable columns = new TextTable(List.of("heading", "understood as", "because"));
        outcome.columns()
                .forEach(c ->
                        columns.row(List.of(c.heading(), c.meaning().toString().toLowerCase(Locale.ROOT), c.reason())));
        columns.lines().forEach(output::line);
        output.line("");
        TextTable rows = new TextTable(List.of("place", "state", "said"));
        for (ReportLine line : outcome.report()) {
            rows.row(List.of(line.place(), line.state().word(), line.said()));
        }
        rows.lines().forEach(output::line);
        output.line("");
        output.line(counts(outcome));
        for (TotalsCheck check : outcome.totals()) {
            output.line(check.said());
        }
        for (Notice notice : outcome.notices()) {
            output.line(notice.line());
        }
        for (Question question : outcome.questions()) {
            output.line("asked: " + question.text());
        }
    }

    private static String counts(Outcome outcome) {
        return outcome.rows() + " rows: " + outcome.count(RowState.TAKEN) + " taken, "
                + outcome.count(RowState.CHANGED) + " changed, " + outcome.count(RowState.HELD_BACK)
                + " held back, " + outcome.count(RowState.LEFT_OUT) + " left out";
    }

    void json(Outcome outcome) throws IOException {
        try (JsonOut out = new JsonOut(output)) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeNumberField("rows", outcome.rows());
            json.writeNumberField("taken", outcome.count(RowState.TAKEN));
            json.writeNumberField("changed", outcome.count(RowState.CHANGED));
            json.writeNumberField("held_back", outcome.count(RowState.HELD_BACK));
            json.writeNumberField("left_out", outcome.count(RowState.LEFT_OUT));
            rows(out, "devices", outcome.devices());
            rows(out, "runs", outcome.runs());
            rows(out, "readings", outcome.readings());
            json.writeArrayFieldStart("report");
            for (ReportLine line : outcome.report()) {
                json.writeStartObject();
                json.writeStringField("place", line.place());
                json.writeStringField("state", line.state().word());
                json.writeObjectFieldStart("original");
                for (Map.Entry<String, String> cell : line.original().entrySet()) {
                    json.writeStringField(cell.getKey(), cell.getValue());
                }
                json.writeEndObject();
                json.writeStringField("said", line.said());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("questions");
            for (Question question : outcome.questions()) {
                json.writeStartObject();
                json.writeStringField("key", question.key());
                json.writeStringField("text", question.text());
                json.writeStringField("used", question.used());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }

    private static void rows(JsonOut out, String name, List<Row> rows) throws IOException {
        out.json().writeArrayFieldStart(name);
        for (Row row : rows) {
            out.row(row, "id");
        }
        out.json().writeEndArray();
    }
}
