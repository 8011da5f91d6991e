package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Whether switches and devices stand the weather of their zones. */
final class GearChecks implements Check {
    private final Scene scene;
    private final Map<String, Optional<Ingress>> known = new HashMap<>();

    GearChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        for (Table table : Scene.FED) {
            for (int place = 0; place < scene.rows(table); place++) {
                Optional<Spot> zone = scene.calc().related(table, place, "zone");
                if (zone.isPresent() && scene.inUse(table, place)) {
                    Spot node = new Spot(table, place);
                    ingress(findings, node, zone.get());
                    warmth(findings, node, zone.get());
                }
            }
        }
    }

    private void ingress(Findings findings, Spot node, Spot zone) {
        String needed = scene.text(Table.ZONES, zone.place(), "ingress_need");
        if (needed.isEmpty()) {
            return;
        }
        String rated = scene.text(node.table(), node.place(), "ingress");
        Place place = scene.place(node, "ingress");
        Object[] parts = {scene.tree().id(node), rated, scene.tree().id(zone), needed};
        if (rated.isEmpty()) {
            findings.add(ReviewCode.INGRESS_UNSAID, Level.WARN, place, () -> parts);
            return;
        }
        Optional<Ingress> need = ingress(needed);
        Ingress.Fit fit = ingress(rated).flatMap(r -> need.map(r::fit)).orElse(Ingress.Fit.UNKNOWN);
        switch (fit) {
            case TOO_LITTLE -> findings.add(ReviewCode.INGRESS, Level.FAIL, place, () -> parts);
            case OTHER_WATER -> findings.add(ReviewCode.INGRESS_OTHER, Level.WARN, place, () -> parts);
            case UNKNOWN -> findings.add(ReviewCode.INGRESS_UNREAD, Level.WARN, place, () -> parts);
            case ENOUGH -> {
                // nothing to say
            }
        }
    }

    private Optional<Ingress> ingress(String text) {
        return known.computeIfAbsent(text, Ingress::of);
    }

    private void warmth(Findings findings, Spot node, Spot zone) {
        Figures coldest = scene.of(Table.ZONES, "coldest");
        Figures hottest = scene.of(Table.ZONES, "hottest");
        Figures sun = scene.of(Table.ZONES, "sun");
        double cold = coldest.at(zone.place());
        double hot = hottest.at(zone.place()) + sun.at(zone.place());
        double coldRated = scene.of(node.table(), "coldest_rated").at(node.place());
        double hotRated = scene.of(node.table(), "hottest_rated").at(node.place());
        if (Near.under(cold, coldRated)) {
            rated(findings, ReviewCode.TOO_COLD, scene.place(node, "coldest_rated"), zone, cold, coldRated);
        }
        if (Near.over(hot, hotRated)) {
            rated(findings, ReviewCode.TOO_HOT, scene.place(node, "hottest_rated"), zone, hot, hotRated);
        }
    }

    private void rated(Findings findings, ReviewCode code, Place place, Spot zone, double air, double rated) {
        String where = scene.tree().id(zone);
        findings.add(code, Level.FAIL, place, air, rated, () -> {
            String[] both = Say.apart(air, rated, Say.CELSIUS);
            return new Object[] {place.row(), where, both[0], both[1]};
        });
    }
}
