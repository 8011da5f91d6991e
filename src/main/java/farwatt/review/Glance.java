package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What fails in a plan, and how far, without sentences: enough to hold one attempt against another.
 *
 * @param fails each kind and place once, where it is worst
 * @param leastShare least reserve share over the corners looked at, NaN where there is none
 * @param leastHeadroom least volts above a floor, NaN where there is none
 */
record Glance(Map<Key, Draft> fails, double leastShare, double leastHeadroom) {
    /** What a failure comes to that has no figures. */
    static final double FAR = 10;

    private static final double TINY = 1e-9;

    /** A kind of finding at its place. */
    record Key(String code, Place place) {
        static Key of(Finding finding) {
            return new Key(finding.code(), finding.place());
        }
    }

    Glance {
        fails = Map.copyOf(fails);
    }

    static Glance of(Calculation calc, List<Corner> corners) {
        return of(Reviewer.look(calc, corners, new Cancel()));
    }

    /** At the plan's own needs alone. */
    static Glance ofNeeds(Calculation calc) {
        return of(Reviewer.lookAtNeeds(calc, Reviewer.corners(calc)));
    }

    private static Glance of(Reviewer.Looked looked) {
        Map<Key, Draft> fails = new HashMap<>();
        for (Draft draft : looked.findings().all()) {
            if (draft.level() == Level.FAIL) {
                fails.put(new Key(draft.code(), draft.place()), draft);
            }
        }
        return new Glance(fails, least(looked, CornerFigures::leastShare), least(looked, CornerFigures::leastHeadroom));
    }

    private static double least(Reviewer.Looked looked, ToDoubleFunction<CornerFigures> figure) {
        return looked.figures().values().stream()
                .mapToDouble(figure)
                .filter(value -> !Double.isNaN(value))
                .min()
                .orElse(Double.NaN);
    }

    /**
     * By how much a failure misses its limit, as a share and more than nothing; 0 where it does not fail. Without
     * figures the more reserve the nearer.
     */
    double lacks(Key key) {
        Draft draft = fails.get(key);
        if (draft == null) {
            return 0;
        }
        return figures(draft)
                .map(excess -> Math.max(TINY, excess))
                .orElseGet(() -> FAR - (leastShare > -1 ? leastShare : -1));
    }

    private static Optional<Double> figures(Draft draft) {
        boolean none = Double.isNaN(draft.value()) || Double.isNaN(draft.limit());
        return none ? Optional.empty() : Optional.of(Draft.excess(draft.value(), draft.limit()));
    }

    /**
     * What of this is new against what failed before, or fails by more than it did; by how much in all.
     *
     * @param mending where a finding is to be mended: there nothing may fail at all that did not
     */
    double worseThan(Glance before, Place mending) {
        double worse = 0;
        for (Map.Entry<Key, Draft> now : fails.entrySet()) {
            Draft draft = now.getValue();
            if (isWorse(before, now.getKey(), draft.value(), draft.limit(), mending)) {
                Draft was = before.fails.get(now.getKey());
                worse += was == null
                        ? lacks(now.getKey())
                        : figures(draft).orElse(0.0) - figures(was).orElse(0.0);
            }
        }
        return worse;
    }

    /** True for a finding of this that did not fail before, or not by so much. */
    boolean isWorse(Glance before, Finding now, Place mending) {
        return isWorse(before, Key.of(now), now.value(), now.limit(), mending);
    }

    private boolean isWorse(Glance before, Key key, double value, double limit, Place mending) {
        Draft was = before.fails.get(key);
        if (was == null) {
            return isSame(key.place(), mending) || !wasHidden(before, key);
        }
        double excess = Draft.excess(value, limit);
        return !Double.isNaN(excess) && excess - figures(was).orElse(0.0) > TINY;
    }

    /** True where something that tells more failed at the same row and is gone: it may have hidden this. */
    private boolean wasHidden(Glance before, Key key) {
        int rank = rank(key.code());
        return before.fails.entrySet().stream()
                .anyMatch(was -> was.getValue().rank() < rank
                        && isSame(was.getKey().place(), key.place())
                        && !fails.containsKey(was.getKey()));
    }

    private static boolean isSame(Place one, Place other) {
        boolean row = one.table().equals(other.table()) && one.row().equals(other.row());
        return row && (!one.row().isEmpty() || one.name().equals(other.name()));
    }

    private static int rank(String code) {
        for (ReviewCode each : ReviewCode.values()) {
            if (each.key().equals(code)) {
                return each.ordinal();
            }
        }
        return Findings.MISTAKE;
    }
}
