package farwatt.command;

import farwatt.engine.PlanWording;
import farwatt.file.Fingerprint;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.file.SafeSave;
import farwatt.file.Underneath;
import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import farwatt.script.Changes;
import farwatt.script.Limits;
import farwatt.script.Outcome;
import farwatt.script.Script;
import farwatt.script.ScriptHost;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs a script against a working copy of a plan. */
@Command(
        name = "script",
        description = "Runs a script against a copy of the plan; what it keeps goes where --into says, else nowhere.")
final class ScriptVerb extends PlanVerb {
    @Parameters(index = "1", paramLabel = "FILE.js", description = "The script; modules come from its folder.")
    private Path script = Path.of("");

    @Parameters(index = "2..*", arity = "0..*", paramLabel = "ARG", description = "Words that the script sees as args.")
    private List<String> arguments = new ArrayList<>();

    @Option(names = "--out", paramLabel = "DIR", description = "The folder that the script may save results in.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--into",
            paramLabel = "PLAN",
            description = "The plan that takes the scenarios and changes that the script keeps; may be the same.")
    private Optional<Path> into = Optional.empty();

    @Override
    public Integer call() throws Exception {
        Plan plan = inCorner(base());
        sayNotices();
        if (out.isPresent()) {
            Files.createDirectories(out.get());
        }
        Script program = Script.file(script);
        ScriptSays says = new ScriptSays(output(), out, plan, json ? ScriptSays.Form.JSON : ScriptSays.Form.TEXT);
        try (ScriptHost host = new ScriptHost(Limits.USUAL)) {
            Outcome outcome = host.run(program, plan, scenario(), arguments, says, new Cancel());
            says.end(outcome);
            if (!outcome.said().isEmpty()) {
                output().say(outcome.said());
            }
            if (outcome.state() == Outcome.State.DONE) {
                take(outcome);
            }
            return switch (outcome.state()) {
                case DONE -> Exit.DONE;
                case FAILED -> Exit.WRONG;
                case STOPPED, CANCELLED, BROKEN -> Exit.STOPPED;
            };
        }
    }

    /** The corner that was named stands in the copy's settings, where the script sees it and may change it. */
    private Plan inCorner(Plan plan) throws Refusal {
        Optional<Change> change =
                corner().map(c -> new Change.SetCell(Table.PLAN, "", "corner", Optional.of(Cell.text(c.word()))));
        return change.map(c -> Edit.apply(plan, c).plan()).orElse(plan);
    }

    /** Puts what the script kept into the plan that was named for it. */
    private void take(Outcome outcome) throws Refusal, IOException {
        if (outcome.kept().isEmpty() && outcome.proposed().isEmpty()) {
            return;
        }
        String names =
                String.join(", ", outcome.kept().stream().map(Scenario::id).toList());
        int changes = outcome.proposed().map(p -> p.steps().size()).orElse(0);
        if (into.isEmpty()) {
            output().say(Messages.text(CommandCode.NOT_KEPT, outcome.kept().size(), changes));
            return;
        }
        Opened opened = PlanReader.read(into.get());
        Plan after = opened.plan();
        List<Notice> notices = new ArrayList<>();
        if (outcome.proposed().isPresent()) {
            String label = String.valueOf(script.getFileName());
            after = Edit.apply(after, Changes.proposed(after, outcome.proposed().get(), label, notices))
                    .plan();
        }
        after = Edit.apply(after, Changes.kept(after, outcome.kept())).plan();
        notices.forEach(notice -> output().say(notice.line()));
        Fingerprint fingerprint = opened.fingerprint();
        new SafeSave().save(after, into.get(), PlanWording.canonicalFor(after), fingerprint, Underneath.REFUSE);
        output().say(Messages.text(CommandCode.KEPT, into.get(), changes, names.isEmpty() ? "none" : names));
    }
}
