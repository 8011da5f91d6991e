package farwatt.engine;

import static farwatt.plan.Table.RUNS;

import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/** How far data reaches over each run at its wire's temperature (ISO/IEC 11801, TIA-568; practice, editable). */
final class RunRules {
    private static final double REFERENCE = 20;
    private static final double WARM_FROM = 40;

    private final Columns columns;
    private final Practice practice;

    RunRules(Columns columns, Practice practice) {
        this.columns = columns;
        this.practice = practice;
    }

    List<Vertex> vertices() {
        Col temp = columns.need(RUNS, "wire_temp");
        Col cord = columns.need(RUNS, "cord_length");
        Col cordGauge = columns.need(RUNS, "cord_gauge");
        Col screened = columns.need(RUNS, "screened");
        List<Dep> deps = new ArrayList<>();
        for (Col col : List.of(temp, cord, cordGauge, screened)) {
            deps.add(Dep.here(col));
        }
        deps.add(Dep.all(practice.column()));
        return List.of(new RuleVertex(
                columns.need(Table.RUNS, "reach"),
                p -> {
                    for (Col col : List.of(temp, cord, cordGauge, screened)) {
                        if (Double.isNaN(col.v[p])) {
                            return col.v[p];
                        }
                    }
                    return reach(temp.v[p], cord.v[p], cordGauge.v[p], screened.v[p] == 1);
                },
                deps));
    }

    /**
     * Longest fixed part in metres: the stricter of the electrical length, in which warm cable and cords count for
     * more, and the plain length.
     */
    double reach(double celsius, double cord, double cordGauge, boolean screened) {
        double electrical = practice.value("reach_total") - cord * cordFactor(cordGauge);
        double byLoss = electrical / (1 + growth(celsius, screened));
        return Math.max(0, Math.min(byLoss, practice.value("reach_most") - cord));
    }

    private double growth(double celsius, boolean screened) {
        double over = Math.max(0, celsius - REFERENCE);
        if (screened) {
            return over * practice.value("growth_screened");
        }
        double cool = Math.min(over, WARM_FROM - REFERENCE);
        return cool * practice.value("growth_cool") + (over - cool) * practice.value("growth_warm");
    }

    private double cordFactor(double gauge) {
        return practice.value(gauge < 25 ? "cord_factor_24" : gauge < 27 ? "cord_factor_26" : "cord_factor_28");
    }
}
