package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.ScenarioPlans;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** What every verb on a plan has: the plan, a scenario of it, a corner, the form of the answer. */
@Command(mixinStandardHelpOptions = true)
abstract class PlanVerb implements Callable<Integer> {
    static final String ALL = "all";

    @ParentCommand
    private Farwatt farwatt = new Farwatt(Output.standard());

    @Parameters(index = "0", paramLabel = "PLAN", description = "The plan file.")
    private Path file = Path.of("");

    @Option(names = "--scenario", paramLabel = "ID", description = "The scenario to look at; base unless named.")
    private String scenario = "";

    @Option(
            names = "--corner",
            paramLabel = "CORNER",
            description = "typical, most, hot, cold, hotstart or all; the plan's unless named.")
    private String corner = "";

    @Option(names = "--json", description = "Answers as JSON with numbers in SI.")
    boolean json;

    private List<Notice> fileNotices = List.of();
    private String fingerprint = "";

    Output output() {
        return farwatt.output;
    }

    String scenario() {
        return scenario;
    }

    Path file() {
        return file;
    }

    /** Fingerprint of the file as read. */
    String fingerprint() {
        return fingerprint;
    }

    /** The corner named, empty for the plan's own. */
    Optional<Corner> corner() throws Refusal {
        if (corner.isEmpty() || corner.equals(ALL)) {
            return Optional.empty();
        }
        Optional<Corner> found = Corner.of(corner);
        if (found.isEmpty()) {
            throw Refusal.of(CommandCode.BAD_CORNER, corner);
        }
        return found;
    }

    boolean allCorners() {
        return corner.equals(ALL);
    }

    /** Reads the plan file; what is to be said of it is kept for {@link #notices()}. */
    Plan base() throws Refusal {
        Opened opened = PlanReader.read(file);
        fileNotices = opened.notices();
        fingerprint = opened.fingerprint().hex();
        return opened.plan();
    }

    /** The plan of the scenario that was named. */
    Plan plan() throws Refusal {
        Plan base = base();
        if (scenario.isEmpty() || scenario.equals("base")) {
            return base;
        }
        ScenarioPlans made = ScenarioPlans.of(base, scenario);
        List<Notice> all = new ArrayList<>(fileNotices);
        all.addAll(made.notices());
        fileNotices = all;
        return made.plan();
    }

    /** The plan worked out, looking at the corner that was named. */
    Calculation calculation() throws Refusal {
        Optional<Corner> named = corner();
        Calculation calculation = Calculation.of(plan());
        named.ifPresent(calculation::look);
        return calculation;
    }

    /** What reading the file had to say, beside what the engine finds in the cells. */
    List<Notice> notices() {
        return fileNotices;
    }

    /** Says what reading the file found; failing ones as findings are the caller's. */
    void sayNotices() {
        for (Notice notice : fileNotices) {
            if (notice.level() != Level.NOTE) {
                output().say(notice.line());
            }
        }
    }
}
