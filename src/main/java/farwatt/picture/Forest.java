package farwatt.picture;

import farwatt.engine.Still;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What feeds what among the rows in use, as trees.
 *
 * @param roots sources with all they feed, then what nothing feeds
 * @param undrawn ids of runs in use that feed nothing in a tree
 */
record Forest(List<Branch> roots, List<String> undrawn) {
    private static final List<Table> NODES = List.of(Table.SOURCES, Table.SWITCHES, Table.DEVICES);
    private static final Comparator<Branch> ORDER =
            Comparator.comparing((Branch b) -> b.table).thenComparing(b -> b.id, NaturalOrder.IDS);

    static Forest of(Still still) {
        Map<Spot, Branch> all = new LinkedHashMap<>();
        boolean[] drawn = new boolean[still.rows(Table.RUNS)];
        for (Table table : NODES) {
            for (int place = 0; place < still.rows(table); place++) {
                if (inUse(still, table, place)) {
                    all.put(new Spot(table, place), branch(still, table, place));
                }
            }
        }
        List<Branch> roots = new ArrayList<>();
        all.forEach((spot, branch) -> {
            Optional<Branch> feeder =
                    still.related(spot.table(), spot.place(), "feeder").flatMap(f -> Optional.ofNullable(all.get(f)));
            if (branch.run != Branch.NO_RUN && feeder.isPresent()) {
                feeder.get().children.add(branch);
                drawn[branch.run] = true;
            } else {
                roots.add(branch);
            }
        });
        roots.sort(ORDER);
        all.values().forEach(branch -> branch.children.sort(ORDER));
        List<String> undrawn = new ArrayList<>();
        for (int run = 0; run < drawn.length; run++) {
            if (!drawn[run] && inUse(still, Table.RUNS, run)) {
                undrawn.add(still.id(Table.RUNS, run));
            }
        }
        return new Forest(List.copyOf(roots), List.copyOf(undrawn));
    }

    private static boolean inUse(Still still, Table table, int place) {
        return still.need(table, place, "in_use").inside() != 0;
    }

    private static Branch branch(Still still, Table table, int place) {
        int run = table == Table.SOURCES
                ? Branch.NO_RUN
                : still.related(table, place, "run")
                        .filter(spot -> still.related(table, place, "feeder").isPresent())
                        .map(Spot::place)
                        .orElse(Branch.NO_RUN);
        return new Branch(table, place, still.id(table, place), run);
    }

    /** A tree's branches, feeders before what they feed; without recursion, since chains may be long. */
    static List<Branch> walk(Branch root) {
        List<Branch> order = new ArrayList<>();
        ArrayDeque<Branch> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            Branch next = open.removeFirst();
            order.add(next);
            open.addAll(next.children);
        }
        return order;
    }
}
