package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;

/** Whether each device draws enough in typical use that its port keeps it on (IEEE 802.3 clauses 33 and 145). */
final class HoldChecks implements Check {
    private static final int TWO_PAIR_CLASSES = 4;

    private final Scene scene;

    HoldChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        Figures typical = scene.of(Table.DEVICES, "draw_typical");
        Figures granted = scene.of(Table.DEVICES, "class_granted");
        Figures volts = scene.of(Table.RUNS, "volts_near");
        double low = scene.limit("hold_low");
        double high = scene.limit("hold_high");
        for (Tree.Feed feed : scene.tree().feeds()) {
            Spot node = feed.to();
            if (node.table() != Table.DEVICES || Double.isNaN(granted.at(node.place()))) {
                continue;
            }
            double amps = typical.at(node.place()) / volts.at(feed.run());
            double least = granted.at(node.place()) > TWO_PAIR_CLASSES ? high : low;
            if (Near.under(amps, least)) {
                hold(findings, node, typical.at(node.place()), amps, least);
            }
        }
    }

    private void hold(Findings findings, Spot node, double watts, double amps, double least) {
        String id = scene.tree().id(node);
        findings.add(ReviewCode.HOLD, Level.WARN, scene.place(node, "draw_typical"), amps, least, () -> {
            String[] both = Say.apart(amps, least, Say.MA);
            return new Object[] {id, Say.of(watts, Say.W), both[0], both[1]};
        });
    }
}
