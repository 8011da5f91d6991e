package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Progress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for changes that mend what fails: each is made on a working copy, solved in every corner, and offered only if
 * the finding is gone everywhere and nothing new fails. Smallest intervention first. Needs no thread of its own; works
 * on the calculation's thread, or any other if given a calculation of its own.
 */
public final class Remedies {
    /** Rows looked at in one search over all findings: a few seconds of work. */
    private static final long WORK = 500_000;

    /** Attempts that a finding needs at least; where there is no time for so many none is begun. */
    private static final int ATTEMPTS = 30;

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
        Trial trial = trials.computeIfAbsent(part, p -> new Trial(parts.plan(p)));
        List<Ladder> ladders = Ladders.of(new Ground(trial.calc(), calc.plan(), finding));
        if (ladders.isEmpty()) {
            return finding;
        }
        Search search = new Search(trial, finding, cancel);
        List<Search.Mended> found = search.search(ladders);
        work += search.work();
        if (found.isEmpty()) {
            String nearest = search.nearest()
                    .map(n -> TryPhrase.TRY_NEAREST.text(
                            n.attempt().text(), firstSentence(n.outcome().left())))
                    .orElse(TryPhrase.TRY_NOTHING.text());
            return finding.unmended(nearest);
        }
        return finding.mended(found.stream().map(m -> remedy(m, trial, part)).toList());
    }

    /** What fails, without the advice that follows. */
    private static String firstSentence(String text) {
        return text.replaceFirst("(?<=[^.])\\. [A-Z].*$", ".");
    }

    private Remedy remedy(Search.Mended mended, Trial trial, int part) {
        Review after = mended.outcome().review().orElseThrow();
        double least = leastShare(after);
        double outside = parts.leastOutside(part, after.corners().keySet());
        double whole = Double.isNaN(outside) || least <= outside
                ? least
                : Double.isNaN(least) ? outside : Math.min(least, outside);
        double headroom = after.corners().values().stream()
                .mapToDouble(CornerVerdict::leastHeadroom)
                .filter(v -> !Double.isNaN(v))
                .min()
                .orElse(Double.NaN);
        double cost = mended.outcome().cost();
        return new Remedy(
                text(mended.attempt(), leastShare(trial.before()), least, cost),
                mended.attempt().steps(),
                whole,
                headroom,
                cost);
    }

    private String text(Attempt attempt, double before, double after, double cost) {
        String text = attempt.text();
        if (!Double.isNaN(after) && !Double.isNaN(before) && before > -1) {
            String[] shares = {Say.of(before, Say.SHARE), Say.of(after, Say.SHARE)};
            if (shares[0].equals(shares[1])) {
                shares = Say.apart(before, after, Say.SHARE);
            }
            text = TryPhrase.TRY_RESERVE.text(text, shares[0].replace(" %", ""), shares[1]);
        } else if (!Double.isNaN(after)) {
            text = TryPhrase.TRY_RESERVE_NOW.text(text, Say.of(after, Say.SHARE));
        }
        if (Double.isNaN(cost) || Math.abs(cost) < 0.005) {
            return text;
        }
        Plan plan = calc.plan();
        Unit money = new Units(plan.currency()).need(plan.currency());
        String amount = Show.text(Math.abs(cost), money);
        return (cost > 0 ? TryPhrase.TRY_DEARER : TryPhrase.TRY_CHEAPER).text(text, amount);
    }

    private static double leastShare(Review review) {
        return review.corners().values().stream()
                .mapToDouble(CornerVerdict::leastReserveShare)
                .filter(v -> !Double.isNaN(v))
                .min()
                .orElse(Double.NaN);
    }
}
