package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Level;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Working copies on which attempts are made, solved, judged and taken back: one for all corners and one for each
 * single corner, since most attempts do not even mend the corner in which a finding is worst. Cells are changed in
 * place; what changes who feeds whom is worked out anew.
 */
final class Trial {
    private static final Set<String> STRUCTURE = Set.of("from", "to", "zone", "bundle", "in_use");

    /** Looking at every corner takes about so many times as long as at one, and so does working a plan out anew. */
    private static final int CORNERS = 5;

    /**
     * What an attempt came to.
     *
     * @param lacks how much is missing, as a share of what is wanted: 0 where it mends
     * @param leastShare least reserve share of the part over all corners; NaN where that was not looked at
     * @param leastHeadroom the same of the volts above a floor
     * @param cost what the plan costs more by the prices filled in; NaN where they say nothing
     */
    record Outcome(double lacks, double leastShare, double leastHeadroom, double cost) {
        /** Of something that cannot be made. */
        static final Outcome NEVER = of(2 * Glance.FAR);

        static Outcome of(double lacks) {
            return new Outcome(lacks, Double.NaN, Double.NaN, Double.NaN);
        }

        boolean mends() {
            return lacks == 0;
        }

        /** True where it is known by figures how far it is from mending. */
        boolean hasFigures() {
            return lacks < Glance.FAR / 2;
        }
    }

    private final Calculation calc;
    private final Map<Corner, Calculation> single = new EnumMap<>(Corner.class);
    private final Glance before;
    private final double cost;
    private final int rows;
    private final Optional<Trial> whole;
    private final Glance needs;
    private long work;

    /**
     * On a plan, or on a part of one.
     *
     * @param whole the whole plan's, where it has needs that speak of more than the part; they are asked there
     */
    Trial(Plan plan, Optional<Trial> whole) {
        this.whole = whole;
        calc = Calculation.of(plan);
        before = Glance.of(calc, Reviewer.corners(calc));
        cost = cost(calc);
        rows = rows(plan);
        needs = Glance.ofNeeds(calc);
    }

    Calculation calc() {
        return calc;
    }

    Glance before() {
        return before;
    }

    /** How much work one look in one corner is: rows to look at. */
    int rows() {
        return rows;
    }

    /** Rows looked at so far. */
    long work() {
        return work;
    }

    /** The same for a plan on which nothing was tried yet. */
    static int rows(Plan plan) {
        return plan.rows(Table.RUNS).size() + plan.rows(Table.DEVICES).size() + 1;
    }

    private static double cost(Calculation calc) {
        return calc.figures(Table.PLAN, "cost").at(0);
    }

    private Calculation in(Corner corner) {
        return single.computeIfAbsent(corner, c -> Calculation.of(calc.plan(), c));
    }

    /** Whether a finding is gone at least where it was worst; the quick question before {@link #judge}. */
    Outcome glance(Attempt attempt, Finding finding) {
        if (finding.corner().isEmpty()) {
            return judge(attempt, finding);
        }
        Corner corner = finding.corner().get();
        Glance.Key key = Glance.Key.of(finding);
        Function<Calculation, Outcome> look =
                now -> Outcome.of(Glance.of(now, List.of(corner)).lacks(key));
        return with(in(corner), attempt, look).orElse(Outcome.NEVER);
    }

    /** Makes the changes, looks whether the finding is gone and nothing fails anew or by more, takes them back. */
    Outcome judge(Attempt attempt, Finding finding) {
        Glance.Key key = Glance.Key.of(finding);
        return with(calc, attempt, now -> {
                    Glance after = Glance.of(now, Reviewer.corners(now));
                    double still = after.lacks(key);
                    double worse = still > 0 ? still : after.worseThan(before, finding.place());
                    double lacks = worse > 0
                            ? worse
                            : whole.map(all -> all.needsWorse(attempt, finding)).orElse(0.0);
                    return new Outcome(lacks, after.leastShare(), after.leastHeadroom(), cost(now) - cost);
                })
                .orElse(Outcome.NEVER);
    }

    private double needsWorse(Attempt attempt, Finding finding) {
        return with(calc, attempt, now -> Glance.ofNeeds(now).worseThan(needs, finding.place()))
                .orElse(Glance.FAR);
    }

    /** What fails with the changes: the finding itself, else the first that is new or fails by more. */
    String left(Attempt attempt, Finding finding) {
        Glance.Key key = Glance.Key.of(finding);
        return with(calc, attempt, now -> {
                    Glance after = Glance.of(now, Reviewer.corners(now));
                    List<Finding> fails = Reviewer.review(now).findings().stream()
                            .filter(f -> f.level() == Level.FAIL)
                            .toList();
                    return fails.stream()
                            .filter(f -> Glance.Key.of(f).equals(key))
                            .findFirst()
                            .or(() -> fails.stream()
                                    .filter(f -> after.isWorse(before, f, finding.place()))
                                    .findFirst())
                            .map(Finding::text)
                            .orElse("");
                })
                .orElse("");
    }

    /** The least reserve share of a source or switch over all corners, with changes or none; NaN where it has none. */
    double share(List<Step> steps, Table table, String id) {
        return with(calc, new Attempt(Effort.SETTING, 0, steps, ""), now -> share(now, table, id))
                .orElse(Double.NaN);
    }

    private static double share(Calculation now, Table table, String id) {
        int place = now.plan().rows(table).place(id);
        Corner looked = now.corner();
        double least = Double.NaN;
        for (Corner corner : Reviewer.corners(now)) {
            now.look(corner);
            double share = CornerFigures.share(
                    now.figures(table, "sent").at(place),
                    now.figures(table, "available").at(place),
                    now.figures(table, "reserve_share").at(place));
            least = Double.isNaN(share) || share >= least ? least : share;
        }
        now.look(looked);
        return least;
    }

    /** Asks something of a calculation with the changes made; empty if they cannot be made. */
    private <T> Optional<T> with(Calculation calc, Attempt attempt, Function<Calculation, T> question) {
        List<Change> made = new ArrayList<>();
        Plan after = calc.plan();
        boolean inPlace = true;
        for (Step step : attempt.steps()) {
            Optional<Change> change = ScenarioPlans.change(after, step, "", new ArrayList<>());
            if (change.isEmpty()) {
                return Optional.empty();
            }
            inPlace &= isCell(change.get());
            made.add(change.get());
            after = Edit.apply(after, change.get()).plan();
        }
        work += (long) rows * ((calc == this.calc ? CORNERS : 1) + (inPlace ? 0 : CORNERS));
        if (!inPlace) {
            return Optional.of(question.apply(Calculation.of(after, calc.corner())));
        }
        List<Change> back = new ArrayList<>();
        for (Change change : made) {
            back.add(0, Edit.apply(calc.plan(), change).inverse());
            calc.apply(change);
        }
        T answer = question.apply(calc);
        back.forEach(calc::apply);
        return Optional.of(answer);
    }

    private static boolean isCell(Change change) {
        return change instanceof Change.SetCell set && !STRUCTURE.contains(set.name());
    }
}
