package farwatt.command;

import com.fasterxml.jackson.core.JsonGenerator;
import farwatt.engine.PlanWording;
import farwatt.file.Fingerprint;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.file.SafeSave;
import farwatt.file.Underneath;
import farwatt.intake.Intake;
import farwatt.intake.Mapping;
import farwatt.intake.Outcome;
import farwatt.intake.Question;
import farwatt.intake.ReportLine;
import farwatt.intake.RowState;
import farwatt.intake.TakeIn;
import farwatt.intake.Taken;
import farwatt.intake.TotalsCheck;
import farwatt.intake.Wishes;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Takes a customer's list in. */
@Command(
        name = "intake",
        mixinStandardHelpOptions = true,
        description = "A customer's list to devices and runs, with a report of every row.")
final class IntakeVerb implements Callable<Integer> {
    @ParentCommand
    private Farwatt farwatt = new Farwatt(Output.standard());

    @Parameters(index = "0", paramLabel = "LIST", description = "The list: CSV, XLSX or XLS.")
    private Path list = Path.of("");

    @Option(names = "--into", paramLabel = "PLAN", description = "The plan to take it into; begun anew if not there.")
    private @Nullable Path into;

    @Option(names = "--mapping", paramLabel = "FILE", description = "A kept mapping of columns to names.")
    private @Nullable Path mapping;

    @Option(names = "--keep-mapping", paramLabel = "FILE", description = "Keeps the mapping used, for the next list.")
    private @Nullable Path keepMapping;

    @Option(names = "--preview", description = "Shows what was understood and changes nothing.")
    private boolean preview;

    @Option(
            names = "--policy",
            paramLabel = "POLICY",
            description = "Rows held back: stop (take nothing, the default), skip (leave them), keep (out of use).")
    private String policy = "stop";

    @Option(names = "--json", description = "Answers as JSON.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        TakeIn.Policy chosen = policy();
        Mapping kept = mapping == null ? Mapping.NONE : MappingFile.read(mapping);
        Outcome outcome = Intake.read(list, Wishes.NONE.with(kept), new Cancel());
        if (keepMapping != null) {
            MappingFile.write(keepMapping, outcome.mappingUsed());
        }
        if (json) {
            json(outcome);
        } else {
            text(outcome);
        }
        if (preview || into == null) {
            return Exit.DONE;
        }
        return take(outcome, chosen, into);
    }

    private TakeIn.Policy policy() throws Refusal {
        for (TakeIn.Policy each : TakeIn.Policy.values()) {
            if (each.name().toLowerCase(Locale.ROOT).equals(policy)) {
                return each;
            }
        }
        throw Refusal.of(CommandCode.BAD_POLICY, policy);
    }

    private int take(Outcome outcome, TakeIn.Policy chosen, Path target) throws Refusal {
        boolean there = Files.exists(target);
        Plan plan = Plan.EMPTY;
        Fingerprint fingerprint = Fingerprint.NONE;
        if (there) {
            Opened opened = PlanReader.read(target);
            plan = opened.plan();
            fingerprint = opened.fingerprint();
        } else {
            say(Messages.text(CommandCode.NEW_PLAN, target));
        }
        Taken taken = TakeIn.into(plan, outcome, chosen, TakeIn.Known.UPDATE);
        taken.notices().forEach(notice -> say(notice.line()));
        taken.questions().forEach(question -> say(question.text()));
        int held = outcome.count(RowState.HELD_BACK);
        if (chosen == TakeIn.Policy.STOP && held > 0) {
            say(Messages.text(CommandCode.HELD_BACK, held));
            return Exit.WRONG;
        }
        if (taken.batch().isEmpty()) {
            say(Messages.text(CommandCode.NOTHING_WRITTEN, target));
            return Exit.DONE;
        }
        Plan after = Edit.apply(plan, taken.batch().get()).plan();
        new SafeSave().save(after, target, PlanWording.canonicalFor(after), fingerprint, Underneath.REFUSE);
        say(Messages.text(
                CommandCode.TAKEN_IN,
                target,
                taken.added().size(),
                taken.changed().size(),
                taken.same().size(),
                taken.gone().size()));
        return Exit.DONE;
    }

    private void say(String text) {
        farwatt.output.say(text);
    }

    private void text(Outcome outcome) {
        Output output = farwatt.output;
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

    private void json(Outcome outcome) throws IOException {
        try (JsonOut out = new JsonOut(farwatt.output)) {
            JsonGenerator json = out.json();
            json.writeStartObject();
            json.writeNumberField("rows", outcome.rows());
            json.writeNumberField("taken", outcome.count(RowState.TAKEN));
            json.writeNumberField("changed", outcome.count(RowState.CHANGED));
            json.writeNumberField("held_back", outcome.count(RowState.HELD_BACK));
            json.writeNumberField("left_out", outcome.count(RowState.LEFT_OUT));
            rows(out, "devices", outcome.devices());
            rows(out, "runs", outcome.runs());
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
