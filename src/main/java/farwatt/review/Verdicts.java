package farwatt.review;

import farwatt.engine.Corner;
import farwatt.plan.NaturalOrder;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The one sentence over all corners that were looked at. */
final class Verdicts {
    private static final Comparator<Draft> TELLING = Comparator.comparingInt(Draft::rank)
            .thenComparing(Draft::excess, Comparator.reverseOrder())
            .thenComparing(d -> d.place().row(), NaturalOrder.IDS)
            .thenComparing(d -> d.place().name());

    private final Scene scene;
    private final Findings findings;
    private final Choices choices;
    private final Map<Corner, CornerFigures> corners;

    /** @param corners those looked at, in their order */
    Verdicts(Scene scene, Findings findings, Choices choices, Map<Corner, CornerFigures> corners) {
        this.scene = scene;
        this.findings = findings;
        this.choices = choices;
        this.corners = corners;
    }

    boolean holds(Corner corner) {
        return findings.failsIn(corner).isEmpty() && findings.failsAlways().isEmpty();
    }

    Verdict verdict() {
        List<Corner> failing = corners.keySet().stream()
                .filter(c -> !findings.failsIn(c).isEmpty())
                .toList();
        if (failing.isEmpty() && findings.failsAlways().isEmpty()) {
            return holding(worst(new ArrayList<>(corners.keySet())));
        }
        return failing(worst(failing.isEmpty() ? new ArrayList<>(corners.keySet()) : failing));
    }

    /** A tree without an answer before one with, then more findings before fewer, then less reserve before more. */
    private Corner worst(List<Corner> among) {
        Corner worst = among.get(0);
        for (Corner corner : among) {
            if (compare(corner, worst) < 0) {
                worst = corner;
            }
        }
        return worst;
    }

    private int compare(Corner one, Corner other) {
        CornerFigures a = figures(one);
        CornerFigures b = figures(other);
        if (a.broken() != b.broken()) {
            return a.broken() ? -1 : 1;
        }
        int more = findings.failsIn(other).size() - findings.failsIn(one).size();
        if (more != 0 || !a.hasReserve() || !b.hasReserve()) {
            return more != 0 ? more : a.hasReserve() == b.hasReserve() ? 0 : a.hasReserve() ? -1 : 1;
        }
        return Near.under(a.leastShare(), b.leastShare()) ? -1 : Near.over(a.leastShare(), b.leastShare()) ? 1 : 0;
    }

    private CornerFigures figures(Corner corner) {
        CornerFigures found = corners.get(corner);
        if (found == null) {
            throw new IllegalArgumentException("not looked at: " + corner);
        }
        return found;
    }

    /** In a corner, or whatever the corner if what tells most does not go by corners. */
    private Verdict failing(Corner corner) {
        List<Draft> fails = new ArrayList<>(findings.failsIn(corner));
        fails.addAll(findings.failsAlways());
        fails.sort(TELLING);
        Draft lead = fails.get(0);
        List<String> dark = dark(fails);
        boolean leadIsDark = lead.code().equals(ReviewCode.DARK.key());
        List<String> clauses = new ArrayList<>();
        if (!leadIsDark) {
            clauses.add(lead.brief().get());
        }
        if (!dark.isEmpty()) {
            Phrase stays = dark.size() == 1 ? Phrase.VERDICT_DARK_ONE : Phrase.VERDICT_DARK_MANY;
            clauses.add(stays.text(Say.list(dark)));
        }
        int rest = fails.size() - dark.size() - (leadIsDark ? 0 : 1);
        if (rest > 0) {
            clauses.add((rest == 1 ? Phrase.VERDICT_MORE_ONE : Phrase.VERDICT_MORE).text(rest));
        }
        String all = String.join("; ", clauses);
        String text = lead.corner().isPresent()
                ? Phrase.VERDICT_FAILS.text(corner.phrase(), all)
                : Phrase.VERDICT_FAILS_ALWAYS.text(all);
        return new Verdict(false, text + choices.said(), corner, lead.place());
    }

    private static List<String> dark(List<Draft> fails) {
        return fails.stream()
                .filter(d -> d.code().equals(ReviewCode.DARK.key()))
                .map(d -> d.place().row())
                .sorted(NaturalOrder.IDS)
                .toList();
    }

    private Verdict holding(Corner corner) {
        CornerFigures figures = figures(corner);
        String where =
                corners.size() > 1 ? Phrase.VERDICT_HOLDS_ALL.text() : Phrase.VERDICT_HOLDS_ONE.text(corner.phrase());
        if (scene.tree().feeds().isEmpty()) {
            return new Verdict(true, Phrase.VERDICT_EMPTY.text(), corner, Place.NONE);
        }
        if (!figures.hasReserve()) {
            return new Verdict(
                    true, where + Phrase.VERDICT_NO_RESERVE.text() + warnings() + choices.said(), corner, Place.NONE);
        }
        String share = Say.of(figures.leastShare(), Say.SHARE);
        String id = scene.tree().id(figures.leastAt());
        String when = corners.size() > 1 ? ", " + corner.phrase() : "";
        String least =
                Phrase.VERDICT_LEAST.text(share, id, Bound.of(figures.bound()).called(), when);
        return new Verdict(
                true,
                where + least + warnings() + choices.said(),
                corner,
                scene.place(figures.leastAt(), "reserve_share"));
    }

    private String warnings() {
        long count =
                findings.all().stream().filter(d -> d.level() == Level.WARN).count();
        return count == 0 ? "" : " " + (count == 1 ? Phrase.VERDICT_WARNING : Phrase.VERDICT_WARNINGS).text(count);
    }
}
