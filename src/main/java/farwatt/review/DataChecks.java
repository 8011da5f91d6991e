package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;

/** Data over uplinks, and how many edge switches stand in a row (practice, editable). */
final class DataChecks implements Check {
    private final Scene scene;

    DataChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        for (Table table : Scene.NODES) {
            Figures traffic = scene.of(table, "traffic");
            Figures link = scene.of(table, "link");
            for (int place = 0; place < scene.rows(table); place++) {
                if (Near.over(traffic.at(place), link.at(place))) {
                    link(findings, new Spot(table, place), traffic.at(place), link.at(place));
                }
            }
        }
        hops(findings);
    }

    private void link(Findings findings, Spot node, double traffic, double link) {
        String id = scene.tree().id(node);
        findings.add(ReviewCode.LINK, Level.FAIL, scene.place(node, "traffic"), traffic, link, () -> {
            String[] both = Say.apart(traffic, link, Say.RATE);
            return new Object[] {id, both[0], both[1]};
        });
    }

    private void hops(Findings findings) {
        Figures hops = scene.of(Table.SWITCHES, "hop");
        double usual = scene.limit("hops_usual");
        double most = scene.limit("hops_most");
        double wanted = scene.limit("hops_port");
        for (Tree.Feed feed : scene.tree().feeds()) {
            double hop = feed.to().table() == Table.SWITCHES ? hops.at(feed.to().place()) : Double.NaN;
            if (!Near.over(hop, usual)) {
                continue;
            }
            String id = scene.tree().id(feed.to());
            Place place = scene.place(feed.to(), "hop");
            int count = (int) hop;
            if (Near.over(hop, most)) {
                findings.add(ReviewCode.HOPS, Level.FAIL, place, hop, most, () -> new Object[] {id, count, (int) most});
                continue;
            }
            // only now, since the way up a long chain is long
            Tree.Feed head = scene.tree().head(feed);
            double port = PortChecks.limit(scene, head.from(), head.run());
            if (Near.under(port, wanted)) {
                String[] both = Say.apart(port, wanted, Say.W);
                String from = scene.tree().id(head.from());
                findings.add(ReviewCode.HOPS_PORT, Level.FAIL, place, port, wanted, () ->
                        new Object[] {id, count, from, both[0], both[1]});
            } else {
                findings.add(ReviewCode.HOPS_MANY, Level.NOTE, place, hop, usual, () ->
                        new Object[] {id, count, (int) usual});
            }
        }
    }
}
