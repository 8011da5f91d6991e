package farwatt.review;

import farwatt.engine.Fault;
import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import java.util.Optional;

/** Whether each port gives what its run takes, and each switch keeps to its right. */
final class PortChecks implements Check {
    private static final double EXTENDED = 1;

    private final Scene scene;

    PortChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures sent = scene.of(Table.RUNS, "sent");
        for (Tree.Feed feed : scene.tree().feeds()) {
            double most = limit(scene, feed.from(), feed.run());
            double asked = sent.at(feed.run());
            if (Near.over(asked, most) && !isShort(feed.to())) {
                port(findings, feed, asked, most);
            }
        }
        rights(findings);
    }

    /** Most watts of the port that a run leaves from; infinite where nothing limits it. */
    static double limit(Scene scene, Spot node, int run) {
        double own = orNone(scene, scene.of(Table.RUNS, "port_limit").at(run));
        double all = orNone(scene, scene.of(node.table(), "port_limit").at(node.place()));
        return Math.min(own, all);
    }

    private static double orNone(Scene scene, double limit) {
        boolean empty = Double.isNaN(limit) && scene.fault(limit).kind() == Fault.Kind.EMPTY;
        return empty ? Double.POSITIVE_INFINITY : limit;
    }

    /** True for a switch whose own finding says that it is asked for more than it can give. */
    private boolean isShort(Spot node) {
        if (node.table() != Table.SWITCHES) {
            return false;
        }
        double asked = scene.of(Table.SWITCHES, "sent").at(node.place());
        return Near.over(asked, scene.of(Table.SWITCHES, "available").at(node.place()));
    }

    private void port(Findings findings, Tree.Feed feed, double asked, double most) {
        String run = scene.id(Table.RUNS, feed.run());
        String from = scene.tree().id(feed.from());
        String to = scene.tree().id(feed.to());
        findings.add(
                ReviewCode.PORT_LIMIT, Level.FAIL, scene.place(Table.RUNS, feed.run(), "sent"), asked, most, () -> {
                    String[] watts = Say.apart(asked, most, Say.W);
                    return new Object[] {run, from, to, watts[0], watts[1], Say.of(asked - most, Say.W)};
                });
    }

    /** A switch may take no more than its class's device watts, unless it knows its cable. */
    private void rights(Findings findings) {
        Figures received = scene.of(Table.SWITCHES, "received");
        Figures granted = scene.of(Table.SWITCHES, "class_granted");
        Figures right = scene.of(Table.SWITCHES, "uplink_right");
        for (int place = 0; place < scene.rows(Table.SWITCHES); place++) {
            Spot node = new Spot(Table.SWITCHES, place);
            double takes = received.at(place);
            double may = Scene.deviceWatts(granted.at(place));
            if (right.at(place) != EXTENDED && Near.over(takes, may) && !isShort(node)) {
                String id = scene.tree().id(node);
                int number = (int) granted.at(place);
                findings.add(ReviewCode.RIGHT, Level.FAIL, scene.place(node, "received"), takes, may, () -> {
                    String[] watts = Say.apart(takes, may, Say.W);
                    return new Object[] {id, watts[0], watts[1], number};
                });
            }
        }
    }

    /** The run that feeds a node, by its id; "" for a source. */
    static String feeder(Scene scene, Spot node) {
        Optional<Tree.Feed> feed = scene.tree().feedOf(node);
        return feed.map(f -> scene.id(Table.RUNS, f.run())).orElse("");
    }
}
