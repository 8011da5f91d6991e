package farwatt.review;

import farwatt.engine.Corner;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import farwatt.standard.PowerClass;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/** Who stays dark, and why: the node that feeds it has nothing left to grant, or its port grants nothing. */
final class GrantChecks implements Check {
    private final Scene scene;

    GrantChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        for (Tree.Feed feed : scene.tree().feeds()) {
            Spot node = feed.to();
            boolean dark = powered(node) == 0;
            if (!dark || isBelowDark(feed)) {
                continue;
            }
            // a granted class is a number; a passive feed refuses only by watts
            boolean noClass = !scene.passive(feed.from())
                    && Double.isNaN(scene.of(node.table(), "class_granted").at(node.place()));
            if (node.table() == Table.SWITCHES) {
                darkSwitch(findings, feed);
            } else if (noClass) {
                noClass(findings, feed);
            } else {
                dark(findings, feed);
            }
        }
    }

    private double powered(Spot node) {
        return scene.of(node.table(), "powered").at(node.place());
    }

    private boolean isBelowDark(Tree.Feed feed) {
        return feed.from().table() == Table.SWITCHES && powered(feed.from()) == 0;
    }

    private void dark(Findings findings, Tree.Feed feed) {
        Turn turn = turn(feed);
        findings.add(
                ReviewCode.DARK, Level.FAIL, scene.place(feed.to(), "powered"), turn.need(), turn.left(), turn::parts);
    }

    /** A child's turn in the grants of its feeder, in figures. */
    private record Turn(
            String id, String from, String rule, int place, int of, double need, double left, double all, Bound bound) {
        Object[] parts() {
            String[] watts = Say.apart(need, left, Say.W);
            return new Object[] {id, from, rule, place, of, watts[0], watts[1], Say.of(all, Say.W), bound.called()};
        }
    }

    private Turn turn(Tree.Feed feed) {
        Spot from = feed.from();
        List<Tree.Feed> asking = scene.tree().below(from);
        double all = scene.of(from.table(), "available").at(from.place());
        double left = Math.max(0, all - scene.of(from.table(), "granted").at(from.place()));
        return new Turn(
                scene.tree().id(feed.to()),
                scene.tree().id(from),
                scene.words(from.table(), from.place(), "grants_by"),
                scene.tree().turn(feed),
                asking.size(),
                need(feed),
                left,
                all,
                Bound.of(scene.of(from.table(), "bound_by").at(from.place())));
    }

    private void noClass(Findings findings, Tree.Feed feed) {
        String id = scene.tree().id(feed.to());
        double most = PortChecks.limit(scene, feed.from(), feed.run());
        String from = scene.tree().id(feed.from());
        findings.add(ReviewCode.NO_CLASS, Level.FAIL, scene.place(feed.to(), "powered"), () ->
                new Object[] {id, from, Say.of(most, Say.W)});
    }

    private void darkSwitch(Findings findings, Tree.Feed feed) {
        Turn turn = turn(feed);
        List<String> below = devicesBelow(feed.to());
        Place place = scene.place(feed.to(), "powered");
        findings.add(ReviewCode.DARK_SWITCH, Level.FAIL, place, turn.need(), turn.left(), () -> {
            Object[] parts = turn.parts();
            // of the turn only the watts are told: what hangs below matters more
            return new Object[] {
                parts[0], parts[1], parts[2], withIt(below), below.size(), parts[5], parts[6], parts[7], parts[8]
            };
        });
    }

    /** What goes dark along with a switch, as a clause; nothing where nothing hangs on it. */
    private static String withIt(List<String> below) {
        return below.isEmpty()
                ? ""
                : below.size() == 1
                        ? Phrase.WITH_ONE.text(below.get(0))
                        : Phrase.WITH_MANY.text(below.size(), Say.list(below));
    }

    private List<String> devicesBelow(Spot node) {
        List<String> found = new ArrayList<>();
        ArrayDeque<Spot> open = new ArrayDeque<>(List.of(node));
        while (!open.isEmpty()) {
            Spot next = open.removeFirst();
            if (next.table() == Table.DEVICES) {
                found.add(scene.tree().id(next));
            }
            scene.tree().below(next).forEach(feed -> open.add(feed.to()));
        }
        return found;
    }

    /** Watts that must be reserved for it at its feeder's port. */
    private double need(Tree.Feed feed) {
        Spot from = feed.from();
        String by = scene.words(from.table(), from.place(), "grants_by");
        double granted =
                scene.of(feed.to().table(), "class_granted").at(feed.to().place());
        if (by.equals("measured") || Double.isNaN(granted)) {
            return scene.of(Table.RUNS, "sent").at(feed.run());
        }
        if (by.equals("declared")) {
            return scene.sentIn(Corner.MOST)[feed.run()];
        }
        double factor = scene.of(from.table(), "grant_factor").at(from.place());
        return PowerClass.of((int) granted).portWatts() * factor;
    }
}
