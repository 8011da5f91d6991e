package farwatt.engine;

import static farwatt.plan.Table.PLAN;

import farwatt.plan.NaturalOrder;
import farwatt.plan.Table;
import farwatt.report.Place;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Answers for the plan as a whole that are no plain sum over one table. */
final class PlanRules {
    private static final int NONE = -1;

    private final Layout layout;
    private final Columns columns;
    private final Topology topology;
    private final Faults faults;

    PlanRules(Layout layout, Columns columns, Topology topology, Faults faults) {
        this.layout = layout;
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
            int blocked = NONE;
            for (int place = 0; place < col.v.length; place++) {
                double share = col.v[place];
                if (!Double.isNaN(share)) {
                    least = Math.min(least, share);
                } else if (blocks(share)) {
                    blocked = earlier(col, blocked, place);
                }
            }
            if (blocked != NONE) {
                return col.v[blocked];
            }
        }
        Place place = new Place(PLAN.key(), "", "least_reserve_share");
        return Double.isInfinite(least) ? faults.raise(Fault.Kind.NOT_APPLICABLE, place, EngineCode.NO_NODES) : least;
    }

    /** Of two places the one whose id stands first, so that the order of rows decides nothing. */
    private int earlier(Col col, int known, int other) {
        boolean first =
                known == NONE || NaturalOrder.IDS.compare(layout.id(col.base + other), layout.id(col.base + known)) < 0;
        return first ? other : known;
    }

    private boolean blocks(double fault) {
        Fault.Kind kind = faults.kind(fault);
        return kind != Fault.Kind.OUT_OF_USE && kind != Fault.Kind.NOT_APPLICABLE;
    }

    /** Exact until the end, so that the order of rows decides nothing. */
    private double cost() {
        BigDecimal sum = BigDecimal.ZERO;
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES, Table.DEVICES, Table.RUNS)) {
            Col price = columns.need(table, table == Table.RUNS ? "price_per_length" : "price");
            RowRule rule = table == Table.RUNS ? place -> cable(price, place) : place -> orZero(price, place);
            int blocked = NONE;
            for (int place = 0; place < price.v.length; place++) {
                double each = rule.at(place);
                if (!Double.isFinite(each)) {
                    blocked = earlier(price, blocked, place);
                } else if (each != 0) {
                    sum = sum.add(new BigDecimal(each));
                }
            }
            if (blocked != NONE) {
                return rule.at(blocked);
            }
        }
        return sum.doubleValue();
    }

    private double cable(Col price, int place) {
        double each = orZero(price, place);
        double metres = columns.need(Table.RUNS, "length").v[place];
        double slack = columns.need(PLAN, "slack").v[0];
        if (each == 0 || Double.isNaN(each)) {
            return each;
        }
        return Double.isNaN(metres) ? metres : Double.isNaN(slack) ? slack : each * metres * (1 + slack);
    }

    private double orZero(Col price, int place) {
        int row = price.base + place;
        return topology.isLeftOut(row) || faults.isBlank(price, place) ? 0 : price.v[place];
    }
}
