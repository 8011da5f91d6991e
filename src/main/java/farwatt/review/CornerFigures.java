package farwatt.review;

import farwatt.engine.Figures;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;

/**
 * What the verdict needs to know of one corner.
 *
 * @param leastShare least reserve share, NaN where there is none; a node that can give nothing counts as −1
 * @param leastAt the node with it; a spot before the first row where there is none
 * @param bound word of what limits that node
 * @param leastHeadroom least volts above a floor, NaN where there is none
 * @param broken true if some tree has no operating point
 */
record CornerFigures(double leastShare, Spot leastAt, double bound, double leastHeadroom, boolean broken) {
    private static final Spot NOWHERE = new Spot(Table.PLAN, 0);

    /** Of the corner looked at. */
    static CornerFigures of(Scene scene) {
        double least = Double.NaN;
        Spot at = NOWHERE;
        double bound = Double.NaN;
        boolean broken = false;
        for (Table table : Scene.NODES) {
            Figures sent = scene.of(table, "sent");
            Figures available = scene.of(table, "available");
            Figures shares = scene.of(table, "reserve_share");
            Figures word = scene.of(table, "bound_by");
            for (int place = 0; place < scene.rows(table); place++) {
                double share = share(sent.at(place), available.at(place), shares.at(place));
                if (Double.isNaN(share)) {
                    broken |= Double.isNaN(sent.at(place)) && isBroken(scene, sent.at(place));
                } else if (Double.isNaN(least) || Near.under(share, least)) {
                    least = share;
                    at = new Spot(table, place);
                    bound = word.at(place);
                }
            }
        }
        return new CornerFigures(least, at, bound, headroom(scene), broken);
    }

    static double share(double sent, double available, double share) {
        return available == 0 && sent > 0 ? -1 : share;
    }

    private static boolean isBroken(Scene scene, double fault) {
        return switch (scene.fault(fault).kind()) {
            case NO_OPERATING_POINT, RUNAWAY -> true;
            default -> false;
        };
    }

    private static double headroom(Scene scene) {
        Figures headroom = scene.of(Table.DEVICES, "headroom");
        double least = Double.NaN;
        for (int place = 0; place < scene.rows(Table.DEVICES); place++) {
            double volts = headroom.at(place);
            if (!Double.isNaN(volts) && !(volts >= least)) {
                least = volts;
            }
        }
        return least;
    }

    boolean hasReserve() {
        return !Double.isNaN(leastShare);
    }
}
