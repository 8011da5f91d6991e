package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;

/** Whether each source and switch can give what is asked of it, and what it keeps in reserve. */
final class SupplyChecks implements Check {
    private final Scene scene;
    private final double target;

    SupplyChecks(Scene scene) {
        this.scene = scene;
        target = scene.of(Table.PLAN, "reserve_target").at(0);
    }

    @Override
    public void look(Findings findings) {
        for (Table table : Scene.NODES) {
            Figures sent = scene.of(table, "sent");
            Figures available = scene.of(table, "available");
            Figures bound = scene.of(table, "bound_by");
            for (int place = 0; place < scene.rows(table); place++) {
                double asked = sent.at(place);
                double can = available.at(place);
                if (Double.isNaN(asked) || Double.isNaN(can)) {
                    continue;
                }
                Spot node = new Spot(table, place);
                label(findings, node, can);
                if (Near.over(asked, can)) {
                    if (!isSaidByPort(node, can)) {
                        overload(findings, node, asked, can, Bound.of(bound.at(place)));
                    }
                } else if (can > 0 && Near.over(asked, can * (1 - target))) {
                    reserve(findings, node, asked, can, Bound.of(bound.at(place)));
                }
            }
        }
    }

    /** With a single port in use that is asked for too much, the port's own finding says it all. */
    private boolean isSaidByPort(Spot node, double available) {
        if (node.table() != Table.SOURCES || scene.tree().below(node).size() != 1) {
            return false;
        }
        int run = scene.tree().below(node).get(0).run();
        double most = PortChecks.limit(scene, node, run);
        return !Double.isNaN(most) && Near.reaches(available, most);
    }

    /** The budget on a switch's label against what its uplink can ever bring. */
    private void label(Findings findings, Spot node, double can) {
        if (node.table() != Table.SWITCHES || !scene.typed(node.table(), node.place(), "budget")) {
            return;
        }
        double guard = scene.of(Table.SWITCHES, "guard").at(node.place());
        double budget = scene.of(Table.SWITCHES, "budget").at(node.place());
        Bound bound = Bound.of(scene.of(Table.SWITCHES, "bound_by").at(node.place()));
        if (bound != Bound.BUDGET && Near.over(budget * (1 - guard), can)) {
            String id = scene.tree().id(node);
            findings.add(ReviewCode.LABEL, Level.NOTE, scene.place(node, "budget"), can, budget, () -> {
                String[] watts = Say.apart(budget, can, Say.W);
                return new Object[] {id, watts[0], watts[1], bound.called()};
            });
        }
    }

    private void overload(Findings findings, Spot node, double asked, double can, Bound bound) {
        Place place = scene.place(node, "reserve");
        String id = scene.tree().id(node);
        String run = PortChecks.feeder(scene, node);
        ReviewCode code = ReviewCode.OVERLOAD;
        findings.add(code, Level.FAIL, place, asked, can, () -> {
            String[] watts = Say.apart(asked, can, Say.W);
            String over = Say.of(asked - can, Say.W);
            return new Object[] {id, watts[0], watts[1], over, bound.called(), bound.whatHelps(run)};
        });
    }

    private void reserve(Findings findings, Spot node, double asked, double can, Bound bound) {
        Place place = scene.place(node, "reserve_share");
        String id = scene.tree().id(node);
        String run = PortChecks.feeder(scene, node);
        double share = (can - asked) / can;
        double wanted = target;
        findings.add(ReviewCode.RESERVE, Level.FAIL, place, share, wanted, () -> {
            String[] shares = Say.apart(share, wanted, Say.SHARE);
            String[] watts = Say.apart(asked, can, Say.W);
            String helps = bound.whatHelps(run);
            return new Object[] {id, shares[0], shares[1], watts[0], watts[1], bound.called(), helps};
        });
    }
}
