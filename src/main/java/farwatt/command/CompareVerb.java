package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.Answer;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.report.Cancel;
import farwatt.review.SideBySide;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
        List<String> names = reads.isEmpty() ? SideBySide.usual(base) : reads;
        SideBySide sides = SideBySide.of(base, wanted(base), names, corner(), new Cancel());
        sides.notices().forEach(notice -> output().say(notice.line()));
        for (SideBySide.Row row : sides.rows()) {
            for (Answer answer : row.answers()) {
                if (!AskVerb.understood(output(), answer)) {
                    return Exit.WRONG;
                }
            }
        }
        if (json) {
            json(sides);
        } else {
            text(sides);
        }
        return Exit.DONE;
    }

    /** The plan without a scenario first. */
    private List<String> wanted(Plan base) {
        List<String> wanted = new ArrayList<>(List.of(""));
        if (ids.isEmpty()) {
            base.scenarios().stream().map(Scenario::id).forEach(wanted::add);
        } else {
            ids.forEach(id -> wanted.add(id.equals(BASE) ? "" : id));
        }
        return wanted.stream().distinct().toList();
    }

    private static String name(SideBySide.Column column) {
        return column.id().isEmpty() ? BASE : column.id();
    }

    private void text(SideBySide sides) {
        List<String> headings = new ArrayList<>(List.of(""));
        List<String> verdicts = new ArrayList<>(List.of("holds in every corner"));
        for (SideBySide.Column column : sides.columns()) {
            headings.add(name(column));
            verdicts.add(column.verdict().holds() ? "yes" : "no");
        }
        TextTable table = new TextTable(headings);
        table.row(verdicts);
        for (SideBySide.Row row : sides.rows()) {
            List<String> cells = new ArrayList<>(List.of(row.name()));
            for (int i = 0; i < sides.columns().size(); i++) {
                cells.add(row.differs(i) ? row.text(i) + " *" : row.text(i));
            }
            table.row(cells);
        }
        table.lines().forEach(output()::line);
        output().line("");
        output().line("* differs from base");
    }

    private void json(SideBySide sides) throws IOException {
        try (JsonOut out = new JsonOut(output())) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeArrayFieldStart("scenarios");
            for (SideBySide.Column column : sides.columns()) {
                json.writeString(name(column));
            }
            json.writeEndArray();
            json.writeArrayFieldStart("rows");
            for (SideBySide.Row row : sides.rows()) {
                json.writeStartObject();
                json.writeStringField("name", row.name());
                json.writeArrayFieldStart("values");
                for (Answer answer : row.answers()) {
                    out.value(answer.value().orElseThrow());
                }
                json.writeEndArray();
                json.writeBooleanField("differs", row.differs());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
    }
}
