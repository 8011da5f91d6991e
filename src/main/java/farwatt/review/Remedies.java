package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.Plan.Spot;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Progress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for changes that mend what fails: each is made on a working copy, solved in every corner, and offered only if
 * the finding is gone everywhere and nothing new fails. Smallest intervention first. Needs no thread of its own; works
 * on the calculation's thread, or any other if given a calculation of its own.
 */
public final class Remedies {
    /** Rows looked at in one search over all findings: a few seconds of work. */
    private static final long WORK = 2_000_000;

    /** Attempts that a finding needs at least; where there is no time for so many none is begun. */
    private static final int ATTEMPTS = 100;

    private final Calculation calc;
    private final Review review;
    private final Part parts;
    private final Map<Integer, Trial> trials = new HashMap<>();
    private long work;

    private Remedies(Calculation calc, Review review) {
        this.calc = calc;
        this.review = review;
        parts = new Part(calc);
    }

    /**
     * The same review with remedies at the findings that fail.
     *
     * @param review of the calculation, over every corner
     * @param progress told after each finding
     * @throws java.util.concurrent.CancellationException if stopping was asked for
     */
    public static Review of(Calculation calc, Review review, Progress progress, Cancel cancel) {
        if (review.fails() == 0) {
            return review;
        }
        return new Remedies(calc, review).all(progress, cancel);
    }

    private Review all(Progress progress, Cancel cancel) {
        List<Finding> findings = new ArrayList<>();
        int done = 0;
        int all = review.fails();
        for (Finding finding : review.findings()) {
            cancel.check();
            boolean fails = finding.level() == Level.FAIL;
            findings.add(fails ? mended(finding, cancel) : finding);
            if (fails) {
                progress.at(++done / (double) all, finding.place().text());
            }
        }
        return new Review(review.verdict(), review.corners(), findings, review.cautions());
    }

    private Finding mended(Finding finding, Cancel cancel) {
        int part = parts.of(finding.place());
        if (work + (long) ATTEMPTS * Trial.rows(parts.plan(part)) > WORK) {
            return finding.unmended(TryPhrase.TRY_UNSOUGHT.text());
        }
        Trial trial = trial(part);
        Ground ground = new Ground(trial.calc(), calc.plan(), finding);
        List<Ladder> ladders = Ladders.of(ground);
        if (ladders.isEmpty()) {
            return finding;
        }
        long before = trial.work();
        Search search = new Search(trial, finding, cancel);
        List<Search.Mended> found = search.search(ladders);
        work += trial.work() - before;
        if (found.isEmpty()) {
            String nearest = search.nearest()
                    .map(attempt ->
                            TryPhrase.TRY_NEAREST.text(attempt.text(), firstSentence(trial.left(attempt, finding))))
                    .orElse(TryPhrase.TRY_NOTHING.text());
            return finding.unmended(nearest);
        }
        Optional<Spot> node = ground.nodes().stream().findFirst();
        return finding.mended(
                found.stream().map(m -> remedy(m, trial, part, node)).toList());
    }

    private Trial trial(int part) {
        Trial known = trials.get(part);
        if (known == null) {
            Optional<Trial> whole = part >= 0 && parts.needOfAll() ? Optional.of(trial(-1)) : Optional.empty();
            known = new Trial(parts.plan(part), whole);
            trials.put(part, known);
        }
        return known;
    }

    /** What fails, without the advice that follows. */
    private static String firstSentence(String text) {
        return text.replaceFirst("(?<=[^.])\\. [A-Z].*$", ".");
    }

    private Remedy remedy(Search.Mended mended, Trial trial, int part, Optional<Spot> node) {
        Trial.Outcome after = mended.outcome();
        double outside = parts.leastOutside(part);
        double whole = Double.isNaN(outside) || after.leastShare() <= outside
                ? after.leastShare()
                : Double.isNaN(after.leastShare()) ? outside : Math.min(after.leastShare(), outside);
        String text = new Brought(trial, node).text(mended, calc.plan().currency());
        return new Remedy(text, mended.attempt().steps(), whole, after.leastHeadroom(), after.cost());
    }
}
