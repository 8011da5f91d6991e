package farwatt.study;

import farwatt.engine.Calculation;
import farwatt.engine.Value;
import farwatt.plan.Cell;
import farwatt.plan.Naming;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * For every source and switch, how many more devices of each kind in the plan fit: as long as there are ports, whatever
 * has power keeps it and the new ones get it, and every node on the way keeps the plan's reserve. A kind is tried as a
 * copy of its first device, with that device's run.
 */
public final class Room {
    private final Ground ground;
    private final Effort effort;
    private final Calculation before;
    private final double target;

    private record Pattern(String kind, Row device, Row run) {}

    private Room(Ground ground, Effort effort) {
        this.ground = ground;
        this.effort = effort;
        before = ground.calculation();
        target = before.value(Table.PLAN, 0, "reserve_target").inside();
    }

    /**
     * Tries every node with every kind.
     *
     * @throws CancellationException if that was asked for
     */
    public static List<Fit> of(Ground ground, Effort effort) {
        return new Room(ground, effort).all();
    }

    private List<Fit> all() {
        Plan plan = ground.plan();
        List<Pattern> patterns = patterns(plan);
        int nodes = plan.rows(Table.SOURCES).size() + plan.rows(Table.SWITCHES).size();
        Effort.Meter meter = effort.meter((long) nodes * patterns.size());
        List<Fit> fits = new ArrayList<>();
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES)) {
            for (int place = 0; place < plan.rows(table).size(); place++) {
                for (Pattern pattern : patterns) {
                    fits.add(fit(table, place, pattern));
                    meter.done(fits.size());
                }
            }
        }
        return fits;
    }

    private static List<Pattern> patterns(Plan plan) {
        Map<String, Row> runs = new HashMap<>();
        plan.rows(Table.RUNS).forEach(run -> runs.putIfAbsent(Rows.fold(run.text("to")), run));
        Map<String, Pattern> byKind = new LinkedHashMap<>();
        for (Row device : plan.rows(Table.DEVICES)) {
            Row run = runs.get(Rows.fold(device.id()));
            if (run != null) {
                String kind = device.text("kind");
                byKind.putIfAbsent(kind.isEmpty() ? device.id() : kind, new Pattern(kind, device, run));
            }
        }
        return List.copyOf(byKind.values());
    }

    private Fit fit(Table table, int place, Pattern pattern) {
        String node = before.id(table, place);
        int free = free(table, place);
        int good = 0;
        int bad = free + 1;
        String why = Messages.text(StudyCode.ROOM_PORTS, node);
        while (bad - good > 1) {
            int tried = good == 0 && bad > 2 ? 1 : (good + bad) / 2;
            Optional<String> stop = stop(node, pattern, tried);
            if (stop.isEmpty()) {
                good = tried;
            } else {
                bad = tried;
                why = stop.get();
            }
        }
        return new Fit(node, pattern.kind, pattern.device.id(), good, free, why);
    }

    private int free(Table table, int place) {
        Value ports = before.value(table, place, "ports");
        Value used = before.value(table, place, "ports_used");
        boolean known = ports.isPresent() && used.isPresent();
        return known ? (int) Math.max(0, ports.inside() - used.inside()) : 0;
    }

    /** What stands in the way of so many more; empty if nothing does. */
    private Optional<String> stop(String node, Pattern pattern, int more) {
        if (effort.cancel().asked()) {
            throw new CancellationException(Messages.text(StudyCode.CANCELLED));
        }
        Plan plan = ground.plan();
        Naming naming = Naming.in(plan);
        for (int i = 0; i < more; i++) {
            Row device = pattern.device.renamed(naming.next(pattern.device.id()));
            Row run = pattern.run
                    .renamed(naming.next(pattern.run.id()))
                    .without("port")
                    .with("from", Cell.text(node))
                    .with("to", device.id());
            plan = plan.and(Table.DEVICES, device).and(Table.RUNS, run);
        }
        Calculation after = Calculation.of(plan);
        after.look(ground.corner());
        return dark(after).or(() -> reserve(after, node));
    }

    /** Devices are added at the end, so every old place is the same in both. */
    private Optional<String> dark(Calculation after) {
        for (Table table : List.of(Table.SWITCHES, Table.DEVICES)) {
            for (int place = 0; place < after.rows(table); place++) {
                Value powered = after.value(table, place, "powered");
                boolean had = place >= before.rows(table)
                        || before.value(table, place, "powered").inside() == 1;
                if (had && powered.fault().isPresent()) {
                    return Optional.of(powered.fault().get().text());
                }
                if (had && powered.inside() == 0) {
                    Value why = after.value(table, place, "powered_why");
                    return Optional.of(Messages.text(StudyCode.ROOM_DARK, after.id(table, place), why.text()));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> reserve(Calculation after, String node) {
        String at = node;
        while (!at.isEmpty()) {
            String path = StepPath.quoted(at);
            Value share = after.ask(path + ".reserve_share").value().orElseThrow();
            if (share.isPresent() && share.inside() < target * (1 - 1e-9)) {
                return Optional.of(Messages.text(StudyCode.ROOM_RESERVE, at, share.text()));
            }
            String here = at;
            at = ground.plan()
                    .find(at)
                    .filter(spot -> spot.table() == Table.SWITCHES)
                    .flatMap(spot -> after.related(spot.table(), spot.place(), "feeder"))
                    .map(spot -> after.id(spot.table(), spot.place()))
                    .filter(up -> !up.equals(here))
                    .orElse("");
        }
        return Optional.empty();
    }
}
