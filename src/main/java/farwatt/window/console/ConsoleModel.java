package farwatt.window.console;

import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.script.Outcome;
import farwatt.script.Script;
import farwatt.script.ScriptListener;
import farwatt.window.desk.Desk;
import farwatt.window.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * What was run at the console and what came of it. A run works on a copy of the plan as it is when it begins; nothing
 * of it reaches the open plan before a person takes it over. For the window's thread.
 */
public final class ConsoleModel {
    private static final int MOST_ANSWERS = 30;

    /** Runs scripts, off the window's thread. */
    @FunctionalInterface
    public interface Runner {
        Outcome run(
                Script script,
                Plan plan,
                String scenario,
                List<String> arguments,
                ScriptListener listener,
                Cancel cancel);
    }

    private final Desk desk;
    private final Runner runner;
    private final Executor home;
    private final History history;
    private final Work work;
    private final Taking taking;
    private final List<Answer> answers = new ArrayList<>();
    private final List<Runnable> watchers = new ArrayList<>();
    /** The answer of the last line that could have named something. */
    private Optional<Answer> lastLine = Optional.empty();

    /**
     * A console of one window.
     *
     * @param worker runs the scripts, one after another
     * @param home the window's thread
     */
    public ConsoleModel(Desk desk, Runner runner, Executor worker, Executor home, History history) {
        this.desk = desk;
        this.runner = runner;
        this.home = home;
        this.history = history;
        this.work = new Work(worker, home, state -> {});
        this.taking = new Taking(desk);
    }

    /** Told after every change of an answer. */
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    public History history() {
        return history;
    }

    /** What came of the runs, the newest first. */
    public List<Answer> answers() {
        return List.copyOf(answers);
    }

    /** The run that is not over yet. */
    public Optional<Answer> running() {
        return answers.stream().filter(Answer::isRunning).findFirst();
    }

    /** Forgets the answers of runs that are over. */
    public void clear() {
        answers.removeIf(answer -> !answer.isRunning());
        tell();
    }

    /**
     * Runs a script on the plan as it is now, with the scenario looked at; nothing happens while another runs.
     *
     * @param arguments what the script sees as {@code args}
     */
    public void run(Script script, List<String> arguments) {
        if (running().isPresent() || script.text().isBlank()) {
            return;
        }
        Plan plan = desk.base();
        String scenario = desk.scenario();
        Answer answer = new Answer(script, plan, scenario);
        if (script.kind() == Script.Kind.LINE) {
            history.add(script.text());
            lastLine.filter(before -> !isSame(before, plan, scenario))
                    .ifPresent(before -> answer.note(Messages.text(ConsoleCode.NAMES_FORGOTTEN)));
            lastLine = Optional.of(answer);
        }
        answers.add(0, answer);
        while (answers.size() > MOST_ANSWERS) {
            answers.remove(answers.size() - 1);
        }
        Feed feed = new Feed(home, parcel -> {
            answer.take(parcel);
            tell();
        });
        work.start(
                script.name(),
                (progress, cancel) -> runner.run(script, plan, scenario, arguments, feed, cancel),
                end -> end(answer, feed, end));
        tell();
    }

    private static boolean isSame(Answer before, Plan plan, String scenario) {
        return before.scenario().equals(scenario) && before.plan().equals(plan);
    }

    private void end(Answer answer, Feed feed, Work.End<Outcome> end) {
        answer.take(feed.take());
        if (end instanceof Work.End.Done<Outcome> done) {
            answer.end(done.result());
        } else if (end instanceof Work.End.Not<Outcome> not) {
            answer.end(new Outcome(
                    Outcome.State.BROKEN, not.notice().line(), "", Optional.empty(), List.of(), Optional.empty()));
        }
        boolean gone = answer.outcome()
                .filter(o -> o.state() != Outcome.State.DONE && o.state() != Outcome.State.FAILED)
                .isPresent();
        if (gone) {
            lastLine = Optional.empty();
        }
        tell();
    }

    /** Ends the running script; its answer says so. */
    public void cancel() {
        work.cancel();
    }

    /** True where the plan is another than the one the run worked on. */
    public boolean isPlanChanged(Answer answer) {
        return !answer.plan().equals(desk.base());
    }

    /** Puts the scenarios that a script kept into the plan, in one step; gives what there is to say. */
    public List<Notice> takeScenarios(Answer answer) {
        List<Notice> notices = taking.scenarios(answer);
        tell();
        return notices;
    }

    /** Makes the changes that a script proposed, in one step; gives what there is to say. */
    public List<Notice> takeChanges(Answer answer) {
        List<Notice> notices = taking.changes(answer);
        tell();
        return notices;
    }

    private void tell() {
        List.copyOf(watchers).forEach(Runnable::run);
    }
}
