package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Figures;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Table;
import farwatt.report.Cancel;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Judges a calculated plan. Works on the calculation's thread, looks at corners and goes back to the one that was
 * looked at.
 */
public final class Reviewer {
    /** Worst first, then as the tables stand in a plan, then by row. */
    private static final Comparator<Draft> SHOWN = Comparator.comparing(Draft::level)
            .thenComparingInt(
                    d -> Table.of(d.place().table()).map(Table::ordinal).orElse(-1))
            .thenComparing(d -> d.place().row(), NaturalOrder.IDS)
            .thenComparingInt(Draft::rank)
            .thenComparing(d -> d.place().name())
            .thenComparing(Draft::code);

    private Reviewer() {}

    /** Over every corner; the hot start only where some device starts with more than its most. */
    public static Review review(Calculation calc) {
        return review(calc, new Cancel());
    }

    /**
     * The same, given up between corners if stopping is asked for; the calculation then stands in another corner.
     *
     * @throws java.util.concurrent.CancellationException if it was
     */
    public static Review review(Calculation calc, Cancel cancel) {
        return assemble(look(calc, corners(calc), cancel));
    }

    /** In one corner only. */
    public static Review review(Calculation calc, Corner only) {
        return assemble(look(calc, List.of(only), new Cancel()));
    }

    /** Those that a plan is judged in. */
    static List<Corner> corners(Calculation calc) {
        List<Corner> all = new ArrayList<>(List.of(Corner.TYPICAL, Corner.MOST, Corner.HOT, Corner.COLD));
        if (someStartExceedsMost(calc)) {
            all.add(Corner.HOTSTART);
        }
        return all;
    }

    private static boolean someStartExceedsMost(Calculation calc) {
        Figures start = calc.figures(Table.DEVICES, "draw_start");
        Figures most = calc.figures(Table.DEVICES, "draw");
        for (int place = 0; place < calc.rows(Table.DEVICES); place++) {
            if (Near.over(start.at(place), most.at(place))) {
                return true;
            }
        }
        return false;
    }

    /** What the checks find, before any sentence is made of it. */
    record Looked(Scene scene, Choices choices, Findings findings, Map<Corner, CornerFigures> figures) {}

    /** Looks at some corners and goes back to the one looked at before. */
    static Looked look(Calculation calc, List<Corner> corners, Cancel cancel) {
        Corner before = calc.corner();
        Scene scene = new Scene(calc);
        Choices choices = new Choices(calc.plan());
        Findings findings = new Findings(choices);
        List<Notice> notices = calc.notices();
        notices.forEach(findings::add);
        Checks.always(scene).forEach(check -> check.look(findings));
        Map<Corner, CornerFigures> figures = new EnumMap<>(Corner.class);
        List<Check> checks = Checks.inEachCorner(scene, notices);
        for (Corner corner : corners) {
            cancel.check();
            calc.look(corner);
            findings.in(Optional.of(corner));
            checks.forEach(check -> check.look(findings));
            figures.put(corner, CornerFigures.of(scene));
        }
        calc.look(before);
        return new Looked(scene, choices, findings, figures);
    }

    /** Only whether the plan's own needs are met. */
    static Looked lookAtNeeds(Calculation calc, List<Corner> corners) {
        Corner before = calc.corner();
        Scene scene = new Scene(calc);
        Choices choices = new Choices(calc.plan());
        Findings findings = new Findings(choices);
        Check needs = new NeedChecks(scene, List.of());
        for (Corner corner : corners) {
            calc.look(corner);
            findings.in(Optional.of(corner));
            needs.look(findings);
        }
        calc.look(before);
        return new Looked(scene, choices, findings, Map.of());
    }

    private static Review assemble(Looked looked) {
        Map<Corner, CornerFigures> figures = looked.figures();
        Verdicts verdicts = new Verdicts(looked.scene(), looked.findings(), looked.choices(), figures);
        Map<Corner, CornerVerdict> corners = new EnumMap<>(Corner.class);
        figures.forEach((corner, f) ->
                corners.put(corner, new CornerVerdict(verdicts.holds(corner), f.leastShare(), f.leastHeadroom())));
        List<Finding> all = looked.findings().all().stream()
                .sorted(SHOWN)
                .map(Draft::finding)
                .toList();
        return new Review(verdicts.verdict(), corners, all, Cautions.lines());
    }
}
