package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.Map;

/** Whether every run finds a port of its own. */
final class SocketChecks implements Check {
    private final Scene scene;

    SocketChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures port = scene.of(Table.RUNS, "port");
        for (Table table : Scene.NODES) {
            Figures there = scene.of(table, "ports");
            for (int place = 0; place < scene.rows(table); place++) {
                Spot node = new Spot(table, place);
                int used = scene.tree().below(node).size();
                if (Near.over(used, there.at(place))) {
                    Object[] parts = {scene.tree().id(node), used, (int) there.at(place)};
                    Place where = scene.place(node, "ports_used");
                    findings.add(ReviewCode.PORTS, Level.FAIL, where, used, there.at(place), () -> parts);
                }
                numbers(findings, node, port, there.at(place));
            }
        }
    }

    private void numbers(Findings findings, Spot node, Figures port, double there) {
        Map<Integer, Integer> taken = new HashMap<>();
        for (Tree.Feed feed : scene.tree().below(node)) {
            double number = port.at(feed.run());
            if (Double.isNaN(number)) {
                continue;
            }
            Place place = scene.place(Table.RUNS, feed.run(), "port");
            String from = scene.tree().id(node);
            if (Near.over(number, there)) {
                Object[] parts = {place.row(), from, (int) number, (int) there};
                findings.add(ReviewCode.PORT_NUMBER, Level.FAIL, place, number, there, () -> parts);
            }
            Integer other = taken.putIfAbsent((int) number, feed.run());
            if (other != null) {
                Object[] parts = {place.row(), from, (int) number, scene.id(Table.RUNS, other)};
                findings.add(ReviewCode.PORT_TWICE, Level.FAIL, place, () -> parts);
            }
        }
    }
}
