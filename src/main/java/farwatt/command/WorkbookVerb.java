package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.review.Remedies;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.workbook.CsvOut;
import farwatt.workbook.Handover;
import farwatt.workbook.Paper;
import farwatt.workbook.SideTables;
import farwatt.workbook.StudyTable;
import farwatt.workbook.Workbook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the hand-over workbook. */
@Command(
        name = "workbook",
        description = "The hand-over workbook: verdict, schedules, power at each node, findings, scenarios, studies.")
final class WorkbookVerb extends PlanVerb {
    private static final double REMEDIES = 0.3;
    private static final double SIDES = 0.5;
    private static final double STUDIES = 0.7;

    @Option(
            names = "-o",
            paramLabel = "FILE",
            required = true,
            description = "Where to write it; to a name that ends in .csv go the sheets as plain lists.")
    private Path target = Path.of("");

    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            description = "Writes this sheet beside the summary and none that is not named; may be said several times.")
    private List<String> wanted = new ArrayList<>();

    @Option(names = "--without", paramLabel = "NAME", description = "Leaves this sheet out; may be said several times.")
    private List<String> unwanted = new ArrayList<>();

    @Option(
            names = "--study",
            paramLabel = "'VERB …'",
            description = "Adds a study with its chart, called like its verb without the plan: \"sweep --over"
                    + " 'quay.ambient = 0 degC .. 40 degC by 5 K' --read gate.reserve_share\"; may be said several"
                    + " times.")
    private List<String> studies = new ArrayList<>();

    @Override
    public Integer call() throws Exception {
        List<String> without = without();
        List<StudyCall> calls = calls();
        Calculation calculation = calculation();
        sayNotices();
        try (Stopping stopping = Stopping.begin(output())) {
            Progress progress = stopping.progress();
            Cancel cancel = stopping.cancel();
            Handover plain = handover(calculation, scenario(), fingerprint(), progress.part(0, REMEDIES), cancel);
            Handover whole = plain.without(without)
                    .beside(SideTables.of(base(), corner(), progress.part(REMEDIES, SIDES), cancel))
                    .with(sheets(calls, progress.part(SIDES, STUDIES), cancel));
            if (CsvOut.isList(target)) {
                List<Path> lists = CsvOut.write(target, whole, progress.part(STUDIES, 1), cancel);
                lists.forEach(list -> output().say(Messages.text(CommandCode.LIST_WRITTEN, list)));
                return Exit.DONE;
            }
            write(target, whole, output(), progress.part(STUDIES, 1), cancel);
        }
        output().say(Messages.text(CommandCode.WRITTEN, target));
        return Exit.DONE;
    }

    private List<String> without() throws Refusal {
        List<String> left = new ArrayList<>();
        List<String> named = new ArrayList<>();
        for (String name : unwanted) {
            left.add(sheet(name));
        }
        for (String name : wanted) {
            named.add(sheet(name));
        }
        Handover.SHEETS.stream()
                .filter(title -> !named.isEmpty() && !named.contains(title))
                .forEach(left::add);
        return left;
    }

    private static String sheet(String name) throws Refusal {
        return Handover.SHEETS.stream()
                .filter(title -> title.equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> Refusal.of(CommandCode.NO_SHEET, name, String.join(", ", Handover.SHEETS)));
    }

    /** Read before anything long is worked out; a study looks where the hand-over looks unless it says otherwise. */
    private List<StudyCall> calls() throws Refusal {
        List<String> usual = new ArrayList<>(List.of(file().toString()));
        if (!scenario().isEmpty()) {
            usual.addAll(List.of("--scenario", scenario()));
        }
        corner().ifPresent(corner -> usual.addAll(List.of("--corner", corner.word())));
        List<StudyCall> calls = new ArrayList<>();
        for (String study : studies) {
            calls.add(StudyCall.of(study, usual));
        }
        return calls;
    }

    private static List<StudyTable> sheets(List<StudyCall> calls, Progress progress, Cancel cancel)
            throws Refusal, IOException {
        List<StudyTable> sheets = new ArrayList<>();
        for (int i = 0; i < calls.size(); i++) {
            double from = (double) i / calls.size();
            sheets.addAll(calls.get(i).sheets(progress.part(from, from + 1.0 / calls.size()), cancel));
        }
        return sheets;
    }

    /** What a hand-over of a plan holds, without scenarios and studies. */
    static Handover handover(
            Calculation calculation, String scenario, String fingerprint, Progress progress, Cancel cancel) {
        Review found = Reviewer.review(calculation, cancel);
        return new Handover(
                        calculation,
                        Remedies.of(calculation, found, progress, cancel),
                        Optional.of(scenario).filter(id -> !id.isEmpty()),
                        Version.number(),
                        Optional.of(fingerprint),
                        LocalDate.now(ZoneId.systemDefault()),
                        Paper.of(Locale.getDefault().getCountry()))
                .drawn();
    }

    /** Writes a hand-over and says what had to be changed to fit. */
    static void write(Path target, Handover handover, Output output, Progress progress, Cancel cancel) throws Refusal {
        Workbook.write(target, handover, progress, cancel).forEach(notice -> output.say(notice.line()));
    }
}
