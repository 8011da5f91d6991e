package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;

/** Whether devices and switches get the volts they need. */
final class VoltsChecks implements Check {
    private final Scene scene;

    VoltsChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        floors(findings, Table.SWITCHES, "volts_in", ReviewCode.FLOOR_SWITCH);
        floors(findings, Table.DEVICES, "volts", ReviewCode.FLOOR);
        cliffs(findings);
    }

    /** Near the most that can arrive at all, a little more load or heat lets the volts collapse. */
    private void cliffs(Findings findings) {
        Figures share = scene.of(Table.RUNS, "cliff_share");
        double limit = scene.limit("cliff_near");
        for (Tree.Feed feed : scene.tree().feeds()) {
            double has = share.at(feed.run());
            if (Near.reaches(has, limit)) {
                String id = scene.id(Table.RUNS, feed.run());
                Place place = scene.place(Table.RUNS, feed.run(), "cliff_share");
                findings.add(ReviewCode.CLIFF, Level.WARN, place, has, limit, () ->
                        new Object[] {id, Say.of(has, Say.SHARE)});
            }
        }
    }

    private void floors(Findings findings, Table table, String name, ReviewCode code) {
        Figures volts = scene.of(table, name);
        Figures floor = scene.of(table, "volts_floor");
        for (int place = 0; place < scene.rows(table); place++) {
            double has = volts.at(place);
            double needs = floor.at(place);
            if (Near.under(has, needs)) {
                Spot node = new Spot(table, place);
                String id = scene.tree().id(node);
                String run = PortChecks.feeder(scene, node);
                findings.add(code, Level.FAIL, scene.place(node, name), has, needs, () -> {
                    String[] both = Say.apart(has, needs, Say.V);
                    return new Object[] {id, both[0], both[1], Say.of(needs - has, Say.V), run};
                });
            }
        }
    }
}
