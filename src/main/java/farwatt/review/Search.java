package farwatt.review;

import farwatt.report.Cancel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The search for what mends one finding: every ladder up to the effort that is enough, then pairs. */
final class Search {
    /** So many are offered; more would have to be read. */
    static final int OFFERED = 4;

    /** Ladders that come nearest, of which pairs are made. */
    private static final int PAIRED = 7;

    /**
     * An attempt that mends, as it was solved.
     *
     * @param outcome with the review of every corner
     */
    record Mended(Attempt attempt, Trial.Outcome outcome) {
        /** Smallest intervention first, then the cheaper where prices tell. */
        static final Comparator<Mended> SMALLEST = Comparator.comparing(
                        (Mended m) -> m.attempt().effort())
                .thenComparingDouble(
                        m -> Double.isNaN(m.outcome().cost()) ? 0 : m.outcome().cost())
                .thenComparing(Mended::attempt, Attempt.SMALLEST);
    }

    private final Trial trial;
    private final Finding finding;
    private final Cancel cancel;
    private final Map<Attempt, Trial.Outcome> known = new HashMap<>();
    private long work;

    Search(Trial trial, Finding finding, Cancel cancel) {
        this.trial = trial;
        this.finding = finding;
        this.cancel = cancel;
    }

    /** Rows looked at so far. */
    long work() {
        return work;
    }

    private Trial.Outcome judge(Attempt attempt) {
        Trial.Outcome outcome = known.get(attempt);
        if (outcome == null) {
            cancel.check();
            work += trial.rows();
            outcome = trial.judge(attempt, finding);
            known.put(attempt, outcome);
        }
        return outcome;
    }

    private boolean mends(Attempt attempt) {
        return judge(attempt).mends();
    }

    /** What mends, smallest first; pairs only where nothing alone does. */
    List<Mended> search(List<Ladder> ladders) {
        List<Ladder> byEffort = new ArrayList<>(ladders);
        byEffort.sort(Comparator.comparing(ladder -> ladder.last().effort()));
        List<Mended> found = new ArrayList<>();
        Effort now = Effort.SETTING;
        for (Ladder ladder : byEffort) {
            if (ladder.last().effort() != now && found.size() >= OFFERED) {
                break;
            }
            now = ladder.last().effort();
            ladder.first(this::mends).ifPresent(a -> found.add(new Mended(a, judge(a))));
        }
        if (found.isEmpty()) {
            pairs(ladders, found);
        }
        found.sort(Mended.SMALLEST);
        return found.subList(0, Math.min(OFFERED, found.size()));
    }

    private void pairs(List<Ladder> ladders, List<Mended> found) {
        List<Ladder> near = new ArrayList<>(ladders);
        near.sort(Comparator.comparingDouble((Ladder l) -> judge(l.last()).lacks())
                .thenComparing(Ladder::last, Attempt.SMALLEST));
        int count = Math.min(PAIRED, near.size());
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                Ladder one = near.get(i);
                Ladder other = near.get(j);
                if (mends(one.last().and(other.last()))) {
                    Attempt least = one.first(a -> mends(a.and(other.last()))).orElse(one.last());
                    Attempt both = other.first(a -> mends(least.and(a)))
                            .map(least::and)
                            .orElse(one.last().and(other.last()));
                    found.add(new Mended(both, judge(both)));
                }
            }
        }
    }

    /** Of all that was tried, what lacks least; empty if nothing could be tried. */
    Optional<Mended> nearest() {
        return known.entrySet().stream()
                .filter(e -> e.getValue().hasFigures())
                .map(e -> new Mended(e.getKey(), e.getValue()))
                .min(Comparator.comparingDouble((Mended m) -> m.outcome().lacks())
                        .thenComparing(Mended::attempt, Attempt.SMALLEST));
    }
}
