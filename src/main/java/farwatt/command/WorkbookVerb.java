package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.review.Remedies;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.workbook.Handover;
import farwatt.workbook.Paper;
import farwatt.workbook.Schedule;
import farwatt.workbook.SideTables;
import farwatt.workbook.Workbook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the hand-over workbook. */
@Command(name = "workbook", description = "The hand-over workbook: verdict, schedules, power at each node, findings.")
final class WorkbookVerb extends PlanVerb {
    @Option(names = "-o", paramLabel = "FILE", required = true, description = "Where to write it.")
    private Path target = Path.of("");

    @Override
    public Integer call() throws Exception {
        Calculation calculation = calculation();
        sayNotices();
        write(target, calculation, scenario(), fingerprint(), output(), SideTables.of(base(), corner()));
        return Exit.DONE;
    }

    /** Writes the workbook of a plan. */
    static void write(
            Path target,
            Calculation calculation,
            String scenario,
            String fingerprint,
            Output output,
            List<Schedule> more)
            throws Refusal {
        Paper paper = Paper.of(Locale.getDefault().getCountry());
        Review found = Reviewer.review(calculation);
        Handover handover = new Handover(
                calculation,
                Remedies.of(calculation, found, Progress.SILENT, new Cancel()),
                Optional.of(scenario).filter(id -> !id.isEmpty()),
                Version.number(),
                Optional.of(fingerprint),
                LocalDate.now(ZoneId.systemDefault()),
                paper,
                more);
        Workbook.write(target, handover.drawn(), Progress.SILENT, new Cancel())
                .forEach(notice -> output.say(notice.line()));
        output.say(Messages.text(CommandCode.WRITTEN, target));
    }
}
