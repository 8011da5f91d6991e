package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Place;
import farwatt.report.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Remedies held against trying everything: each change is made to a plan of its own, which is worked out and judged
 * from nothing, and what mends is put in order by rules written down here a second time.
 */
class RemediesAgainstAllTest {
    private static final boolean LONG = Boolean.getBoolean("farwatt.soak");
    private static final int PLANS = LONG ? 500 : 50;
    private static final int COMPARED = LONG ? 300 : 12;
    private static final int PAIRED = LONG ? 40 : 3;

    private record Key(String code, Place place) {}

    /** A plan with what fails in it. */
    private static final class Judged {
        final Plan plan;
        final Review review;
        final double cost;
        final Map<Key, Finding> fails = new HashMap<>();

        Judged(Plan plan) {
            this.plan = plan;
            Calculation calc = Calculation.of(plan);
            review = Reviewer.review(calc);
            cost = calc.figures(Table.PLAN, "cost").at(0);
            for (Finding f : review.findings()) {
                if (f.level() == Level.FAIL) {
                    fails.put(new Key(f.code(), f.place()), f);
                }
            }
        }

        double least(java.util.function.ToDoubleFunction<CornerVerdict> figure) {
            return review.corners().values().stream()
                    .mapToDouble(figure)
                    .filter(v -> !Double.isNaN(v))
                    .min()
                    .orElse(Double.NaN);
        }

        Optional<Judged> with(List<farwatt.plan.Step> steps) {
            return new Remedy("", steps, 0, 0, 0)
                    .change(plan)
                    .map(c -> new Judged(Edit.apply(plan, c).plan()));
        }

        /** The finding is gone, and nothing fails anew or by more, but for what a worse failure hid before. */
        boolean mends(Finding finding, Judged after) {
            if (after.fails.containsKey(new Key(finding.code(), finding.place()))) {
                return false;
            }
            return after.fails.entrySet().stream().allMatch(now -> {
                Finding was = fails.get(now.getKey());
                if (was != null) {
                    return !(excess(now.getValue()) > excess(was) + 1e-9);
                }
                return !row(now.getValue()).equals(row(finding))
                        && fails.entrySet().stream()
                                .anyMatch(f -> row(f.getValue()).equals(row(now.getValue()))
                                        && order(f.getValue()) < order(now.getValue())
                                        && !after.fails.containsKey(f.getKey()));
            });
        }
    }

    private static double excess(Finding f) {
        double most = Math.max(Math.abs(f.value()), Math.abs(f.limit()));
        return Double.isNaN(most) || most == 0 ? 0 : Math.abs(f.value() - f.limit()) / most;
    }

    private static String row(Finding f) {
        Place place = f.place();
        return place.table() + "/" + (place.row().isEmpty() ? place.name() : place.row());
    }

    private static int order(Finding f) {
        for (ReviewCode code : ReviewCode.values()) {
            if (code.key().equals(f.code())) {
                return code.ordinal();
            }
        }
        return ReviewCode.NO_VALUE.ordinal();
    }

    private static Review mended(Plan plan) {
        Calculation calc = Calculation.of(plan);
        return Remedies.of(calc, Reviewer.review(calc), Progress.SILENT, new Cancel());
    }

    @Test
    void whateverIsOfferedDoesWhatItSays() {
        int offered = 0;
        for (FailingPlans.Seeded each : FailingPlans.first(PLANS, 1)) {
            Judged before = new Judged(each.plan());
            for (Finding finding : mended(each.plan()).findings()) {
                for (Remedy remedy : finding.remedies()) {
                    String where = "seed " + each.seed() + " " + finding.text() + " / " + remedy.text();
                    Judged after = before.with(remedy.changes()).orElseThrow();
                    assertTrue(before.mends(finding, after), where);
                    assertEquals(
                            after.least(CornerVerdict::leastReserveShare), remedy.leastReserveShare(), 1e-9, where);
                    assertTrue(!(remedy.leastHeadroom() < after.least(CornerVerdict::leastHeadroom) - 1e-9), where);
                    assertEquals(after.cost - before.cost, remedy.cost(), 1e-6, where);
                    assertTrue(!remedy.text().matches(".*(NaN|null|\\{\\d}).*"), where);
                    offered++;
                }
            }
        }
        assertTrue(offered > 4 * PLANS, offered + " offered");
    }

    /** One change that mends, or two. */
    private record Found(Ladder ladder, Attempt attempt, double cost) {
        static final Comparator<Found> SMALLEST = Comparator.comparingInt(
                        (Found f) -> f.attempt().effort().ordinal())
                .thenComparingDouble(f -> Double.isNaN(f.cost()) ? 0 : f.cost())
                .thenComparingInt(f -> f.attempt().steps().size())
                .thenComparingDouble(f -> f.attempt().size())
                .thenComparing(f -> f.attempt().text());
    }

    private static Optional<Found> solved(Judged before, Finding finding, Ladder ladder, Attempt attempt) {
        return before.with(attempt.steps())
                .filter(after -> before.mends(finding, after))
                .map(after -> new Found(ladder, attempt, after.cost - before.cost));
    }

    @Test
    void theSmallestSingleChangesComeFirst() {
        int compared = 0;
        for (FailingPlans.Seeded each : FailingPlans.first(PLANS, 2000)) {
            Judged before = new Judged(each.plan());
            int here = 0;
            for (Finding finding : mended(each.plan()).findings()) {
                if (finding.level() == Level.FAIL && here++ < 2 && compared < COMPARED) {
                    compared += singles(each, before, finding);
                }
            }
        }
        assertTrue(compared >= COMPARED, compared + " compared");
    }

    private static List<Ladder> ladders(Plan plan, Finding finding) {
        return Ladders.of(new Ground(Calculation.of(plan), plan, finding));
    }

    private static int singles(FailingPlans.Seeded each, Judged before, Finding finding) {
        List<Found> firsts = new ArrayList<>();
        for (Ladder ladder : ladders(each.plan(), finding)) {
            List<Found> all = new ArrayList<>();
            for (int i = 0; i < ladder.count(); i++) {
                solved(before, finding, ladder, ladder.rung().apply(i)).ifPresent(all::add);
            }
            all.stream().findFirst().ifPresent(firsts::add);
        }
        firsts.sort(Found.SMALLEST);
        List<String> wanted = firsts.stream()
                .limit(Search.OFFERED)
                .map(f -> f.attempt().text())
                .toList();
        List<String> said = finding.remedies().stream().map(Remedy::text).toList();
        String where = "seed " + each.seed() + " " + finding.text() + ": " + wanted + " but " + said;
        if (wanted.isEmpty()) {
            assertTrue(finding.remedies().stream().allMatch(r -> r.text().contains(", and ")), where);
            return 0;
        }
        assertEquals(wanted.size(), said.size(), where);
        for (int i = 0; i < wanted.size(); i++) {
            assertTrue(said.get(i).startsWith(wanted.get(i)), where);
        }
        return 1;
    }

    @Test
    void whereNoSingleChangeIsEnoughTheSmallestTwoComeFirst() {
        int compared = 0;
        for (FailingPlans.Seeded each : FailingPlans.first(PLANS, 4000)) {
            Judged before = new Judged(each.plan());
            for (Finding finding : mended(each.plan()).findings()) {
                boolean pair =
                        finding.remedies().stream().anyMatch(r -> r.text().contains(", and "));
                boolean none =
                        finding.level() == Level.FAIL && finding.remedies().isEmpty();
                if (compared < PAIRED && (pair || (none && compared % 4 == 1))) {
                    compared += pairs(each, before, finding);
                }
            }
        }
        assertTrue(compared >= PAIRED, compared + " compared");
    }

    private static int pairs(FailingPlans.Seeded each, Judged before, Finding finding) {
        List<Ladder> ladders = ladders(each.plan(), finding);
        List<Found> all = new ArrayList<>();
        for (int i = 0; i < ladders.size(); i++) {
            Ladder one = ladders.get(i);
            for (int k = 0; k < one.count(); k++) {
                Attempt single = one.rung().apply(k);
                assertTrue(solved(before, finding, one, single).isEmpty(), () -> each.seed() + " " + single.text());
            }
            for (int j = i + 1; j < ladders.size(); j++) {
                both(before, finding, one, ladders.get(j), all);
            }
            if (one.climb() == Ladder.Climb.EACH) {
                ofOne(before, finding, one, all);
            }
        }
        List<String> said = finding.remedies().stream().map(Remedy::text).toList();
        Optional<Found> least = all.stream().min(Found.SMALLEST);
        String where = "seed " + each.seed() + " " + finding.text() + ": " + least + " but " + said;
        if (least.isPresent()) {
            assertTrue(
                    !said.isEmpty()
                            && said.get(0).startsWith(least.get().attempt().text()),
                    where);
        } else {
            assertTrue(said.isEmpty() && !finding.nearest().isEmpty(), where);
        }
        return ladders.isEmpty() ? 0 : 1;
    }

    /** Of two ladders all rungs with all; of two long ones that are halved the least of the one that the other needs. */
    private static void both(Judged before, Finding finding, Ladder one, Ladder other, List<Found> all) {
        boolean turned = one.climb() == Ladder.Climb.HALVE;
        Ladder outer = turned ? other : one;
        Ladder inner = turned ? one : other;
        for (int i = 0; i < outer.count(); i++) {
            Attempt with = outer.rung().apply(i);
            if (inner.climb() == Ladder.Climb.HALVE
                    && solved(before, finding, inner, with.and(inner.last())).isEmpty()) {
                continue;
            }
            Optional<Found> first = Optional.empty();
            for (int k = 0; k < inner.count() && first.isEmpty(); k++) {
                first = solved(before, finding, inner, with.and(inner.rung().apply(k)));
            }
            first.ifPresent(all::add);
            if (outer.climb() == Ladder.Climb.HALVE && first.isPresent()) {
                return;
            }
        }
    }

    private static void ofOne(Judged before, Finding finding, Ladder ladder, List<Found> all) {
        for (int i = 0; i < ladder.count(); i++) {
            for (int k = i + 1; k < ladder.count(); k++) {
                Attempt both = ladder.rung().apply(i).and(ladder.rung().apply(k));
                solved(before, finding, ladder, both).ifPresent(all::add);
            }
        }
    }
}
