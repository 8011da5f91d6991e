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

    /** So many are enough to stop at in a part of many rows, where each attempt takes long. */
    private static final int ENOUGH = 2;

    private static final int LARGE = 200;

    /** Rows that may be looked at for pairs of all ladders; beyond it those ladders are paired that come nearest. */
    private static final int PAIRING = 20_000;

    private static final int PAIRED = 7;

    /** An attempt that mends, as it was solved. */
    record Mended(Attempt attempt, Trial.Outcome outcome) {
        /** Smallest intervention first, then the cheaper where prices tell. */
        static final Comparator<Mended> SMALLEST = Comparator.comparing(
                        (Mended m) -> m.attempt().effort())
                .thenComparingDouble(
                        m -> Double.isNaN(m.outcome().cost()) ? 0 : m.outcome().cost())
                .thenComparing(Mended::attempt, Attempt.SMALLEST);
    }

    /** Two ladders, and what both together go furthest to. */
    private record Pair(Ladder one, Ladder other) {
        Attempt last() {
            return one.last().and(other.last());
        }
    }

    private final Trial trial;
    private final Finding finding;
    private final Cancel cancel;
    private final Map<Attempt, Trial.Outcome> glanced = new HashMap<>();
    private final Map<Attempt, Trial.Outcome> judged = new HashMap<>();

    Search(Trial trial, Finding finding, Cancel cancel) {
        this.trial = trial;
        this.finding = finding;
        this.cancel = cancel;
    }

    private Trial.Outcome glance(Attempt attempt) {
        Trial.Outcome outcome = glanced.get(attempt);
        if (outcome == null) {
            cancel.check();
            outcome = trial.glance(attempt, finding);
            glanced.put(attempt, outcome);
        }
        return outcome;
    }

    private boolean may(Attempt attempt) {
        return glance(attempt).mends();
    }

    private Trial.Outcome judge(Attempt attempt) {
        Trial.Outcome outcome = judged.get(attempt);
        if (outcome == null) {
            cancel.check();
            outcome = trial.judge(attempt, finding);
            judged.put(attempt, outcome);
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
            if (ladder.last().effort() != now && isEnough(found)) {
                break;
            }
            now = ladder.last().effort();
            ladder.first(this::may, this::mends).ifPresent(a -> found.add(new Mended(a, judge(a))));
        }
        if (found.isEmpty()) {
            pairs(ladders, found);
        }
        found.sort(Mended.SMALLEST);
        return found.subList(0, Math.min(OFFERED, found.size()));
    }

    private boolean isEnough(List<Mended> found) {
        return found.size() >= (trial.rows() > LARGE ? ENOUGH : OFFERED);
    }

    private void pairs(List<Ladder> ladders, List<Mended> found) {
        List<Ladder> near = new ArrayList<>(ladders);
        near.sort(Comparator.comparingDouble((Ladder l) -> glance(l.last()).lacks())
                .thenComparing(Ladder::last, Attempt.SMALLEST));
        List<Pair> pairs = new ArrayList<>();
        int count = Math.min(near.size(), paired());
        for (int i = 0; i < count; i++) {
            for (int j = i; j < count; j++) {
                if (i != j || near.get(i).climb() == Ladder.Climb.EACH) {
                    pairs.add(new Pair(near.get(i), near.get(j)));
                }
            }
        }
        pairs.sort(Comparator.comparing(pair -> pair.last().effort()));
        Effort now = Effort.SETTING;
        for (Pair pair : pairs) {
            if (pair.last().effort() != now && isEnough(found)) {
                break;
            }
            now = pair.last().effort();
            least(pair).ifPresent(found::add);
        }
    }

    /** How many ladders are paired with each other. */
    private int paired() {
        int count = PAIRED;
        while ((long) count * (count + 1) / 2 * trial.rows() < PAIRING) {
            count++;
        }
        return count;
    }

    /** The smallest of two ladders together: with each rung of the one the first of the other. */
    private Optional<Mended> least(Pair pair) {
        if (pair.one() == pair.other()) {
            return ofOne(pair.one());
        }
        boolean turned = pair.one().climb() == Ladder.Climb.HALVE;
        Ladder outer = turned ? pair.other() : pair.one();
        Ladder inner = turned ? pair.one() : pair.other();
        if (!may(outer.last().and(inner.last()))) {
            return Optional.empty();
        }
        if (outer.climb() == Ladder.Climb.HALVE) {
            Attempt far = inner.last();
            return outer.first(a -> may(a.and(far)), a -> mends(a.and(far)))
                    .flatMap(a -> inner.first(b -> may(a.and(b)), b -> mends(a.and(b)))
                            .map(a::and))
                    .map(both -> new Mended(both, judge(both)));
        }
        Optional<Mended> least = Optional.empty();
        for (int i = 0; i < outer.count(); i++) {
            Attempt with = outer.rung().apply(i);
            least = smaller(
                    least,
                    inner.first(a -> may(with.and(a)), a -> mends(with.and(a))).map(with::and));
        }
        return least;
    }

    /** Two rungs of a ladder whose rungs are of different rows. */
    private Optional<Mended> ofOne(Ladder ladder) {
        Optional<Mended> least = Optional.empty();
        for (int i = 0; i < ladder.count(); i++) {
            for (int j = i + 1; j < ladder.count(); j++) {
                Attempt both = ladder.rung().apply(i).and(ladder.rung().apply(j));
                if (may(both) && mends(both)) {
                    least = smaller(least, Optional.of(both));
                }
            }
        }
        return least;
    }

    private Optional<Mended> smaller(Optional<Mended> least, Optional<Attempt> found) {
        Optional<Mended> other = found.map(attempt -> new Mended(attempt, judge(attempt)));
        boolean keep = other.isEmpty() || (least.isPresent() && Mended.SMALLEST.compare(least.get(), other.get()) <= 0);
        return keep ? least : other;
    }

    /** Of all that was tried, what lacks least; empty if nothing could be tried. */
    Optional<Attempt> nearest() {
        Map<Attempt, Trial.Outcome> known = new HashMap<>(glanced);
        known.putAll(judged);
        return known.entrySet().stream()
                .filter(e -> e.getValue().hasFigures() && !e.getValue().mends())
                .min(Comparator.comparingDouble((Map.Entry<Attempt, Trial.Outcome> e) ->
                                e.getValue().lacks())
                        .thenComparing(Map.Entry::getKey, Attempt.SMALLEST))
                .map(Map.Entry::getKey);
    }
}
