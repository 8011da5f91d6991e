package farwatt.picture;

import farwatt.engine.Figures;
import farwatt.engine.Still;
import farwatt.engine.Value;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.review.Finding;
import farwatt.review.Review;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts the nodes of a plan into columns by how far they are from their source, and one under the other so that every
 * parent stands in the middle of what it feeds. No two branches share a stretch of a column, so no lines cross.
 */
final class Arrangement {
    private static final double CARD = 140;
    private static final double TALL = 46;
    private static final double SMALL = 34;
    private static final double GAP = 96;
    private static final double BETWEEN = 8;
    private static final double EDGE = 16;
    /** Where the lines of a node part, from its right edge. */
    private static final double PART = 16;

    private static final int LETTERS = 18;
    private static final double THINNEST = 1;
    /** Points of width an ampere adds. */
    private static final double AN_AMPERE = 3.5;

    private static final double THICKEST = 8;
    private static final double SMALL_LOSS = 0.03;
    private static final double SOME_LOSS = 0.08;

    private final Still still;
    private final Plan plan;
    private final Map<String, Level> levels = new HashMap<>();
    private final Map<String, Spot> nodes = new LinkedHashMap<>();
    private final List<Diagram.Card> cards = new ArrayList<>();
    private final List<Diagram.Wire> wires = new ArrayList<>();

    /** A node that is to be placed. */
    private static final class Spot {
        final Table table;
        final int place;
        final Row row;
        final List<Link> below = new ArrayList<>();
        boolean fed;
        /** What feeds it feeds nothing else, and stands beside it. */
        boolean only;

        int depth;
        double y;
        double top;
        double bottom;

        Spot(Table table, int place, Row row) {
            this.table = table;
            this.place = place;
            this.row = row;
        }

        double height() {
            return table == Table.DEVICES ? SMALL : TALL;
        }
    }

    /** A run to a node below. */
    private record Link(int run, Spot to) {}

    Arrangement(Still still, Optional<Review> review) {
        this.still = still;
        this.plan = still.plan();
        review.ifPresent(r -> r.findings().forEach(this::take));
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES, Table.DEVICES)) {
            Rows rows = plan.rows(table);
            for (int i = 0; i < rows.size(); i++) {
                nodes.putIfAbsent(Rows.fold(rows.at(i).id()), new Spot(table, i, rows.at(i)));
            }
        }
        link();
    }

    private void take(Finding finding) {
        if (finding.level() != Level.NOTE) {
            levels.merge(Rows.fold(finding.place().row()), finding.level(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
        }
    }

    private void link() {
        Rows runs = plan.rows(Table.RUNS);
        for (int i = 0; i < runs.size(); i++) {
            Spot from = nodes.get(Rows.fold(runs.at(i).text("from")));
            Spot to = nodes.get(Rows.fold(runs.at(i).text("to")));
            if (from != null && to != null && !to.fed && to.table != Table.SOURCES && from != to) {
                to.fed = true;
                from.below.add(new Link(i, to));
            }
        }
        nodes.values().forEach(spot -> spot.below.forEach(link -> link.to().only = spot.below.size() == 1));
        nodes.values()
                .forEach(spot -> spot.below.sort((a, b) ->
                        NaturalOrder.IDS.compare(a.to().row.id(), b.to().row.id())));
    }

    Diagram diagram() {
        double y = EDGE;
        double width = 0;
        List<Spot> heads = new ArrayList<>();
        nodes.values().stream().filter(spot -> !spot.fed).forEach(heads::add);
        Set<Spot> placed = new HashSet<>();
        for (Spot head : heads) {
            List<Spot> order = down(head, placed);
            y = stack(order, y);
            for (Spot spot : order) {
                width = Math.max(width, x(spot) + CARD);
            }
        }
        for (Spot spot : nodes.values()) {
            // members of a ring hang on no head; each stands alone
            if (placed.add(spot)) {
                spot.below.clear();
                y = stack(List.of(spot), y);
            }
        }
        nodes.values().forEach(this::draw);
        return new Diagram(width + EDGE, y - BETWEEN + EDGE, cards, wires);
    }

    /** A head and all below it, each before what it feeds. */
    private static List<Spot> down(Spot head, Set<Spot> placed) {
        List<Spot> order = new ArrayList<>();
        Deque<Spot> open = new ArrayDeque<>(List.of(head));
        while (!open.isEmpty()) {
            Spot spot = open.pop();
            if (placed.add(spot)) {
                order.add(spot);
                for (int i = spot.below.size() - 1; i >= 0; i--) {
                    Spot to = spot.below.get(i).to();
                    to.depth = spot.depth + 1;
                    open.push(to);
                }
            }
        }
        return order;
    }

    /** Stacks leaves from above, then puts parents in the middle; answers where the next tree may begin. */
    private static double stack(List<Spot> order, double from) {
        double y = from;
        for (Spot spot : order) {
            spot.top = y;
            if (spot.below.isEmpty()) {
                spot.y = y;
                y += (spot.only ? TALL : spot.height()) + BETWEEN;
                spot.bottom = y - BETWEEN;
            }
        }
        double end = y;
        for (int i = order.size() - 1; i >= 0; i--) {
            Spot spot = order.get(i);
            if (!spot.below.isEmpty()) {
                Spot first = spot.below.get(0).to();
                Spot last = spot.below.get(spot.below.size() - 1).to();
                double middle = (first.y + first.height() / 2 + last.y + last.height() / 2) / 2;
                spot.y = Math.max(spot.top, middle - spot.height() / 2);
                spot.bottom = Math.max(last.bottom, spot.y + spot.height());
                end = Math.max(end, spot.bottom + BETWEEN);
            }
        }
        return end;
    }

    private static double x(Spot spot) {
        return EDGE + spot.depth * (CARD + GAP);
    }

    private void draw(Spot spot) {
        String id = spot.row.id();
        boolean node = spot.table != Table.DEVICES;
        Diagram.Shape shape =
                spot.table == Table.SOURCES ? Diagram.Shape.SOURCE : node ? Diagram.Shape.SWITCH : Diagram.Shape.DEVICE;
        double reserve = node ? figure(spot.table, spot.place, "reserve_share") : Double.NaN;
        Optional<Level> level = Optional.ofNullable(levels.get(Rows.fold(id)));
        cards.add(new Diagram.Card(
                spot.table, id, shape, x(spot), spot.y, CARD, spot.height(), cut(id), figures(spot), reserve, level));
        double startX = x(spot) + CARD;
        double startY = spot.y + spot.height() / 2;
        for (Link link : spot.below) {
            Spot to = link.to();
            double endY = to.y + to.height() / 2;
            wires.add(wire(link.run(), startX, startY, x(to), endY));
        }
    }

    private Diagram.Wire wire(int run, double startX, double startY, double endX, double endY) {
        Row row = plan.rows(Table.RUNS).at(run);
        double amps = figure(Table.RUNS, run, "amps");
        double share = figure(Table.RUNS, run, "drop_share");
        double thick = Double.isNaN(amps) ? THINNEST : Math.min(THICKEST, THINNEST + AN_AMPERE * Math.abs(amps));
        String label = text(Table.RUNS, run, "length") + ", " + text(Table.RUNS, run, "gauge");
        Optional<Level> level = Optional.ofNullable(levels.get(Rows.fold(row.id())));
        return new Diagram.Wire(row.id(), startX, startY, startX + PART, endX, endY, label, thick, loss(share), level);
    }

    private static Diagram.Loss loss(double share) {
        if (Double.isNaN(share)) {
            return Diagram.Loss.UNKNOWN;
        }
        return share <= SMALL_LOSS ? Diagram.Loss.SMALL : share <= SOME_LOSS ? Diagram.Loss.SOME : Diagram.Loss.LARGE;
    }

    private String figures(Spot spot) {
        String volts = spot.table == Table.SOURCES ? "volts" : spot.table == Table.SWITCHES ? "volts_in" : "volts";
        String watts = spot.table == Table.DEVICES ? "watts" : "sent";
        Optional<Value> value = still.value(spot.table, spot.place, watts);
        if (value.isEmpty() || !value.get().isPresent()) {
            return "no power";
        }
        boolean dark = spot.table != Table.SOURCES
                && still.value(spot.table, spot.place, "powered")
                        .filter(Value::isPresent)
                        .filter(powered -> powered.inside() == 0)
                        .isPresent();
        return text(spot.table, spot.place, volts) + ", " + value.get().text() + (dark ? ", dark" : "");
    }

    private String text(Table table, int place, String name) {
        return still.value(table, place, name).map(Value::text).orElse("–");
    }

    private double figure(Table table, int place, String name) {
        return still.figures(table, name).map((Figures f) -> f.at(place)).orElse(Double.NaN);
    }

    private static String cut(String id) {
        int most = id.offsetByCodePoints(0, Math.min(LETTERS, id.codePointCount(0, id.length())));
        return most < id.length() ? id.substring(0, most) + "…" : id;
    }
}
