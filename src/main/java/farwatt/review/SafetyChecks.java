package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;

/** Volts and watts of ports against what is extra-low voltage and limited power. */
final class SafetyChecks implements Check {
    private static final double DIRECT = 1;

    private final Scene scene;

    SafetyChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        double most = scene.limit("volts_most");
        double extraLow = scene.limit("volts_extra_low");
        double limited = scene.limit("watts_limited");
        for (Table table : Scene.NODES) {
            Figures volts = scene.of(table, "volts");
            Figures watts = scene.of(table, "port_limit");
            for (int place = 0; place < scene.rows(table); place++) {
                Spot node = new Spot(table, place);
                if (!scene.inUse(table, place)) {
                    continue;
                }
                double has = passesOn(node) ? Double.NaN : volts.at(place);
                if (Near.over(has, extraLow)) {
                    add(findings, ReviewCode.EXTRA_LOW, node, "volts", Say.apart(has, extraLow, Say.V), has, extraLow);
                } else if (!scene.passive(node) && Near.over(has, most)) {
                    add(findings, ReviewCode.VOLTS_MOST, node, "volts", Say.apart(has, most, Say.V), has, most);
                }
                double gives = watts.at(place);
                if (Near.over(gives, limited)) {
                    String[] both = Say.apart(gives, limited, Say.VA);
                    add(findings, ReviewCode.WATTS_LIMITED, node, "port_limit", both, gives, limited);
                }
            }
        }
    }

    /** A direct switch makes no volts of its own. */
    private boolean passesOn(Spot node) {
        return node.table() == Table.SWITCHES
                && scene.of(Table.SWITCHES, "mode").at(node.place()) == DIRECT;
    }

    private void add(
            Findings findings, ReviewCode code, Spot node, String name, String[] both, double has, double limit) {
        String id = scene.tree().id(node);
        findings.add(code, Level.FAIL, scene.place(node, name), has, limit, () -> new Object[] {id, both[0], both[1]});
    }
}
