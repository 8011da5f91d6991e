package farwatt.command;

import farwatt.engine.Corner;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Vary;
import farwatt.workbook.Imprint;
import farwatt.workbook.Paper;
import farwatt.workbook.StudySheets;
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
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** What every verb that calculates a plan many times has: threads, a limit of time, a way to stop. */
abstract class StudyVerb extends PlanVerb {
    private static final String WORKBOOK = ".xlsx";

    @Option(names = "--threads", paramLabel = "N", description = "How many threads work; all unless said.")
    private int threads;

    @Option(names = "--seconds", paramLabel = "N", description = "Stops after so long, with exit code 3.")
    private double seconds = Double.POSITIVE_INFINITY;

    /** Does the work on the plan of the scenario that was named. */
    abstract void study(Ground ground, Effort effort) throws Refusal, IOException;

    /** Does the work and makes sheets of what comes of it. */
    abstract List<StudyTable> sheets(Ground ground, Effort effort) throws Refusal, IOException;

    @Override
    public final Integer call() throws Exception {
        Ground ground = ground();
        sayNotices();
        try (Stopping stopping = Stopping.begin(output())) {
            stopping.limit(seconds);
            study(ground, effort(stopping.progress(), stopping.cancel()));
        }
        return Exit.DONE;
    }

    /** The same for a hand-over: the sheets of this study. */
    final List<StudyTable> sheets(Progress progress, Cancel cancel) throws Refusal, IOException {
        return sheets(ground(), effort(progress, cancel));
    }

    private Ground ground() throws Refusal {
        if (allCorners()) {
            throw Refusal.of(CommandCode.ONE_CORNER);
        }
        if (threads < 0 || !(seconds > 0)) {
            throw Refusal.of(CommandCode.BAD_EFFORT);
        }
        Optional<Corner> corner = corner();
        Plan plan = plan();
        return corner.map(c -> Ground.of(plan, c)).orElseGet(() -> Ground.of(plan));
    }

    private Effort effort(Progress progress, Cancel cancel) {
        int working = threads > 0 ? threads : Runtime.getRuntime().availableProcessors();
        return new Effort(working, progress, cancel, System::nanoTime);
    }

    /** Makes sheets that say what the study stood on. */
    final StudySheets sheetsOf(Ground ground) {
        String scenario = scenario().equals("base") ? "" : scenario();
        return new StudySheets(
                Stream.of(ground.plan().name(), scenario, ground.corner().phrase())
                        .filter(text -> !text.isBlank())
                        .collect(Collectors.joining(" · ")));
    }

    static boolean isWorkbook(String file) {
        return file.toLowerCase(Locale.ROOT).endsWith(WORKBOOK);
    }

    /** Writes sheets of a study to a workbook of their own. */
    final void workbook(String file, Ground ground, List<StudyTable> sheets, Effort effort) throws Refusal {
        Imprint imprint = new Imprint(
                ground.plan().name(),
                Version.number(),
                Optional.of(fingerprint()),
                LocalDate.now(ZoneId.systemDefault()),
                Paper.of(Locale.getDefault().getCountry()));
        Workbook.write(
                        Path.of(file),
                        sheets.stream().map(StudyTable::schedule).toList(),
                        imprint,
                        Progress.SILENT,
                        effort.cancel())
                .forEach(notice -> output().say(notice.line()));
        written(file);
    }

    static List<Vary> varies(Ground ground, List<String> texts) throws Refusal {
        List<Vary> all = new ArrayList<>();
        for (String text : texts) {
            all.add(Vary.of(ground, text));
        }
        return all;
    }

    /** Says that a file was written. */
    void written(String file) {
        output().line(Messages.text(CommandCode.STUDY_WRITTEN, file));
    }
}
