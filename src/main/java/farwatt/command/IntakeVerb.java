package farwatt.command;

import farwatt.file.FileCode;
import farwatt.file.KeptMapping;
import farwatt.file.PlanReader;
import farwatt.intake.Intake;
import farwatt.intake.Mapping;
import farwatt.intake.Meaning;
import farwatt.intake.OpenList;
import farwatt.intake.Outcome;
import farwatt.intake.TakeIn;
import farwatt.intake.Taken;
import farwatt.intake.Wishes;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.workbook.Origin;
import farwatt.workbook.WayBack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
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

    @Option(
            names = "--known",
            paramLabel = "MANNER",
            description = "Devices that the plan has already: update (they follow the list, the default), skip (they"
                    + " stay), add (the list's are others).")
    private String known = "update";

    @Option(
            names = "--gone",
            paramLabel = "MANNER",
            description = "Devices of the plan that the list does not name: leave (the default), out-of-use, remove.")
    private String gone = "leave";

    @Option(names = "--report", paramLabel = "FILE", description = "Writes the report of every row as a workbook.")
    private @Nullable Path report;

    @Override
    public Integer call() throws Exception {
        TakeIn.Manner manner = new TakeIn.Manner(
                chosen(TakeIn.Policy.values(), policy, CommandCode.BAD_POLICY),
                chosen(TakeIn.Known.values(), known, CommandCode.BAD_KNOWN),
                chosen(TakeIn.Gone.values(), gone, CommandCode.BAD_GONE));
        Optional<Origin> origin = Files.isRegularFile(list) ? WayBack.origin(list) : Optional.empty();
        if (origin.isPresent() && into != null) {
            return back(into, origin.get(), manner.policy());
        }
        Outcome outcome = outcome();
        if (keepMapping != null) {
            kept("", outcome.mappingUsed()).write(keepMapping);
        }
        Optional<IntakeInto> target =
                into == null ? Optional.empty() : Optional.of(new IntakeInto(farwatt.output, into, outcome, manner));
        Optional<Taken> taken = target.map(IntakeInto::taken);
        if (json) {
            new IntakeOut(farwatt.output).json(outcome, taken);
        } else {
            new IntakeOut(farwatt.output).text(outcome, taken);
        }
        if (report != null) {
            new IntakeBook(String.valueOf(list.getFileName()), outcome, taken)
                    .write(report, LocalDate.now(ZoneId.systemDefault()));
            farwatt.output.say(Messages.text(CommandCode.REPORT_WRITTEN, report));
        }
        boolean looks = preview || target.isEmpty();
        return looks ? Exit.DONE : target.get().take(remember);
    }

    private Outcome outcome() throws IOException, Refusal {
        Wishes plain = Wishes.NONE.with(changed(kept()));
        Wishes wishes = password == null ? plain : plain.withPassword(password);
        OpenList open = Intake.open(list, wishes, new Cancel());
        for (String mend : mends) {
            Edge edge = edge(mend);
            int mark = edge.left().indexOf('/');
            open.mend(edge.left().substring(0, Math.max(0, mark)), edge.left().substring(mark + 1), edge.right());
        }
        return open.outcome();
    }

    private int back(Path plan, Origin origin, TakeIn.Policy chosen) throws Exception {
        HandoverBack.Manner manner = preview
                ? HandoverBack.Manner.LOOK
                : chosen == TakeIn.Policy.STOP ? HandoverBack.Manner.WHOLE : HandoverBack.Manner.WHAT_FITS;
        return new HandoverBack(farwatt.output, list, plan, origin).take(manner);
    }

    static KeptMapping kept(String name, Mapping mapping) {
        return new KeptMapping(name, mapping.columns(), mapping.answers());
    }

    /** The mapping of a file, or the one that the plan keeps under this name. */
    private Mapping kept() throws Refusal {
        if (mapping == null) {
            return Mapping.NONE;
        }
        boolean inPlan = !Files.exists(mapping) && into != null && Files.exists(into);
        KeptMapping found;
        if (inPlan && into != null) {
            String name = mapping.toString();
            found = KeptMapping.of(PlanReader.read(into).plan(), name)
                    .orElseThrow(() -> Refusal.of(FileCode.NO_MAPPING, name));
        } else {
            found = KeptMapping.read(mapping);
        }
        return new Mapping(found.columns(), found.answers());
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

    private static <T extends Enum<T>> T chosen(T[] ways, String word, CommandCode unknown) throws Refusal {
        for (T each : ways) {
            if (each.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word)) {
                return each;
            }
        }
        throw Refusal.of(unknown, word);
    }
}
