package farwatt.engine;

import static farwatt.plan.Table.PLAN;

import farwatt.plan.Table;
import farwatt.report.Place;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Answers for the plan as a whole that are no plain sum over one table. */
final class PlanRules {
    private final Columns columns;
    private final Topology topology;
    private final Faults faults;

    PlanRules(Columns columns, Topology topology, Faults faults) {
        this.columns = columns;
        this.topology = topology;
        this.faults = faults;
    }

    List<Vertex> vertices() {
        List<Col> shares = of("reserve_share", Table.SOURCES, Table.SWITCHES);
        List<Col> prices = of("price", Table.SOURCES, Table.SWITCHES, Table.DEVICES);
        prices.addAll(of("length", Table.RUNS));
        prices.addAll(of("price_per_length", Table.RUNS));
        prices.addAll(of("slack", PLAN));
        List<Vertex> all = new ArrayList<>();
        all.add(new RuleVertex(columns.need(PLAN, "least_reserve_share"), p -> leastShare(shares), wide(shares)));
        all.add(new RuleVertex(columns.need(PLAN, "cost"), p -> cost(), wide(prices)));
        for (String counted : List.of("fails", "warnings")) {
            double why = faults.raise(
                    Fault.Kind.NOT_APPLICABLE, new Place(PLAN.key(), "", counted), EngineCode.COUNTED_LATER, counted);
            all.add(new RuleVertex(columns.need(PLAN, counted), p -> why, List.of()));
        }
        return all;
    }

    private List<Col> of(String name, Table... tables) {
        List<Col> found = new ArrayList<>();
        for (Table table : tables) {
            found.add(columns.need(table, name));
        }
        return found;
    }

    private static List<Dep> wide(List<Col> cols) {
        return cols.stream().map(Dep::all).toList();
    }

    /** Rows out of use do not count; a node without a limit has no share to be the least. */
    private double leastShare(List<Col> shares) {
        double least = Double.POSITIVE_INFINITY;
        for (Col col : shares) {
            for (int place = 0; place < col.v.length; place++) {
                double share = col.v[place];
                if (!Double.isNaN(share)) {
                    least = Math.min(least, share);
                } else if (blocks(share)) {
                    return share;
                }
            }
        }
        Place place = new Place(PLAN.key(), "", "least_reserve_share");
        return Double.isInfinite(least) ? faults.raise(Fault.Kind.NOT_APPLICABLE, place, EngineCode.NO_NODES) : least;
    }

    private boolean blocks(double fault) {
        Fault.Kind kind = faults.kind(fault);
        return kind != Fault.Kind.OUT_OF_USE && kind != Fault.Kind.NOT_APPLICABLE;
    }

    /** Exact until the end, so that the order of rows decides nothing. */
    private double cost() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES, Table.DEVICES)) {
            Col price = columns.need(table, "price");
            for (int place = 0; place < price.v.length; place++) {
                double each = orZero(price, place);
                if (Double.isNaN(each)) {
                    return each;
                }
                sum = each == 0 ? sum : sum.add(new BigDecimal(each));
            }
        }
        Col length = columns.need(Table.RUNS, "length");
        Col price = columns.need(Table.RUNS, "price_per_length");
        double slack = columns.need(PLAN, "slack").v[0];
        for (int place = 0; place < length.v.length; place++) {
            double each = orZero(price, place);
            double run = each == 0 ? 0 : Double.isNaN(each) ? each : each * length.v[place] * (1 + slack);
            if (Double.isNaN(run)) {
                return run;
            }
            sum = run == 0 ? sum : sum.add(new BigDecimal(run));
        }
        return sum.doubleValue();
    }

    private double orZero(Col price, int place) {
        int row = price.base + place;
        boolean unused = topology.outside[row] != 0 && faults.kind(topology.outside[row]) == Fault.Kind.OUT_OF_USE;
        return unused || faults.isBlank(price, place) ? 0 : price.v[place];
    }
}
