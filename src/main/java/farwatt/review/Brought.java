package farwatt.review;

import farwatt.plan.Plan.Spot;
import farwatt.quantity.Show;
import farwatt.quantity.Units;
import java.util.List;
import java.util.Optional;

/** What a remedy brings, in words: the least reserve before and after, or that of the node it is about; the price. */
final class Brought {
    private static final double CENT = 0.005;

    private final Trial trial;
    private final Optional<Spot> node;

    /** @param node the source or switch that the finding is about or hangs on, in the trial's plan */
    Brought(Trial trial, Optional<Spot> node) {
        this.trial = trial;
        this.node = node;
    }

    String text(Search.Mended mended, String currency) {
        String text = reserve(mended);
        double cost = mended.outcome().cost();
        if (Double.isNaN(cost) || Math.abs(cost) < CENT) {
            return text;
        }
        String amount = Show.text(Math.abs(cost), new Units(currency).need(currency));
        return (cost > 0 ? TryPhrase.TRY_DEARER : TryPhrase.TRY_CHEAPER).text(text, amount);
    }

    private String reserve(Search.Mended mended) {
        String text = mended.attempt().text();
        double before = trial.before().leastShare();
        double after = mended.outcome().leastShare();
        if (Double.isNaN(after)) {
            return text;
        }
        if (Double.isNaN(before) || before <= -1) {
            return TryPhrase.TRY_RESERVE_NOW.text(text, Say.of(after, Say.SHARE));
        }
        if (isSame(before, after)) {
            return ofNode(mended.attempt())
                    .orElseGet(() -> TryPhrase.TRY_RESERVE_STAYS.text(text, Say.of(after, Say.SHARE)));
        }
        String[] shares = shares(before, after);
        return TryPhrase.TRY_RESERVE.text(text, shares[0], shares[1]);
    }

    /** Where another node keeps the least as before: what it does for the one that it is about. */
    private Optional<String> ofNode(Attempt attempt) {
        if (node.isEmpty()) {
            return Optional.empty();
        }
        Spot at = node.get();
        String id = trial.calc().id(at.table(), at.place());
        double before = trial.share(List.of(), at.table(), id);
        double after = trial.share(attempt.steps(), at.table(), id);
        if (Double.isNaN(before) || Double.isNaN(after) || before <= -1 || isSame(before, after)) {
            return Optional.empty();
        }
        String[] shares = shares(before, after);
        return Optional.of(TryPhrase.TRY_RESERVE_OF.text(attempt.text(), id, shares[0], shares[1]));
    }

    private static boolean isSame(double before, double after) {
        return !Near.over(before, after) && !Near.under(before, after);
    }

    private static String[] shares(double before, double after) {
        String[] shares = {Say.of(before, Say.SHARE), Say.of(after, Say.SHARE)};
        if (shares[0].equals(shares[1])) {
            shares = Say.apart(before, after, Say.SHARE);
        }
        shares[0] = shares[0].replace(" %", "");
        return shares;
    }
}
