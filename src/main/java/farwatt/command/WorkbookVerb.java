package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.review.Remedies;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.workbook.Handover;
import farwatt.workbook.Paper;
import farwatt.workbook.ScenarioTable;
import farwatt.workbook.Schedule;
import farwatt.workbook.TakeOffTable;
import farwatt.workbook.Workbook;
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
@Command(name = "workbook", description = "The hand-over workbook: verdict, schedules, power at each node, findings.")
final class WorkbookVerb extends PlanVerb {
    @Option(names = "-o", paramLabel = "FILE", required = true, description = "Where to write it.")
    private Path target = Path.of("");

    @Override
    public Integer call() throws Exception {
        Calculation calculation = calculation();
        sayNotices();
        write(target, calculation, scenario(), fingerprint(), output(), sideBySide());
        return Exit.DONE;
    }

    /** Tables of all scenarios beside the plan itself; none where there are none. */
    private List<Schedule> sideBySide() throws Refusal {
        Plan base = base();
        if (base.scenarios().isEmpty()) {
            return List.of();
        }
        List<ScenarioTable.Side> sides = new ArrayList<>();
        sides.add(side("base", base));
        for (Scenario scenario : base.scenarios()) {
            sides.add(side(scenario.id(), ScenarioPlans.of(base, scenario.id()).plan()));
        }
        Schedule orders = TakeOffTable.differences(sides);
        return orders.lines().size() == 0 ? List.of(ScenarioTable.of(sides)) : List.of(ScenarioTable.of(sides), orders);
    }

    private ScenarioTable.Side side(String id, Plan plan) throws Refusal {
        Calculation calculation = Calculation.of(plan);
        corner().ifPresent(calculation::look);
        return new ScenarioTable.Side(id, calculation, Reviewer.review(calculation));
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
        Workbook.write(target, handover, Progress.SILENT, new Cancel()).forEach(notice -> output.say(notice.line()));
        output.say(Messages.text(CommandCode.WRITTEN, target));
    }
}
