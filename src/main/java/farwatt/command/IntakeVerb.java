package farwatt.command;

import farwatt.engine.PlanWording;
import farwatt.file.Fingerprint;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.file.SafeSave;
import farwatt.file.Underneath;
import farwatt.intake.Intake;
import farwatt.intake.Mapping;
import farwatt.intake.Meaning;
import farwatt.intake.OpenList;
import farwatt.intake.Outcome;
import farwatt.intake.RowState;
import farwatt.intake.TakeIn;
import farwatt.intake.Taken;
import farwatt.intake.Wishes;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.workbook.Origin;
import farwatt.workbook.WayBack;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

    @Option(names = "--remember", paramLabel = "NAME", description = "Keeps the mapping used in the plan itself.")
    private String remember = "";

    @Option(names = "--column", paramLabel = "HEADING=MEANING", description = "Lays down what a column means.")
    private List<String> columns = new ArrayList<>();

    @Option(names = "--answer", paramLabel = "QUESTION=CHOICE", description = "Answers a question of the report.")
    private List<String> answers = new ArrayList<>();

    @Option(
            names = "--mend",
            paramLabel = "PLACE/HEADING=TEXT",
            description = "Puts one cell right, such as 'line 7/Watts=6 W'.")
    private List<String> mends = new ArrayList<>();

    @Option(names = "--password", paramLabel = "WORD", description = "Opens a locked workbook.")
    private @Nullable String password;

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
        Optional<Origin> origin = Files.isRegularFile(list) ? WayBack.origin(list) : Optional.empty();
        if (origin.isPresent() && into != null) {
            HandoverBack.Manner manner = preview
                    ? HandoverBack.Manner.LOOK
                    : chosen == TakeIn.Policy.STOP ? HandoverBack.Manner.WHOLE : HandoverBack.Manner.WHAT_FITS;
            return new HandoverBack(farwatt.output, list, into, origin.get()).take(manner);
        }
        Mapping kept = kept();
        Wishes plain = Wishes.NONE.with(changed(kept));
        Wishes wishes = password == null ? plain : plain.withPassword(password);
        OpenList open = Intake.open(list, wishes, new Cancel());
        for (String mend : mends) {
            Edge edge = edge(mend);
            int mark = edge.left().indexOf('/');
            open.mend(edge.left().substring(0, Math.max(0, mark)), edge.left().substring(mark + 1), edge.right());
        }
        Outcome outcome = open.outcome();
        if (keepMapping != null) {
            MappingFile.write(keepMapping, outcome.mappingUsed());
        }
        if (json) {
            new IntakeOut(farwatt.output).json(outcome);
        } else {
            new IntakeOut(farwatt.output).text(outcome);
        }
        if (preview || into == null) {
            return Exit.DONE;
        }
        return take(outcome, chosen, into);
    }

    /** The mapping of a file, or the one that the plan keeps under this name. */
    private Mapping kept() throws Refusal {
        if (mapping == null) {
            return Mapping.NONE;
        }
        boolean inPlan = !Files.exists(mapping) && into != null && Files.exists(into);
        if (!inPlan || into == null) {
            return MappingFile.read(mapping);
        }
        String name = mapping.toString();
        return PlanMappings.of(PlanReader.read(into).plan(), name)
                .orElseThrow(() -> Refusal.of(CommandCode.BAD_MAPPING, name));
    }

    /** What a person lays down at the command line goes before what was kept. */
    private Mapping changed(Mapping kept) throws Refusal {
        Mapping changed = kept;
        for (String column : columns) {
            Edge edge = edge(column);
            Meaning meaning =
                    Meaning.of(edge.right()).orElseThrow(() -> Refusal.of(CommandCode.BAD_MEANING, edge.right()));
            changed = changed.withColumn(edge.left(), meaning);
        }
        for (String answer : answers) {
            Edge edge = edge(answer);
            changed = changed.withAnswer(edge.left(), edge.right());
        }
        return changed;
    }

    /** Both sides of the last equals sign. */
    private record Edge(String left, String right) {}

    private static Edge edge(String text) throws Refusal {
        int at = text.lastIndexOf('=');
        if (at <= 0) {
            throw Refusal.of(CommandCode.NO_EQUALS, text);
        }
        return new Edge(text.substring(0, at).strip(), text.substring(at + 1).strip());
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
        List<Change> changes = new ArrayList<>(taken.batch().stream().toList());
        if (!remember.isEmpty()) {
            changes.add(PlanMappings.keep(plan, remember, outcome.mappingUsed()));
        }
        if (changes.isEmpty()) {
            say(Messages.text(CommandCode.NOTHING_WRITTEN, target));
            return Exit.DONE;
        }
        Plan after = Edit.apply(plan, new Change.Batch("", changes)).plan();
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
}
