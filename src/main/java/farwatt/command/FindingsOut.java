package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.Corner;
import farwatt.plan.Step;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.review.Finding;
import farwatt.review.Remedy;
import java.io.IOException;
import java.util.List;

/** Findings as text and as JSON. */
final class FindingsOut {
    private FindingsOut() {}

    /** Failing ones first, each with its caution. */
    static void text(Output output, List<Finding> findings) {
        for (Finding finding : findings) {
            String where = finding.place().text();
            String corner = finding.corner().map(c -> " [" + c.word() + "]").orElse("");
            String head = (where + corner).isBlank() ? "" : where + corner + ": ";
            output.line(finding.level().word() + "  " + head + finding.text());
            if (!finding.caution().isEmpty()) {
                output.line("      " + finding.caution());
            }
            if (!finding.source().isEmpty()) {
                output.line("      (" + finding.source() + ")");
            }
            for (Remedy remedy : finding.remedies()) {
                output.line("      try: " + remedy.text());
            }
            if (!finding.nearest().isEmpty()) {
                output.line("      " + finding.nearest());
            }
        }
    }

    static void json(JsonOut out, List<Finding> findings) throws IOException {
        JsonGenerator json = out.json();
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("code", finding.code());
            json.writeStringField("level", finding.level().word());
            json.writeStringField("corner", finding.corner().map(Corner::word).orElse(""));
            json.writeStringField("table", finding.place().table());
            json.writeStringField("row", finding.place().row());
            json.writeStringField("name", finding.place().name());
            out.number("value", finding.value());
            out.number("limit", finding.limit());
            json.writeStringField("text", finding.text());
            json.writeStringField("source", finding.source());
            json.writeStringField("caution", finding.caution());
            json.writeArrayFieldStart("remedies");
            for (Remedy remedy : finding.remedies()) {
                remedy(out, remedy);
            }
            json.writeEndArray();
            json.writeStringField("nearest", finding.nearest());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void remedy(JsonOut out, Remedy remedy) throws IOException {
        JsonGenerator json = out.json();
        json.writeStartObject();
        json.writeStringField("text", remedy.text());
        json.writeArrayFieldStart("changes");
        for (Step step : remedy.changes()) {
            json.writeStartObject();
            if (step instanceof Step.Set set) {
                json.writeStringField("set", set.path());
                json.writeFieldName("to");
                out.cell(set.to());
            } else if (step instanceof Step.Add add) {
                json.writeStringField("add", add.table());
                json.writeFieldName("row");
                out.row(add.row(), "id");
            } else if (step instanceof Step.Drop drop) {
                json.writeStringField("drop", drop.id());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("result");
        out.number("least_reserve_share", remedy.leastReserveShare());
        out.number("least_headroom", remedy.leastHeadroom());
        out.number("cost", remedy.cost());
        json.writeEndObject();
        json.writeEndObject();
    }

    /** A notice about the file as a finding of the same level. */
    static Finding of(Notice notice) {
        return new Finding(
                notice.code(),
                notice.level(),
                java.util.Optional.empty(),
                notice.place(),
                Double.NaN,
                Double.NaN,
                notice.text(),
                "",
                "");
    }

    static boolean fails(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.level() == Level.FAIL);
    }
}
