package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A working copy on which attempts are made, solved, judged and taken back. Cells are changed in place; what changes
 * who feeds whom is worked out anew.
 */
final class Trial {
    private static final Set<String> STRUCTURE = Set.of("from", "to", "zone", "bundle", "in_use");

    /** What an attempt comes to where the finding has no figures, or there is no solution. */
    private static final double FAR = 10;

    private static final double TINY = 1e-9;

    private record Key(String code, Place place) {}

    /**
     * What an attempt came to.
     *
     * @param review of the part with the changes; empty where it was not worth looking at every corner
     * @param lacks how much is missing: 0 where it mends
     * @param left what still fails then, "" where it mends
     */
    record Outcome(Optional<Review> review, double lacks, String left, double cost) {
        boolean mends() {
            return lacks == 0;
        }

        /** True where it is known by figures how far it is from mending. */
        boolean hasFigures() {
            return lacks < FAR / 2 && !left.isEmpty();
        }
    }

    private final Calculation calc;
    private final Review before;
    private final Set<Key> fails;
    private final double cost;
    private final int rows;

    Trial(Plan plan) {
        calc = Calculation.of(plan);
        before = Reviewer.review(calc);
        fails = failing(before);
        cost = cost(calc);
        rows = rows(plan);
    }

    Calculation calc() {
        return calc;
    }

    Review before() {
        return before;
    }

    /** How much work one attempt is: rows to look at. */
    int rows() {
        return rows;
    }

    /** The same for a plan on which nothing was tried yet. */
    static int rows(Plan plan) {
        return plan.rows(Table.RUNS).size() + plan.rows(Table.DEVICES).size() + 1;
    }

    private static double cost(Calculation calc) {
        return calc.figures(Table.PLAN, "cost").at(0);
    }

    private static Set<Key> failing(Review review) {
        Set<Key> keys = new HashSet<>();
        for (Finding f : review.findings()) {
            if (f.level() == Level.FAIL) {
                keys.add(new Key(f.code(), f.place()));
            }
        }
        return keys;
    }

    /** Makes the changes, looks whether the finding is gone and nothing new fails, takes them back. */
    Outcome judge(Attempt attempt, Finding finding) {
        List<Change> made = new ArrayList<>();
        Plan after = calc.plan();
        boolean inPlace = true;
        for (Step step : attempt.steps()) {
            Optional<Change> change = ScenarioPlans.change(after, step, "", new ArrayList<>());
            if (change.isEmpty()) {
                return new Outcome(Optional.empty(), 2 * FAR, "", Double.NaN);
            }
            inPlace &= isCell(change.get());
            made.add(change.get());
            after = Edit.apply(after, change.get()).plan();
        }
        if (!inPlace) {
            return judge(Calculation.of(after), finding);
        }
        List<Change> back = new ArrayList<>();
        for (Change change : made) {
            back.add(0, Edit.apply(calc.plan(), change).inverse());
            calc.apply(change);
        }
        Outcome outcome = judge(calc, finding);
        back.forEach(calc::apply);
        return outcome;
    }

    private static boolean isCell(Change change) {
        return change instanceof Change.SetCell set && !STRUCTURE.contains(set.name());
    }

    private Outcome judge(Calculation now, Finding finding) {
        if (finding.corner().isPresent()) {
            // most attempts do not even mend the corner in which it is worst
            Review one = Reviewer.review(now, finding.corner().get());
            Optional<Finding> still = still(one, finding);
            if (still.isPresent()) {
                return new Outcome(
                        Optional.empty(), lacks(one, still.get()), still.get().text(), Double.NaN);
            }
        }
        Review all = Reviewer.review(now);
        Optional<Finding> still = still(all, finding);
        if (still.isPresent()) {
            return new Outcome(
                    Optional.of(all), lacks(all, still.get()), still.get().text(), Double.NaN);
        }
        List<Finding> fresh = all.findings().stream()
                .filter(f -> f.level() == Level.FAIL && !fails.contains(new Key(f.code(), f.place())))
                .toList();
        double lacks = fresh.stream().mapToDouble(f -> lacks(all, f)).sum();
        String left = fresh.isEmpty() ? "" : fresh.get(0).text();
        return new Outcome(Optional.of(all), lacks, left, cost(now) - cost);
    }

    private static Optional<Finding> still(Review review, Finding finding) {
        return review.findings().stream()
                .filter(f -> f.level() == Level.FAIL
                        && f.code().equals(finding.code())
                        && f.place().equals(finding.place()))
                .findFirst();
    }

    /** The share by which a finding misses its limit, more than nothing; without figures the more reserve the nearer. */
    private static double lacks(Review review, Finding f) {
        if (!Double.isNaN(f.value()) && !Double.isNaN(f.limit())) {
            return Math.max(TINY, Draft.excess(f.value(), f.limit()));
        }
        double least = review.corners().values().stream()
                .mapToDouble(CornerVerdict::leastReserveShare)
                .filter(share -> !Double.isNaN(share))
                .min()
                .orElse(-1);
        return FAR - Math.max(-1, least);
    }
}
