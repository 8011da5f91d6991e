package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.intake.ColumnMeaning;
import farwatt.intake.Difference;
import farwatt.intake.Outcome;
import farwatt.intake.Question;
import farwatt.intake.ReportLine;
import farwatt.intake.RowState;
import farwatt.intake.Taken;
import farwatt.intake.TotalsCheck;
import farwatt.intake.Understood;
import farwatt.plan.Row;
import farwatt.report.Notice;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Says what was understood of a list: a line a row, as text or as JSON. */
final class IntakeOut {
    private final Output output;

    IntakeOut(Output output) {
        this.output = output;
    }

    void text(Outcome outcome, Optional<Taken> taken) {
        TextTable columns = new TextTable(List.of("heading", "understood as", "sure", "because"));
        outcome.columns()
                .forEach(c -> columns.row(List.of(c.heading(), c.meaning().word(), sure(c.confidence()), c.reason())));
        columns.lines().forEach(output::line);
        output.line("");
        TextTable rows = new TextTable(List.of("place", "state", "as it stood", "said"));
        for (ReportLine line : outcome.report()) {
            rows.row(List.of(line.place(), line.state().word(), original(line), line.said()));
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
        taken.ifPresent(this::against);
        List<Question> asked = new ArrayList<>(outcome.questions());
        taken.ifPresent(t -> asked.addAll(t.questions()));
        asked.forEach(this::asked);
    }

    private static String sure(double confidence) {
        return Math.round(confidence * 100) + " %";
    }

    /** The row's cells, tidied to one line. */
    private static String original(ReportLine line) {
        List<String> cells = new ArrayList<>(line.original().values());
        while (!cells.isEmpty() && cells.get(cells.size() - 1).isBlank()) {
            cells.remove(cells.size() - 1);
        }
        return String.join(" | ", cells).replaceAll("\\s+", " ").strip();
    }

    /** What is new, what the list says otherwise, and what it does not name. */
    private void against(Taken taken) {
        if (!taken.added().isEmpty()) {
            output.line("added: " + String.join(", ", taken.added()));
        }
        for (Difference d : taken.differences()) {
            output.line("differs: " + d.id() + "." + d.name() + " " + quoted(d.before()) + " → " + quoted(d.after()));
        }
        if (!taken.gone().isEmpty()) {
            output.line("not in the list: " + String.join(", ", taken.gone()));
        }
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "–" : text;
    }

    private void asked(Question question) {
        String used = question.used().isEmpty() ? "" : " Used: " + question.used() + ".";
        String choices = question.choices().isEmpty() ? "" : " (" + String.join(" | ", question.choices()) + ")";
        output.line("asked: " + question.text() + used + " " + option(question.key()) + choices);
    }

    /** How a question is answered: what becomes of the plan's devices has options of its own. */
    private static String option(String key) {
        return key.equals("known") || key.equals("gone") ? "--" + key : "--answer '" + key + "=…'";
    }

    static String counts(Outcome outcome) {
        return outcome.rows() + " rows: " + outcome.count(RowState.TAKEN) + " taken, "
                + outcome.count(RowState.CHANGED) + " changed, " + outcome.count(RowState.HELD_BACK)
                + " held back, " + outcome.count(RowState.LEFT_OUT) + " left out";
    }

    void json(Outcome outcome, Optional<Taken> taken) throws IOException {
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
            report(json, outcome);
            columns(json, outcome);
            totals(json, outcome);
            texts(json, "notices", outcome.notices().stream().map(Notice::text).toList());
            List<Question> asked = new ArrayList<>(outcome.questions());
            taken.ifPresent(t -> asked.addAll(t.questions()));
            questions(json, asked);
            if (taken.isPresent()) {
                plan(json, taken.get());
            }
            json.writeEndObject();
        }
    }

    private static void report(JsonGenerator json, Outcome outcome) throws IOException {
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
            texts(json, "made", line.made());
            json.writeArrayFieldStart("understood");
            for (Understood value : line.understood()) {
                json.writeStartObject();
                json.writeStringField("name", value.name());
                json.writeStringField("text", value.text());
                json.writeStringField("from", value.source().name().toLowerCase(Locale.ROOT));
                json.writeStringField("original", value.original());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void columns(JsonGenerator json, Outcome outcome) throws IOException {
        json.writeArrayFieldStart("columns");
        for (ColumnMeaning column : outcome.columns()) {
            json.writeStartObject();
            json.writeStringField("heading", column.heading());
            json.writeStringField("meaning", column.meaning().word());
            json.writeNumberField("confidence", column.confidence());
            json.writeStringField("reason", column.reason());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void totals(JsonGenerator json, Outcome outcome) throws IOException {
        json.writeArrayFieldStart("totals");
        for (TotalsCheck total : outcome.totals()) {
            json.writeStartObject();
            json.writeStringField("place", total.place());
            json.writeStringField("heading", total.heading());
            json.writeStringField("stated", total.stated());
            json.writeStringField("found", total.found());
            json.writeBooleanField("agrees", total.agrees());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void questions(JsonGenerator json, List<Question> questions) throws IOException {
        json.writeArrayFieldStart("questions");
        for (Question question : questions) {
            json.writeStartObject();
            json.writeStringField("key", question.key());
            json.writeStringField("text", question.text());
            texts(json, "choices", question.choices());
            json.writeStringField("used", question.used());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** What taking it in does to the plan that was named. */
    private static void plan(JsonGenerator json, Taken taken) throws IOException {
        json.writeObjectFieldStart("plan");
        texts(json, "added", taken.added());
        texts(json, "changed", taken.changed());
        texts(json, "same", taken.same());
        texts(json, "gone", taken.gone());
        json.writeArrayFieldStart("differences");
        for (Difference d : taken.differences()) {
            json.writeStartObject();
            json.writeStringField("id", d.id());
            json.writeStringField("name", d.name());
            json.writeStringField("before", d.before());
            json.writeStringField("after", d.after());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void texts(JsonGenerator json, String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private static void rows(JsonOut out, String name, List<Row> rows) throws IOException {
        out.json().writeArrayFieldStart(name);
        for (Row row : rows) {
            out.row(row, "id");
        }
        out.json().writeEndArray();
    }
}
