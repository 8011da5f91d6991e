package farwatt.review;

import farwatt.engine.Calculation;
import farwatt.plan.NaturalOrder;
import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Counts what a plan needs, kind by kind. */
final class Counting {
    private static final int ENDS = 2;

    private final Scene scene;
    private final double slack;
    private final List<TakeOff.Line> lines = new ArrayList<>();

    Counting(Calculation calc) {
        scene = new Scene(calc);
        double typed = scene.of(Table.PLAN, "slack").at(0);
        slack = Double.isNaN(typed) ? 0 : typed;
    }

    List<TakeOff.Line> lines() {
        List<Spot> runs = inUse(Table.RUNS);
        Map<String, Group> cable = new TreeMap<>(NaturalOrder.IDS);
        Map<String, Group> cords = new TreeMap<>(NaturalOrder.IDS);
        Group ends = new Group();
        Group surge = new Group();
        Group glands = new Group();
        for (Spot run : runs) {
            double cord = scene.of(Table.RUNS, "cord_length").at(run.place());
            double fixed = scene.of(Table.RUNS, "length").at(run.place()) - cord;
            group(cable, cableKind(run)).add(id(run), fixed, price(run, "price_per_length", fixed * (1 + slack)));
            if (cord > 0) {
                group(cords, shown(run, "cord_gauge")).add(id(run), cord, Optional.empty());
            }
            ends.add(id(run), ENDS, Optional.empty());
            if (scene.of(Table.RUNS, "surge").at(run.place()) == 1) {
                surge.add(id(run), ENDS, Optional.empty());
            }
            int outside = endsOutside(run);
            if (outside > 0) {
                glands.add(id(run), outside, Optional.empty());
            }
        }
        cable.forEach((kind, group) -> length(TakeOff.Part.CABLE, kind, group));
        cords.forEach((kind, group) -> length(TakeOff.Part.CORD, kind, group));
        pieces(TakeOff.Part.CONNECTOR, "", ends);
        pieces(TakeOff.Part.LABEL, "", ends);
        pieces(TakeOff.Part.SURGE, "", surge);
        pieces(TakeOff.Part.GLAND, "", glands);
        gear(TakeOff.Part.SOURCE, Table.SOURCES);
        gear(TakeOff.Part.SWITCH, Table.SWITCHES);
        gear(TakeOff.Part.DEVICE, Table.DEVICES);
        return lines;
    }

    /** Rows of one kind: what each needs, and what it costs. */
    private static final class Group {
        private final List<String> rows = new ArrayList<>();
        private final List<Double> each = new ArrayList<>();
        private final List<String> unmeasured = new ArrayList<>();
        private Optional<Double> cost = Optional.of(0.0);

        void add(String row, double amount, Optional<Double> price) {
            rows.add(row);
            if (Double.isNaN(amount)) {
                unmeasured.add(row);
            }
            each.add(Double.isNaN(amount) ? 0 : amount);
            cost = cost.flatMap(sum -> price.map(p -> sum + p));
        }

        double sum() {
            return each.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    private static Group group(Map<String, Group> groups, String kind) {
        return groups.computeIfAbsent(kind, k -> new Group());
    }

    private List<Spot> inUse(Table table) {
        List<Spot> rows = new ArrayList<>();
        for (int place = 0; place < scene.rows(table); place++) {
            if (scene.inUse(table, place)) {
                rows.add(new Spot(table, place));
            }
        }
        rows.sort((a, b) -> NaturalOrder.IDS.compare(id(a), id(b)));
        return rows;
    }

    private String id(Spot spot) {
        return scene.tree().id(spot);
    }

    private String shown(Spot spot, String name) {
        return scene.calc().value(spot.table(), spot.place(), name).text();
    }

    private Optional<Double> price(Spot spot, String name, double amount) {
        double price = scene.of(spot.table(), name).at(spot.place());
        return Double.isNaN(price * amount) ? Optional.empty() : Optional.of(price * amount);
    }

    private String cableKind(Spot run) {
        String screened = scene.of(Table.RUNS, "screened").at(run.place()) == 1 ? "screened" : "unscreened";
        return TryPhrase.TAKE_CABLE.text(
                shown(run, "category"), shown(run, "gauge"), shown(run, "metal"), screened, shown(run, "sheath"));
    }

    /** Each end of a run that goes into gear outdoors needs a gland. */
    private int endsOutside(Spot run) {
        int count = 0;
        for (String end : List.of("from", "to")) {
            boolean outside = scene.calc()
                    .related(Table.RUNS, run.place(), end)
                    .flatMap(node -> scene.calc().related(node.table(), node.place(), "zone"))
                    .filter(zone -> scene.of(Table.ZONES, "outdoor").at(zone.place()) == 1)
                    .isPresent();
            count += outside ? 1 : 0;
        }
        return count;
    }

    private void length(TakeOff.Part part, String kind, Group group) {
        List<String> overlong = new ArrayList<>();
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < group.rows.size(); i++) {
            double cut = group.each.get(i) * (1 + slack);
            if (Near.over(cut, TakeOff.BOX)) {
                overlong.add(group.rows.get(i));
            } else if (cut > 0) {
                cuts.add(Math.min(cut, TakeOff.BOX));
            }
        }
        double[] each = cuts.stream().mapToDouble(Double::doubleValue).toArray();
        int boxes = part == TakeOff.Part.CABLE ? Boxes.count(each, TakeOff.BOX) : 0;
        lines.add(new TakeOff.Line(
                part,
                kind,
                group.rows,
                group.sum(),
                group.sum() * (1 + slack),
                boxes,
                group.unmeasured,
                part == TakeOff.Part.CABLE ? overlong : List.of(),
                group.cost));
    }

    private void pieces(TakeOff.Part part, String kind, Group group) {
        if (!group.rows.isEmpty()) {
            double count = group.sum();
            lines.add(new TakeOff.Line(part, kind, group.rows, count, count, 0, List.of(), List.of(), group.cost));
        }
    }

    private void gear(TakeOff.Part part, Table table) {
        Map<String, Group> groups = new TreeMap<>(NaturalOrder.IDS);
        for (Spot row : inUse(table)) {
            group(groups, gearKind(row)).add(id(row), 1, price(row, "price", 1));
        }
        groups.forEach((kind, group) -> pieces(part, kind, group));
    }

    private String gearKind(Spot row) {
        if (row.table() == Table.DEVICES) {
            String kind = shown(row, "kind");
            return kind.equals("–") ? "" : kind;
        }
        String type = shown(row, "type");
        String ports = shown(row, "ports");
        String watts = shown(row, "port_limit");
        return row.table() == Table.SOURCES
                ? TryPhrase.TAKE_SOURCE.text(type, ports, watts)
                : TryPhrase.TAKE_SWITCH.text(shown(row, "mode"), ports, watts);
    }
}
