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
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plan taken apart into what hangs together: trees, and trees that share a bundle. Where nothing that was typed
 * speaks of rows elsewhere, one part alone has the figures that it has in the whole, and is quicker to solve.
 */
final class Part {
    /** Words that gather over a table, and paths to other rows; a row's own relations stay within its part. */
    private static final Pattern ELSEWHERE = Pattern.compile(
            "\\bof\\s|\\bcount\\b|\\bplan\\b|(?<!\\b(zone|run|feeder|from|to|bundle|this))(?<=[\\p{L}\\p{N}_'])\\.\\s*\\p{L}");

    /** What a path begins with, in quotes or bare. */
    private static final Pattern HEAD =
            Pattern.compile("(?<![.\\p{L}\\p{N}_'])(?:'((?:[^']|'')+)'|([\\p{L}_][\\p{L}\\p{N}_]*))\\s*\\.\\s*\\p{L}");

    private static final Pattern GATHER = Pattern.compile("\\bof\\s|\\bcount\\b|\\bplan\\b");

    private static final List<Table> APART = List.of(Table.SOURCES, Table.SWITCHES, Table.RUNS, Table.DEVICES);

    private final Calculation calc;
    private final Map<Table, Integer> bases = new EnumMap<>(Table.class);
    private final int[] head;
    private final boolean whole;
    private final Map<String, List<Integer>> needs = new HashMap<>();
    private final Map<Integer, Plan> plans = new HashMap<>();
    private final List<Least> leasts = new ArrayList<>();

    /** The least reserve share of a part over all corners. */
    private record Least(int part, double share) {}

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
        for (Row need : calc.plan().rows(Table.NEEDS)) {
            needs.put(need.id(), spokenOf(need.text("holds")));
        }
        needs.values().forEach(spoken -> spoken.forEach(row -> join(spoken.get(0), row)));
    }

    /** The rows that a need speaks of; none where it speaks of a whole table, or of what is no such row. */
    private List<Integer> spokenOf(String holds) {
        List<Integer> rows = new ArrayList<>();
        boolean known = !GATHER.matcher(holds).find();
        Matcher heads = HEAD.matcher(holds);
        while (known && heads.find()) {
            String id = heads.group(1) == null ? heads.group(2) : heads.group(1).replace("''", "'");
            Optional<Spot> row = APART.stream()
                    .filter(t -> calc.plan().rows(t).place(id) >= 0)
                    .findFirst()
                    .map(t -> new Spot(t, calc.plan().rows(t).place(id)));
            row.ifPresent(spot -> rows.add(number(spot)));
            known = row.isPresent();
        }
        return known ? rows : List.of();
    }

    /** True where some need speaks of more than one part. */
    boolean needOfAll() {
        return needs.values().stream().anyMatch(List::isEmpty);
    }

    private static boolean speaksOfOthers(Plan plan) {
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
        if (!whole && place.table().equals(Table.NEEDS.key())) {
            List<Integer> rows = needs.getOrDefault(place.name(), List.of());
            return rows.isEmpty() ? -1 : top(rows.get(0));
        }
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
        List<Row> own = new ArrayList<>();
        for (Row need : calc.plan().rows(Table.NEEDS)) {
            List<Integer> rows = needs.getOrDefault(need.id(), List.of());
            if (!rows.isEmpty() && top(rows.get(0)) == part) {
                own.add(need);
            }
        }
        return plan.with(Table.NEEDS, Rows.of(own));
    }

    /** The least reserve share outside a part over all corners; NaN where there is none. */
    double leastOutside(int part) {
        if (part < 0) {
            return Double.NaN;
        }
        if (leasts.isEmpty()) {
            gatherLeasts();
        }
        return leasts.stream()
                .filter(least -> least.part() != part)
                .mapToDouble(Least::share)
                .findFirst()
                .orElse(Double.NaN);
    }

    private void gatherLeasts() {
        Map<Integer, Double> byPart = new HashMap<>();
        Corner before = calc.corner();
        for (Corner corner : Corner.values()) {
            calc.look(corner);
            for (Table table : Scene.NODES) {
                Figures sent = calc.figures(table, "sent");
                Figures available = calc.figures(table, "available");
                Figures shares = calc.figures(table, "reserve_share");
                for (int place = 0; place < calc.rows(table); place++) {
                    double share = CornerFigures.share(sent.at(place), available.at(place), shares.at(place));
                    if (!Double.isNaN(share)) {
                        byPart.merge(top(base(table) + place), share, Math::min);
                    }
                }
            }
        }
        calc.look(before);
        byPart.forEach((part, share) -> leasts.add(new Least(part, share)));
        leasts.sort(Comparator.comparingDouble(Least::share).thenComparing(Least::part));
    }
}
