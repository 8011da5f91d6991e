package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.plan.Table;
import farwatt.review.Review;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one source or switch can give and gives in one corner.
 *
 * @param available watts, NaN where there is no figure
 * @param sent watts, NaN where there is no figure
 * @param share left of what is available, NaN where there is no figure
 * @param bound which limit sets what is available, "" where there is no figure
 * @param why there is no figure, "" if there is
 */
record NodePower(
        Table table,
        String id,
        Corner corner,
        double available,
        double sent,
        double reserve,
        double share,
        String bound,
        String why) {

    /** Every source and switch in every corner that was reviewed; the calculation looks where it did before. */
    static List<NodePower> of(Calculation calc, Review review) {
        Corner before = calc.corner();
        List<NodePower> all = new ArrayList<>();
        try {
            for (Corner corner : Corner.values()) {
                boolean reviewed = review.corners().isEmpty()
                        ? corner == before
                        : review.corners().containsKey(corner);
                if (reviewed) {
                    calc.look(corner);
                    add(calc, Table.SOURCES, corner, all);
                    add(calc, Table.SWITCHES, corner, all);
                }
            }
        } finally {
            calc.look(before);
        }
        return all;
    }

    private static void add(Calculation calc, Table table, Corner corner, List<NodePower> all) {
        for (int place : InUse.places(calc, table)) {
            Value available = calc.value(table, place, "available");
            Value share = calc.value(table, place, "reserve_share");
            String why = available
                    .fault()
                    .or(share::fault)
                    .map(fault -> fault.text())
                    .orElse("");
            all.add(new NodePower(
                    table,
                    calc.id(table, place),
                    corner,
                    plain(available),
                    plain(calc.value(table, place, "sent")),
                    plain(calc.value(table, place, "reserve")),
                    plain(share),
                    calc.value(table, place, "bound_by").words(),
                    why));
        }
    }

    private static double plain(Value value) {
        return value.isPresent() ? value.inside() : Double.NaN;
    }

    /** For each node the corner in which it has the least left, or has no figure; the weakest node first. */
    static List<NodePower> weakest(List<NodePower> all) {
        Map<String, NodePower> least = new LinkedHashMap<>();
        Comparator<NodePower> order = Comparator.comparingDouble(NodePower::rank);
        for (NodePower one : all) {
            least.merge(one.table() + "/" + one.id(), one, (a, b) -> order.compare(b, a) < 0 ? b : a);
        }
        return least.values().stream().sorted(order).toList();
    }

    /** A node without a figure is worse than any that has one. */
    private double rank() {
        return Double.isNaN(share) ? Double.NEGATIVE_INFINITY : share;
    }

    /** Which of them is meant, in words. */
    String kind() {
        return table == Table.SOURCES ? "source" : "switch";
    }
}
