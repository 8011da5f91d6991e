package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Figures;
import farwatt.plan.Plan;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A plan taken apart into what hangs together: trees, and trees that share a bundle. Where nothing that was typed
 * speaks of rows elsewhere, one part alone has the figures that it has in the whole, and is quicker to solve.
 */
final class Part {
    /** Words that gather over a table, and paths to other rows; a row's own relations stay within its part. */
    private static final Pattern ELSEWHERE = Pattern.compile(
            "\\bof\\s|\\bcount\\b|\\bplan\\b|(?<!\\b(zone|run|feeder|from|to|bundle|this))(?<=[\\p{L}_'])\\.\\s*\\p{L}");

    private static final List<Table> APART = List.of(Table.SOURCES, Table.SWITCHES, Table.RUNS, Table.DEVICES);

    private final Calculation calc;
    private final Map<Table, Integer> bases = new EnumMap<>(Table.class);
    private final int[] head;
    private final boolean whole;
    private final Map<Integer, Plan> plans = new HashMap<>();

    Part(Calculation calc) {
        this.calc = calc;
        int rows = 0;
        for (Table table : APART) {
            bases.put(table, rows);
            rows += calc.rows(table);
        }
        head = new int[rows];
        Arrays.setAll(head, i -> i);
        whole = speaksOfOthers(calc.plan());
        Map<Spot, Integer> bundles = new HashMap<>();
        for (Tree.Feed feed : new Tree(calc).feeds()) {
            int run = base(Table.RUNS) + feed.run();
            join(run, number(feed.from()));
            join(run, number(feed.to()));
            calc.related(Table.RUNS, feed.run(), "bundle")
                    .ifPresent(b -> join(run, bundles.computeIfAbsent(b, x -> run)));
        }
    }

    private static boolean speaksOfOthers(Plan plan) {
        if (plan.rows(Table.NEEDS).size() > 0) {
            return true;
        }
        boolean[] found = new boolean[1];
        List<Table> all = new ArrayList<>(Table.site());
        all.addAll(List.of(Table.VALUES, Table.PRACTICE, Table.PLAN));
        for (Table table : all) {
            for (Row row : plan.rows(table)) {
                row.forEach((name, cell) -> found[0] |=
                        isExpression(name) && ELSEWHERE.matcher(cell.text()).find());
            }
        }
        return found[0];
    }

    private static boolean isExpression(String name) {
        return switch (name) {
            case "note", "why", "from", "to", "zone", "bundle", "name", "kind", "building" -> false;
            default -> true;
        };
    }

    private int base(Table table) {
        return bases.getOrDefault(table, 0);
    }

    private int number(Spot spot) {
        return base(spot.table()) + spot.place();
    }

    private int top(int row) {
        int at = row;
        while (head[at] != at) {
            head[at] = head[head[at]];
            at = head[at];
        }
        return at;
    }

    private void join(int one, int other) {
        head[top(one)] = top(other);
    }

    /** The number of the part that a place belongs to; −1 for what is the whole plan's. */
    int of(Place place) {
        Optional<Table> table = Table.of(place.table()).filter(APART::contains);
        int at = table.map(t -> calc.plan().rows(t).place(place.row())).orElse(-1);
        return whole || at < 0 ? -1 : top(base(table.orElseThrow()) + at);
    }

    /** The plan of a part alone. */
    Plan plan(int part) {
        return part < 0 ? calc.plan() : plans.computeIfAbsent(part, this::cut);
    }

    private Plan cut(int part) {
        Plan plan = calc.plan();
        for (Table table : APART) {
            List<Row> rows = new ArrayList<>();
            for (int place = 0; place < calc.rows(table); place++) {
                if (top(base(table) + place) == part) {
                    rows.add(plan.rows(table).at(place));
                }
            }
            plan = plan.with(table, Rows.of(rows));
        }
        return plan;
    }

    /** The least reserve share outside a part over some corners; NaN where there is none. */
    double leastOutside(int part, Iterable<Corner> corners) {
        double least = Double.NaN;
        if (part < 0) {
            return least;
        }
        Corner before = calc.corner();
        for (Corner corner : corners) {
            calc.look(corner);
            for (Table table : Scene.NODES) {
                Figures sent = calc.figures(table, "sent");
                Figures available = calc.figures(table, "available");
                Figures shares = calc.figures(table, "reserve_share");
                for (int place = 0; place < calc.rows(table); place++) {
                    if (top(base(table) + place) != part) {
                        double share = CornerFigures.share(sent.at(place), available.at(place), shares.at(place));
                        least = Double.isNaN(share) || share >= least ? least : share;
                    }
                }
            }
        }
        calc.look(before);
        return least;
    }
}
