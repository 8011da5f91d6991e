package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Progress;
import farwatt.review.CornerVerdict;
import farwatt.review.Finding;
import farwatt.review.Remedies;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.review.Verdict;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;

/** Says whether a plan holds. */
@Command(name = "check", description = "The verdict over all corners, what binds each node, and the findings.")
final class CheckVerb extends PlanVerb {
    @Override
    public Integer call() throws Exception {
        Optional<Corner> corner = corner();
        Calculation calculation = calculation();
        Review found = corner.isPresent() ? Reviewer.review(calculation, corner.get()) : Reviewer.review(calculation);
        Review review;
        try (Stopping stopping = Stopping.begin(output())) {
            Progress progress = stopping.progress(
                    (share, what) -> Messages.text(CommandCode.SEEKING, Math.round(100 * share), what));
            review = Remedies.of(calculation, found, progress, stopping.cancel());
        }
        List<Finding> findings = new ArrayList<>(review.findings());
        notices().stream().map(FindingsOut::of).filter(f -> !known(findings, f)).forEach(findings::add);
        if (json) {
            json(review, findings);
        } else {
            text(output(), calculation, review, findings);
        }
        return review.verdict().holds() && !FindingsOut.fails(findings) ? Exit.DONE : Exit.FAILS;
    }

    private static boolean known(List<Finding> findings, Finding finding) {
        return findings.stream()
                .anyMatch(f -> f.code().equals(finding.code()) && f.place().equals(finding.place()));
    }

    /** The whole answer as text. */
    static void text(Output output, Calculation calculation, Review review, List<Finding> findings) {
        Plan plan = calculation.plan();
        if (!plan.name().isEmpty()) {
            output.line(plan.name());
        }
        output.line(review.verdict().text());
        output.line("");
        corners(output, review.corners());
        nodes(output, calculation, review.verdict().corner());
        if (!findings.isEmpty()) {
            output.line("Findings");
            FindingsOut.text(output, findings);
            output.line("");
        }
        output.line("Cautions");
        review.cautions().forEach(caution -> output.line("- " + caution));
    }

    private static void corners(Output output, Map<Corner, CornerVerdict> corners) {
        Units units = new Units("EUR");
        Unit percent = units.need("%");
        TextTable table = new TextTable(List.of("corner", "holds", "least reserve", "least headroom"));
        corners.forEach((corner, verdict) -> table.row(List.of(
                corner.word(),
                verdict.holds() ? "yes" : "no",
                Show.text(verdict.leastReserveShare(), percent),
                Show.text(verdict.leastHeadroom(), units.need("V")))));
        table.lines().forEach(output::line);
        output.line("");
    }

    /** What binds each node, in the corner that decides. */
    private static void nodes(Output output, Calculation calculation, Corner corner) {
        Corner before = calculation.corner();
        calculation.look(corner);
        List<String> names = List.of("available", "bound_by", "sent", "reserve", "reserve_share");
        List<String> headings = new ArrayList<>(List.of("node (" + corner.word() + ")"));
        headings.addAll(names);
        TextTable table = new TextTable(headings);
        for (Table node : List.of(Table.SOURCES, Table.SWITCHES)) {
            for (int place = 0; place < calculation.rows(node); place++) {
                List<String> cells = new ArrayList<>(List.of(calculation.id(node, place)));
                for (String name : names) {
                    Value value = calculation.value(node, place, name);
                    cells.add(value.text());
                }
                table.row(cells);
            }
        }
        calculation.look(before);
        if (!table.isEmpty()) {
            table.lines().forEach(output::line);
            output.line("");
        }
    }

    private void json(Review review, List<Finding> findings) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            Verdict verdict = review.verdict();
            json.writeObjectFieldStart("verdict");
            json.writeBooleanField("holds", verdict.holds());
            json.writeStringField("text", verdict.text());
            json.writeStringField("corner", verdict.corner().word());
            json.writeStringField("row", verdict.place().row());
            json.writeStringField("name", verdict.place().name());
            json.writeEndObject();
            json.writeObjectFieldStart("corners");
            for (Map.Entry<Corner, CornerVerdict> entry : review.corners().entrySet()) {
                json.writeObjectFieldStart(entry.getKey().word());
                json.writeBooleanField("holds", entry.getValue().holds());
                out.number("least_reserve_share", entry.getValue().leastReserveShare());
                out.number("least_headroom", entry.getValue().leastHeadroom());
                json.writeEndObject();
            }
            json.writeEndObject();
            FindingsOut.json(out, findings);
            json.writeArrayFieldStart("cautions");
            for (String caution : review.cautions()) {
                json.writeString(caution);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }
}
