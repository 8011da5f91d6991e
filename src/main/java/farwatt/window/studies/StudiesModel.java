package farwatt.window.studies;

import farwatt.engine.ScenarioPlans;
import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.quantity.Decimal;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.window.desk.Desk;
import farwatt.window.work.Work;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;

/**
 * Studies of the open plan: what is asked, the run that is under way, what was found last. A run works on the plan as
 * it was when it began; edits go on meanwhile. Confined to the window's thread.
 */
public final class StudiesModel {
    private final Desk desk;
    private final Decimal decimal;
    private final Work work;
    private final Work drawing;
    private final List<Runnable> watchers = new ArrayList<>();
    private final Map<StudyKind, StudyText> typed = new EnumMap<>(StudyKind.class);
    private StudyKind kind = StudyKind.SWEEP;
    private Work.State state = Work.State.IDLE;
    private @Nullable StudyResult result;
    private Drawing.@Nullable Drawn drawn;
    private final List<StudyResult> handedOver = new ArrayList<>();
    private @Nullable Trouble trouble;
    private String note = "";
    private int runs;
    private int drawings;

    /**
     * What stands in the way of a run.
     *
     * @param field where it was written; empty where it is about no field
     */
    public record Trouble(Optional<StudyField> field, int line, String text) {}

    /**
     * Studies of what lies on a desk.
     *
     * @param decimal the person's decimal sign
     * @param worker runs a study beside everything else
     * @param home runs tasks on the window's thread
     */
    public StudiesModel(Desk desk, Decimal decimal, Executor worker, Executor home) {
        this.desk = desk;
        this.decimal = decimal;
        work = new Work(worker, home, this::at);
        drawing = new Work(worker, home, ignored -> {});
    }

    /** Told after every change but those of what is typed. */
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    private void tell() {
        List.copyOf(watchers).forEach(Runnable::run);
    }

    private void at(Work.State now) {
        state = now;
        tell();
    }

    public StudyKind kind() {
        return kind;
    }

    /** Asks another question. */
    public void choose(StudyKind other) {
        if (other != kind) {
            kind = other;
            trouble = null;
            tell();
        }
    }

    private StudyText text() {
        StudyText own = typed.get(kind);
        return own != null ? own : StudyText.of(kind, new Examples(desk.shown()));
    }

    /** What is filled in: what was typed, or an example for the plan shown. */
    public List<String> lines(StudyField field) {
        return text().lines(field);
    }

    /** A line was typed into. */
    public void type(StudyField field, int line, String now) {
        typed.put(kind, text().with(field, line, now));
    }

    /** True where nothing was typed yet, so that the examples follow the plan. */
    public boolean isExample() {
        return !typed.containsKey(kind);
    }

    /** How far the run is; idle if there is none. */
    public Work.State state() {
        return state;
    }

    /** Starts a run on the plan shown; one under way is stopped. */
    public void run() {
        int mine = ++runs;
        trouble = null;
        note = "";
        StudyRun run =
                new StudyRun(kind, text().pointed(decimal), new Basis(desk.shown(), desk.scenario(), desk.corner()));
        work.start(kind.question(), run::run, end -> ended(mine, run, end));
    }

    private void ended(int mine, StudyRun run, Work.End<StudyResult> end) {
        if (mine != runs) {
            return;
        }
        if (end instanceof Work.End.Done<StudyResult> done) {
            result = done.result();
            drawn = null;
            if (!done.result().drawing().figures().isEmpty()) {
                draw(0, List.of());
            }
        } else if (end instanceof Work.End.Not<StudyResult> not) {
            refused(run, not.notice());
        }
        tell();
    }

    private void refused(StudyRun run, Notice notice) {
        if (notice.level() == Level.NOTE) {
            note = Messages.text(StudiesCode.STOPPED);
            return;
        }
        StudyRun.Blame blame = run.blame();
        trouble = blame == null
                ? new Trouble(Optional.empty(), 0, notice.text())
                : new Trouble(Optional.of(blame.field()), blame.line(), notice.text());
    }

    /** Asks the run to stop. */
    public void cancel() {
        work.cancel();
    }

    /** What stands in the way; empty where nothing does. */
    public Optional<Trouble> trouble() {
        return Optional.ofNullable(trouble);
    }

    /** What is to be said beside; "" for nothing. */
    public String note() {
        return note;
    }

    /** What was found last. */
    public Optional<StudyResult> result() {
        return Optional.ofNullable(result);
    }

    /** What goes into the next hand-over workbooks. */
    public List<StudyResult> handedOver() {
        return List.copyOf(handedOver);
    }

    /** True where what was found last goes into hand-over workbooks. */
    public boolean isHandedOver() {
        return result != null && handedOver.contains(result);
    }

    /** Puts what was found last into hand-over workbooks, or takes it out again. */
    public void handOver() {
        StudyResult found = result;
        if (found != null && !handedOver.remove(found)) {
            handedOver.add(found);
        }
        tell();
    }

    /** True where the plan, or the scenario that the study stood on, was changed since. */
    public boolean isStale() {
        return result != null && isStale(result);
    }

    /** The same for something that was found before. */
    public boolean isStale(StudyResult found) {
        Basis basis = found.basis();
        try {
            Plan now = basis.scenario().equals(desk.scenario())
                    ? desk.shown()
                    : ScenarioPlans.of(desk.base(), basis.scenario()).plan();
            return !basis.plan().withScenarios(List.of()).equals(now.withScenarios(List.of()));
        } catch (Refusal e) {
            return true;
        }
    }

    /** Draws another figure, or at other values of the cells that are held; {@link #drawn()} follows. */
    public void draw(int figure, List<Integer> held) {
        StudyResult found = result;
        if (found != null) {
            int mine = ++drawings;
            drawing.start(
                    "Drawing",
                    (progress, cancel) -> found.drawing().draw(figure, held),
                    end -> drawnAt(mine, found, end));
        }
    }

    private void drawnAt(int mine, StudyResult of, Work.End<Drawing.Drawn> end) {
        if (mine != drawings || !of.equals(result)) {
            return;
        }
        if (end instanceof Work.End.Done<Drawing.Drawn> done) {
            drawn = done.result();
            note = "";
        } else if (end instanceof Work.End.Not<Drawing.Drawn> not) {
            drawn = null;
            note = not.notice().text();
        }
        tell();
    }

    /** The chart of the figure chosen; empty until it is drawn and where there is none. */
    public Optional<Drawing.Drawn> drawn() {
        return Optional.ofNullable(drawn);
    }

    /** True where a row of the table is a state of the plan that can be looked at as a scenario. */
    public boolean canTry(int row) {
        StudyResult found = result;
        return found != null
                && row >= 0
                && row < found.table().size()
                && !found.table().steps(row).isEmpty();
    }

    /**
     * Makes a scenario of a row and looks at it; one with the same steps is looked at instead.
     *
     * @return what to say
     * @throws Refusal if the scenario that the study stood on is gone
     */
    public Notice tryOut(int row) throws Refusal {
        StudyResult found = result;
        if (found == null || !canTry(row)) {
            throw new IllegalArgumentException("row " + row);
        }
        String on = found.basis().scenario();
        if (!on.isEmpty() && desk.base().scenario(on).isEmpty()) {
            throw Refusal.of(StudiesCode.SCENARIO_GONE, on);
        }
        List<Step> steps = found.table().steps(row);
        Optional<Scenario> there = desk.base().scenarios().stream()
                .filter(scenario -> scenario.on().equals(on) && scenario.steps().equals(steps))
                .findFirst();
        String id = there.map(Scenario::id).orElseGet(() -> free(found.table().name(row)));
        if (there.isPresent()) {
            desk.look(id);
        } else {
            desk.tryOut(id, on, steps);
        }
        return Notice.of(Level.NOTE, StudiesCode.MADE, Place.NONE, id);
    }

    private String free(String wanted) {
        List<Row> rows =
                desk.base().scenarios().stream().map(s -> Row.of(s.id())).toList();
        return Naming.in(Rows.of(rows)).free(wanted);
    }
}
