package farwatt.window.desk;

import farwatt.document.Document;
import farwatt.engine.Corner;
import farwatt.engine.Explanation;
import farwatt.engine.ScenarioPlans;
import farwatt.engine.Still;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.review.Review;
import farwatt.window.WindowCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * An open plan on the window's side. Edits take hold at once; values and findings come a moment later from the worker
 * and never hold anything up. Confined to the window's thread.
 */
public final class Desk {
    private final Engine engine;
    private final List<Runnable> watchers = new ArrayList<>();
    private final List<Runnable> seekers = new ArrayList<>();
    private final List<Consumer<Change>> journals = new ArrayList<>();
    private final List<Consumer<Notice>> listeners = new ArrayList<>();
    private Document document;
    private String scenario = "";
    private Corner corner = Corner.MOST;
    private Plan shown;
    private @Nullable Still still;
    private @Nullable Review review;
    private long stills;
    private long reviews;
    private boolean judged;
    private double sought = 1;
    /** Whether the corner looked at is whichever decides. */
    private boolean worst;

    /**
     * A desk with a plan on it.
     *
     * @param worker runs one task after another, away from the window
     * @param home runs tasks on the window's thread
     */
    public Desk(Executor worker, Executor home, Plan plan) {
        engine = new Engine(worker, home, this::install, this::install, this::seek, this::say);
        document = new Document(plan);
        shown = plan;
        open(plan);
    }

    /** Puts another plan in the place of the one that is open. */
    public void open(Plan plan) {
        document = new Document(plan);
        document.watch((before, done, after) -> edited(done));
        scenario = "";
        corner = Corner.of(plan.settings().text("corner")).orElse(Corner.MOST);
        shown = plan;
        still = null;
        review = null;
        want(Optional.empty());
    }

    /** Told after every change of what is shown. */
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    /** Told every change of the document, undone ones as their inverse, in order. */
    public void journal(Consumer<Change> journal) {
        journals.add(journal);
    }

    /** Told what went wrong away from the window. */
    public void listen(Consumer<Notice> listener) {
        listeners.add(listener);
    }

    /** The plan below all scenarios. */
    public Plan base() {
        return document.plan();
    }

    /** The plan with the scenario looked at put in. */
    public Plan shown() {
        return shown;
    }

    /** The scenario looked at, "" for none. */
    public String scenario() {
        return scenario;
    }

    public Corner corner() {
        return corner;
    }

    /** How many times values came in: another number means other {@link #still values}. */
    public long stills() {
        return stills;
    }

    /** The same for {@link #review judgements}. */
    public long reviews() {
        return reviews;
    }

    /** The values worked out last, which may be those of a moment ago. */
    public Optional<Still> still() {
        return Optional.ofNullable(still);
    }

    /** The review made last. */
    public Optional<Review> review() {
        return Optional.ofNullable(review);
    }

    /** True where the review is that of the plan as it is now. */
    public boolean isJudged() {
        return judged;
    }

    /** How far the search for what mends the findings is, 0 to 1; 1 where none runs. */
    public double sought() {
        return sought;
    }

    /** Told whenever that changes. */
    public void watchSeeking(Runnable watcher) {
        seekers.add(watcher);
    }

    /** Gives up the search for what mends the findings, until the next edit. */
    public void stopSeeking() {
        engine.stopSeeking();
    }

    public Document document() {
        return document;
    }

    /** Looks at a scenario, "" for none. */
    public void look(String id) {
        if (!id.equals(scenario)) {
            scenario = id;
            refresh(Optional.empty());
        }
    }

    /** True where the corner looked at is whichever one the verdict names. */
    public boolean looksAtWorst() {
        return worst;
    }

    /** Looks at whichever corner the verdict names, now and after every edit. */
    public void lookAtWorst() {
        worst = true;
        follow();
        tell();
    }

    private void follow() {
        if (worst && review != null && judged && review.verdict().corner() != corner) {
            corner = review.verdict().corner();
            engine.want(new Wanted(shown, Optional.empty(), corner));
        }
    }

    /** Looks at another corner. */
    public void look(Corner other) {
        worst = false;
        if (other != corner) {
            corner = other;
            want(Optional.empty());
        } else {
            tell();
        }
    }

    /**
     * Makes one step: of the plan, or of the scenario looked at.
     *
     * @throws Refusal if a scenario cannot hold it, or a row it names is gone
     */
    public void apply(Change change) throws Refusal {
        Change made = scenario.isEmpty() ? change : ScenarioEdits.into(base(), shown, scenario, change);
        try {
            document.apply(made);
        } catch (IllegalArgumentException e) {
            throw new Refusal(Notice.of(Level.FAIL, WindowCode.IN_SCENARIO, Place.NONE, "What is gone meanwhile"));
        }
    }

    /** Undoes the last step. */
    public void undo() {
        document.undo();
    }

    /** Makes the step again that was undone last. */
    public void redo() {
        document.redo();
    }

    /** Makes a scenario of steps and looks at it. */
    public void tryOut(String id, String on, List<Step> steps) throws Refusal {
        if (id.isBlank()) {
            throw new Refusal(Notice.of(Level.FAIL, WindowCode.SCENARIO_UNNAMED, Place.NONE));
        }
        if (base().scenario(id).isPresent()) {
            throw new Refusal(Notice.of(Level.FAIL, WindowCode.SCENARIO_TAKEN, Place.NONE, id));
        }
        List<Scenario> all = new ArrayList<>(base().scenarios());
        all.add(new Scenario(id.strip(), on, steps));
        document.apply(new Change.SetScenarios(all));
        look(id.strip());
    }

    /** Takes a scenario away. */
    public void removeScenario(String id) throws Refusal {
        for (Scenario each : base().scenarios()) {
            if (Rows.fold(each.on()).equals(Rows.fold(id))) {
                throw new Refusal(Notice.of(Level.FAIL, WindowCode.SCENARIO_STOOD_ON, Place.NONE, id, each.id()));
            }
        }
        String next = scenario.equals(id) ? "" : scenario;
        List<Scenario> all = base().scenarios().stream()
                .filter(each -> !each.id().equals(id))
                .toList();
        scenario = next;
        document.apply(new Change.SetScenarios(all));
    }

    /** Gives a scenario another name, or another to stand on. */
    public void changeScenario(String id, String name, String on) throws Refusal {
        boolean taken =
                !Rows.fold(id).equals(Rows.fold(name)) && base().scenario(name).isPresent();
        if (name.isBlank() || taken) {
            throw new Refusal(Notice.of(
                    Level.FAIL, taken ? WindowCode.SCENARIO_TAKEN : WindowCode.SCENARIO_UNNAMED, Place.NONE, name));
        }
        List<Scenario> all = new ArrayList<>();
        for (Scenario each : base().scenarios()) {
            boolean itself = each.id().equals(id);
            String below = itself ? on : each.on().equals(id) ? name : each.on();
            all.add(new Scenario(itself ? name : each.id(), below, each.steps(), each.rest()));
        }
        Plan after = base().withScenarios(all);
        ScenarioPlans.of(after, name);
        scenario = scenario.equals(id) ? name : scenario;
        document.apply(new Change.SetScenarios(all));
    }

    /** Tells how an expression's value came about; empty if it cannot be understood. */
    public void explain(String expression, Consumer<Optional<Explanation>> answer) {
        engine.explain(expression, answer);
    }

    /**
     * Has something worked out on the worker, apart from the values shown.
     *
     * @param question must not take long; sees plans only
     * @param answer on the window's thread
     */
    public <T> void ask(Supplier<T> question, Consumer<T> answer) {
        engine.ask(question, answer);
    }

    private void edited(Change done) {
        journals.forEach(journal -> journal.accept(done));
        boolean direct = scenario.isEmpty() && !(done instanceof Change.SetScenarios);
        refresh(direct ? Optional.of(done) : Optional.empty());
    }

    private void refresh(Optional<Change> step) {
        if (!scenario.isEmpty() && base().scenario(scenario).isEmpty()) {
            scenario = "";
        }
        try {
            shown = scenario.isEmpty()
                    ? base()
                    : ScenarioPlans.of(base(), scenario).plan();
            want(step);
        } catch (Refusal e) {
            say(e.notice());
            scenario = "";
            shown = base();
            want(Optional.empty());
        }
    }

    private void want(Optional<Change> step) {
        judged = false;
        sought = 1;
        engine.want(new Wanted(shown, step, corner));
        tell();
    }

    private void install(Still found) {
        stills++;
        still = found;
        tell();
    }

    private void install(Review found) {
        reviews++;
        review = found;
        judged = true;
        follow();
        tell();
    }

    private void seek(double share) {
        sought = share;
        List.copyOf(seekers).forEach(Runnable::run);
    }

    private void say(Notice notice) {
        List.copyOf(listeners).forEach(listener -> listener.accept(notice));
    }

    private void tell() {
        List.copyOf(watchers).forEach(Runnable::run);
    }
}
