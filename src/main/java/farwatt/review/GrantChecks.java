package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
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
            String why = scene.calc()
                    .value(node.table(), node.place(), "powered_why")
                    .words();
            // a granted class is a number; a passive feed refuses only by watts
            boolean noClass = !scene.passive(feed.from())
                    && Double.isNaN(scene.of(node.table(), "class_granted").at(node.place()));
            if (node.table() == Table.SWITCHES) {
                darkSwitch(findings, feed, why);
            } else if (noClass) {
                noClass(findings, feed);
            } else {
                dark(findings, feed, why);
            }
        }
    }

    private double powered(Spot node) {
        return scene.of(node.table(), "powered").at(node.place());
    }

    private boolean isBelowDark(Tree.Feed feed) {
        return feed.from().table() == Table.SWITCHES && powered(feed.from()) == 0;
    }

    private void dark(Findings findings, Tree.Feed feed, String why) {
        Spot node = feed.to();
        String id = scene.tree().id(node);
        List<Tree.Feed> asking = scene.tree().below(feed.from());
        int turn = asking.indexOf(feed) + 1;
        String rule = rule(feed.from());
        double left = left(feed.from());
        double need = need(feed);
        findings.add(ReviewCode.DARK, Level.FAIL, scene.place(node, "powered"), need, left, () ->
                new Object[] {id, why, turn, asking.size(), rule});
    }

    private void noClass(Findings findings, Tree.Feed feed) {
        String id = scene.tree().id(feed.to());
        double most = PortChecks.limit(scene, feed.from(), feed.run());
        String from = scene.tree().id(feed.from());
        findings.add(ReviewCode.NO_CLASS, Level.FAIL, scene.place(feed.to(), "powered"), () ->
                new Object[] {id, from, Say.of(most, Say.W)});
    }

    private void darkSwitch(Findings findings, Tree.Feed feed, String why) {
        String id = scene.tree().id(feed.to());
        List<String> below = devicesBelow(feed.to());
        double need = need(feed);
        double left = left(feed.from());
        findings.add(ReviewCode.DARK_SWITCH, Level.FAIL, scene.place(feed.to(), "powered"), need, left, () ->
                new Object[] {id, why, below.size(), Say.list(below)});
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

    private String rule(Spot node) {
        return scene.calc().value(node.table(), node.place(), "grants_by").words();
    }

    private double left(Spot node) {
        double available = scene.of(node.table(), "available").at(node.place());
        return Math.max(0, available - scene.of(node.table(), "granted").at(node.place()));
    }

    /** Watts that must be reserved; not a number where it goes by what was declared, which this corner may not show. */
    private double need(Tree.Feed feed) {
        Spot from = feed.from();
        Figures by = scene.of(from.table(), "grants_by");
        double granted =
                scene.of(feed.to().table(), "class_granted").at(feed.to().place());
        boolean byClass = by.at(from.place()) == 0 && !Double.isNaN(granted);
        if (byClass) {
            double factor = scene.of(from.table(), "grant_factor").at(from.place());
            return farwatt.standard.PowerClass.of((int) granted).portWatts() * factor;
        }
        boolean measured = by.at(from.place()) == 2 || Double.isNaN(granted);
        return measured ? scene.of(Table.RUNS, "sent").at(feed.run()) : Double.NaN;
    }
}
