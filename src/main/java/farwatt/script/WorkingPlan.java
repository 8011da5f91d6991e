package farwatt.script;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.PlanCells;
import farwatt.catalogue.Reading;
import farwatt.catalogue.Wording;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.PlanWording;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.Proxy;
import org.jspecify.annotations.Nullable;

/**
 * The copy of the plan that a script works on: every change is kept as a scenario's step. Values are worked out when
 * they are asked for, so that many rows may be added at the cost of one. Hidden from the script behind its own objects.
 */
final class WorkingPlan implements Proxy {
    /** The plan without a scenario. */
    private static final String BASE = "base";
    /** With more cells than these it is quicker to work everything out anew. */
    private static final int MOST_WAITING = 256;

    private final String on;
    private final Steps steps;
    /** What the script kept so far, by folded name; one for all copies. */
    private final Map<String, Plan> kept;

    private Plan plan;
    private @Nullable Calculation calculation;
    /** Cells that were set and that the calculation does not know yet; of one cell only the last setting. */
    private final Map<List<String>, Change> waiting = new LinkedHashMap<>();
    /** True if the calculation has to take the plan as a whole. */
    private boolean stale;

    private @Nullable PlanCells cells;
    private @Nullable Wording wording;
    private @Nullable Set<String> ids;

    private WorkingPlan(Plan plan, String on, Steps steps, Map<String, Plan> kept) {
        this.plan = plan;
        this.on = on;
        this.steps = steps;
        this.kept = kept;
    }

    /** A copy of a plan, or of one of its scenarios unless the name is "". */
    static WorkingPlan of(Plan base, String scenario) throws Refusal {
        boolean none = scenario.isEmpty() || Rows.fold(scenario).equals(BASE);
        Plan plan = none ? base : scenarioOf(base, scenario);
        Map<String, Plan> kept = new HashMap<>(Map.of(BASE, base));
        return new WorkingPlan(plan, none ? "" : scenario, new Steps(), kept);
    }

    /** A copy of this with a scenario on top; one that the script kept is the plan as it was then. */
    WorkingPlan with(String scenario) {
        Plan then = kept.get(Rows.fold(scenario));
        if (then != null) {
            String under = Rows.fold(scenario).equals(BASE) ? "" : scenario;
            return new WorkingPlan(then, under, new Steps(), kept);
        }
        try {
            Plan other = scenarioOf(plan, scenario);
            return steps.isEmpty() && on.isEmpty()
                    ? new WorkingPlan(other, scenario, new Steps(), kept)
                    : new WorkingPlan(other, on, steps.and(Steps.chain(plan, scenario)), kept);
        } catch (Refusal e) {
            throw ScriptFailure.of(e);
        }
    }

    private static Plan scenarioOf(Plan base, String scenario) throws Refusal {
        ScenarioPlans made = ScenarioPlans.of(base, scenario);
        Optional<Notice> first =
                made.notices().stream().filter(n -> n.level() == Level.FAIL).findFirst();
        if (first.isPresent()) {
            throw new Refusal(first.get());
        }
        return made.plan();
    }

    Plan plan() {
        return plan;
    }

    String on() {
        return on;
    }

    /** The values as the plan is now. */
    Calculation calculation() {
        Calculation now = calculation;
        if (now == null) {
            now = Calculation.of(plan);
            calculation = now;
        } else if (stale || waiting.size() > MOST_WAITING) {
            now.replace(plan);
            now.look(Corner.of(plan.settings().text("corner")).orElse(Corner.MOST));
        } else {
            waiting.values().forEach(now::apply);
        }
        waiting.clear();
        stale = false;
        return now;
    }

    /** Fills a cell; refused if it cannot hold that. */
    void set(String path, Value value) {
        Target target = Target.of(plan, cells(), path);
        Typing typing = Typing.of(target, value, wording());
        checkRow(typing.reading());
        Step.Set step = new Step.Set(path.strip(), typing.cell());
        if (typing.reading() instanceof Reading.Expression) {
            checked(step, target);
        } else {
            make(step);
        }
        steps.set(step);
    }

    private void checkRow(Reading reading) {
        if (reading instanceof Reading.RowId row && plan.find(row.id()).isEmpty()) {
            throw ScriptFailure.of(ScriptCode.NO_ROW, row.id(), Near.hint(row.id(), plan.ids()));
        }
    }

    /** An expression holds only if the engine has nothing to say of the cell. */
    private void checked(Step.Set step, Target target) {
        Plan before = plan;
        make(step);
        Optional<Notice> wrong = calculation().notices().stream()
                .filter(n -> n.level() == Level.FAIL)
                .filter(n -> target.isAt(n.place()))
                .findFirst();
        if (wrong.isPresent()) {
            change(before);
            throw ScriptFailure.said(wrong.get().line() + wordHint(target, step));
        }
    }

    /** A word that is nearly one of the column's list. */
    private static String wordHint(Target target, Step.Set step) {
        return Catalogue.find(target.table(), target.name())
                .filter(name -> name.kind() instanceof Kind.Choice)
                .map(name -> Near.hint(step.to().text(), ((Kind.Choice) name.kind()).words()))
                .orElse("");
    }

    /** Makes a step that is known to fit. */
    private void make(Step step) {
        List<Notice> notices = new ArrayList<>();
        Change change = ScenarioPlans.change(plan, step, on, notices)
                .orElseThrow(() -> ScriptFailure.said(notices.get(0).text()));
        plan = Edit.apply(plan, change).plan();
        if (change instanceof Change.SetCell set) {
            waiting.put(List.of(set.table().key(), Rows.fold(set.id()), set.name()), set);
        } else {
            stale = true;
        }
        forget(change);
    }

    private void change(Plan other) {
        plan = other;
        stale = true;
        cells = null;
        wording = null;
        ids = null;
    }

    private void forget(Change change) {
        if (change instanceof Change.SetCell set && set.table() != Table.COLUMNS && set.table() != Table.PLAN) {
            return;
        }
        if (change instanceof Change.SetCell set
                && set.table() == Table.PLAN
                && !set.name().equals("currency")) {
            stale |= set.name().equals("corner");
            return;
        }
        if (!(change instanceof Change.AddRow add && add.table().isSite())) {
            cells = null;
            wording = null;
        }
        if (change instanceof Change.Batch) {
            ids = null;
        }
    }

    /** Adds a row whose cells were checked; an id that is taken is refused. */
    void add(Table table, Row row) {
        if (table.isSite() && !ids().add(Rows.fold(row.id()))) {
            throw ScriptFailure.of(ScriptCode.ID_TAKEN, row.id());
        }
        if (!table.isSite() && plan.rows(table).place(row.id()) >= 0) {
            throw ScriptFailure.of(ScriptCode.ID_TAKEN, row.id());
        }
        Step step = new Step.Add(table.key(), row);
        make(step);
        steps.add(step);
    }

    /** Undoes the last row that was added. */
    void takeBack() {
        Step.Add last = (Step.Add) steps.removeLast();
        Table table = Table.of(last.table()).orElseThrow();
        change(plan.with(table, plan.rows(table).without(plan.rows(table).size() - 1)));
    }

    /** Takes a row away, a node with its runs. */
    void drop(String id) {
        Plan.Spot spot =
                plan.find(id).orElseThrow(() -> ScriptFailure.of(ScriptCode.NO_ROW, id, Near.hint(id, plan.ids())));
        Step step = new Step.Drop(plan.rows(spot.table()).at(spot.place()).id());
        make(step);
        steps.add(step);
    }

    private Set<String> ids() {
        Set<String> known = ids;
        if (known == null) {
            known = new HashSet<>();
            for (String id : plan.ids()) {
                known.add(Rows.fold(id));
            }
            ids = known;
        }
        return known;
    }

    boolean isTaken(String id) {
        return ids().contains(Rows.fold(id));
    }

    Naming naming() {
        return Naming.in(plan);
    }

    PlanCells cells() {
        PlanCells known = cells;
        if (known == null) {
            known = PlanCells.of(plan);
            cells = known;
        }
        return known;
    }

    Wording wording() {
        Wording known = wording;
        if (known == null) {
            known = PlanWording.canonicalFor(plan);
            wording = known;
        }
        return known;
    }

    /** The changes so far as a scenario; there must be some. It can be named from now on. */
    Scenario keep(String name) {
        if (Rows.fold(name).equals(Rows.fold(on)) || Rows.fold(name).equals(BASE)) {
            throw ScriptFailure.of(ScriptCode.NAME_TAKEN, name);
        }
        Scenario scenario = new Scenario(name, on, changes());
        kept.put(Rows.fold(name), plan);
        return scenario;
    }

    /** What was changed so far. */
    List<Step> changes() {
        if (steps.isEmpty()) {
            throw ScriptFailure.of(ScriptCode.NOTHING_CHANGED);
        }
        return steps.list();
    }
}
