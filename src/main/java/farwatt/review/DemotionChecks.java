package farwatt.review;

import farwatt.engine.Corner;
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
        for (Table table : Scene.FED) {
            Figures asked = scene.of(table, table == Table.DEVICES ? "class" : "uplink_class");
            Figures granted = scene.of(table, "class_granted");
            for (int place = 0; place < scene.rows(table); place++) {
                double less = Scene.deviceWatts(granted.at(place));
                if (Near.under(less, Scene.deviceWatts(asked.at(place)))) {
                    int at = place;
                    Spot node = new Spot(table, place);
                    if (!Near.over(most(node), less)) {
                        int number = (int) granted.at(place);
                        scene.tree()
                                .feedOf(node)
                                .ifPresent(feed -> demoted(findings, feed, (int) asked.at(at), number));
                    }
                }
            }
        }
    }

    /** The most that a device ever draws; a switch's watts are the circuit's answer and judged there. */
    private double most(Spot node) {
        if (node.table() == Table.SWITCHES) {
            return 0;
        }
        double most = 0;
        for (Corner corner : Corner.values()) {
            most = Math.max(most, scene.of(Table.DEVICES, corner.drawName()).at(node.place()));
        }
        return most;
    }

    private void demoted(Findings findings, Tree.Feed feed, int asked, int granted) {
        Spot node = feed.to();
        Place place = scene.place(node, "class_granted");
        double may = Scene.deviceWatts(granted);
        Object[] parts = {scene.tree().id(node), asked, scene.tree().id(feed.from()), granted, Say.of(may, Say.W)};
        findings.add(ReviewCode.DEMOTED, Level.WARN, place, granted, asked, () -> parts);
    }
}
