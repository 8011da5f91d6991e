package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.Figures;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Who feeds whom, as the engine found it; the same in every corner. */
final class Tree {
    /**
     * A run in use with its two ends.
     *
     * @param run its place
     */
    record Feed(int run, Spot from, Spot to) {}

    private final Calculation calc;
    private final List<Feed> feeds = new ArrayList<>();
    private final Map<Spot, Feed> feedOf = new HashMap<>();
    private final Map<Spot, List<Feed>> below = new HashMap<>();
    private final int[] turns;

    Tree(Calculation calc) {
        this.calc = calc;
        Map<Integer, Feed> byRun = new HashMap<>();
        for (Table table : List.of(Table.SWITCHES, Table.DEVICES)) {
            for (int place = 0; place < calc.rows(table); place++) {
                Optional<Spot> run = calc.related(table, place, "run");
                Optional<Spot> from = calc.related(table, place, "feeder");
                if (run.isPresent() && from.isPresent()) {
                    Spot to = new Spot(table, place);
                    byRun.put(run.get().place(), new Feed(run.get().place(), from.get(), to));
                }
            }
        }
        for (int run = 0; run < calc.rows(Table.RUNS); run++) {
            Feed feed = byRun.get(run);
            if (feed != null) {
                feeds.add(feed);
                feedOf.put(feed.to(), feed);
                below.computeIfAbsent(feed.from(), n -> new ArrayList<>()).add(feed);
            }
        }
        Comparator<Feed> order = order();
        turns = new int[calc.rows(Table.RUNS)];
        for (List<Feed> asking : below.values()) {
            asking.sort(order);
            for (int i = 0; i < asking.size(); i++) {
                turns[asking.get(i).run()] = i + 1;
            }
        }
    }

    /** The order in which ports ask: priority, port number, id. What has none asks last. */
    private Comparator<Feed> order() {
        Figures device = calc.figures(Table.DEVICES, "priority");
        Figures edge = calc.figures(Table.SWITCHES, "priority");
        Figures port = calc.figures(Table.RUNS, "port");
        Comparator<Feed> byPriority =
                Comparator.comparingDouble(f -> (f.to().table() == Table.DEVICES ? device : edge).at(f.to().place()));
        // a NaN sorts behind every number
        return byPriority.thenComparingDouble(f -> port.at(f.run())).thenComparing(f -> id(f.to()), NaturalOrder.IDS);
    }

    String id(Spot spot) {
        return calc.id(spot.table(), spot.place());
    }

    /** Runs in use that lead from somewhere to somewhere, in the plan's order. */
    List<Feed> feeds() {
        return feeds;
    }

    /** What feeds a node; empty for a source and for what nothing feeds. */
    Optional<Feed> feedOf(Spot node) {
        return Optional.ofNullable(feedOf.get(node));
    }

    /** What a node feeds, in the order in which it asks for power. */
    List<Feed> below(Spot node) {
        return below.getOrDefault(node, List.of());
    }

    /** At which turn, from 1, the far end of a run asks its feeder for power. */
    int turn(Feed feed) {
        return turns[feed.run()];
    }

    /** Every source and switch that feeds something, each after all below it. */
    List<Spot> leavesFirst() {
        Deque<Spot> open = new ArrayDeque<>();
        for (int place = 0; place < calc.rows(Table.SOURCES); place++) {
            open.add(new Spot(Table.SOURCES, place));
        }
        List<Spot> found = new ArrayList<>();
        while (!open.isEmpty()) {
            Spot node = open.removeFirst();
            if (below.containsKey(node)) {
                found.add(node);
                below(node).forEach(feed -> open.add(feed.to()));
            }
        }
        Collections.reverse(found);
        return found;
    }

    /** The run on the way to a node that leaves the source; a ring cannot be here. */
    Feed head(Feed feed) {
        Feed at = feed;
        for (Optional<Feed> up = feedOf(at.from()); up.isPresent(); up = feedOf(at.from())) {
            at = up.get();
        }
        return at;
    }
}
