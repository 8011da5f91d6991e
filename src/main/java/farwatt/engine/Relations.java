package farwatt.engine;

import farwatt.plan.Plan;
import farwatt.plan.Table;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/** The relations between rows that expressions may follow. */
final class Relations {
    /** From a device or switch to the run that feeds it. */
    final Relation run;
    /** The same for one outside the trees too: to the run that would feed it if it could. */
    final Relation wouldFeed;
    /** From a device or switch to the node that feeds it. */
    final Relation feeder;
    /** From a run to its two ends. */
    final Relation from;

    final Relation to;
    final Relation zone;
    final Relation bundle;
    private final Map<String, Relation> byName;
    private final Layout layout;

    /**
     * @param zoneCell by row: the zone it names and that is in use, −1 if none
     * @param bundleCell the same for bundles
     */
    Relations(Layout layout, Topology topology, Faults faults, int[] zoneCell, int[] bundleCell) {
        this.layout = layout;
        int rows = layout.rows();
        IntToDoubleFunction why =
                row -> topology.outside[row] != 0 ? topology.outside[row] : faults.lack(Lack.NO_RELATION, row);
        IntToDoubleFunction unzoned = row -> faults.lack(Lack.NO_ZONE, row);
        int[] feeders = new int[rows];
        int[] feedRuns = new int[rows];
        Arrays.fill(feeders, -1);
        Arrays.fill(feedRuns, -1);
        for (int row = 0; row < rows; row++) {
            int by = topology.feedRun[row];
            if (by >= 0 && topology.outside[row] == 0) {
                feedRuns[row] = by;
                feeders[row] = topology.from[by];
            }
        }
        run = new Relation("run", feedRuns, why);
        wouldFeed = new Relation("run", topology.feedRun, why);
        feeder = new Relation("feeder", feeders, why);
        from = new Relation("from", topology.from, why);
        to = new Relation("to", topology.to, why);
        zone = new Relation("zone", zoneCell, unzoned);
        bundle = new Relation("bundle", bundleCell, why);
        byName = Map.of("run", run, "feeder", feeder, "from", from, "to", to, "zone", zone, "bundle", bundle);
    }

    /** The relation of this name that rows of a table have. */
    Optional<Relation> of(Table table, String name) {
        boolean has = switch (name) {
            case "run", "feeder" -> table == Table.DEVICES || table == Table.SWITCHES;
            case "from", "to", "bundle" -> table == Table.RUNS;
            case "zone" -> table.isSite() && table != Table.ZONES && table != Table.BUNDLES;
            default -> false;
        };
        return has ? Optional.ofNullable(byName.get(name)) : Optional.empty();
    }

    /** The row that a relation leads to from the row at a place; empty where it leads nowhere. */
    Optional<Plan.Spot> spot(Table table, int place, String relation) {
        int row = layout.base(table) + place;
        int end = of(table, relation).map(r -> r.follow(row)).orElse(-1);
        return end < 0 ? Optional.empty() : Optional.of(layout.spot(end));
    }
}
