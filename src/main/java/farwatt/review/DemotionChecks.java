package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;

/**
 * Who is granted a smaller class than it asks for and could still run on it; where the watts do not fit,
 * {@link ClassChecks} says so (IEEE 802.3 clauses 33 and 145).
 */
final class DemotionChecks implements Check {
    private final Scene scene;

    DemotionChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        for (Tree.Feed feed : scene.tree().feeds()) {
            Spot node = feed.to();
            String ask = node.table() == Table.DEVICES ? "class" : "uplink_class";
            double asked = scene.of(node.table(), ask).at(node.place());
            double granted = scene.of(node.table(), "class_granted").at(node.place());
            double less = Scene.deviceWatts(granted);
            if (Near.under(less, Scene.deviceWatts(asked)) && !Near.over(most(node), less)) {
                demoted(findings, feed, (int) asked, (int) granted);
            }
        }
    }

    /** The most that a device ever draws; a switch's watts are the circuit's answer and judged there. */
    private double most(Spot node) {
        if (node.table() == Table.SWITCHES) {
            return 0;
        }
        Figures draw = scene.of(Table.DEVICES, "draw");
        Figures start = scene.of(Table.DEVICES, "draw_start");
        Figures typical = scene.of(Table.DEVICES, "draw_typical");
        int at = node.place();
        return Math.max(draw.at(at), Math.max(start.at(at), typical.at(at)));
    }

    private void demoted(Findings findings, Tree.Feed feed, int asked, int granted) {
        Spot node = feed.to();
        Place place = scene.place(node, "class_granted");
        double may = Scene.deviceWatts(granted);
        Object[] parts = {scene.tree().id(node), asked, scene.tree().id(feed.from()), granted, Say.of(may, Say.W)};
        findings.add(ReviewCode.DEMOTED, Level.WARN, place, granted, asked, () -> parts);
    }
}
