package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;

/** Feeds without detection: what hangs on one must be made for its volts. */
final class PassiveChecks implements Check {
    private final Scene scene;

    PassiveChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        for (Table table : Scene.NODES) {
            for (int place = 0; place < scene.rows(table); place++) {
                Spot node = new Spot(table, place);
                if (scene.inUse(table, place) && scene.passive(node)) {
                    feed(findings, node);
                }
            }
        }
    }

    private void feed(Findings findings, Spot node) {
        String id = scene.tree().id(node);
        Figures volts = scene.of(node.table(), "volts");
        double has = volts.at(node.place());
        findings.add(ReviewCode.PASSIVE, Level.WARN, scene.place(node, "type"), () ->
                new Object[] {id, Say.of(has, Say.V)});
        for (Tree.Feed feed : scene.tree().below(node)) {
            fed(findings, feed.to(), id);
        }
    }

    private void fed(Findings findings, Spot node, String from) {
        String id = scene.tree().id(node);
        if (!scene.typed(node.table(), node.place(), "volts_floor")) {
            findings.add(ReviewCode.PASSIVE_FLOOR, Level.FAIL, scene.place(node, "volts_floor"), () ->
                    new Object[] {id, from});
        }
        String name = node.table() == Table.DEVICES ? "class" : "uplink_class";
        if (scene.typed(node.table(), node.place(), name)) {
            findings.add(ReviewCode.PASSIVE_CLASS, Level.WARN, scene.place(node, name), () -> new Object[] {id, from});
        }
    }
}
