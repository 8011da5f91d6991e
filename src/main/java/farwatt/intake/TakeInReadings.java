package farwatt.intake;

import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Places readings in a plan's runs: by the run's own id, else by the id of what it ends at. */
final class TakeInReadings {
    private final Map<String, Row> runs = new HashMap<>();
    private final Set<String> read = new HashSet<>();
    private final List<String> changed = new ArrayList<>();
    private final List<String> same = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();

    TakeInReadings(Plan plan) {
        for (Row run : plan.rows(Table.RUNS)) {
            runs.putIfAbsent(Feeders.bare(run.text("to")), run);
        }
        for (Row run : plan.rows(Table.RUNS)) {
            runs.put(Feeders.bare(run.id()), run);
        }
    }

    /** The changes that put one row's readings in. */
    List<Change> place(Row readings) {
        Row run = runs.get(Feeders.bare(readings.id()));
        if (run == null) {
            notices.add(Notice.of(Level.WARN, IntakeSays.NO_RUN, Place.NONE, readings.id()));
            return List.of();
        }
        if (!read.add(Rows.fold(run.id()))) {
            notices.add(Notice.of(Level.WARN, IntakeSays.SEVERAL_RUNS, Place.NONE, run.id()));
        }
        List<Change> differences = TakeIn.differences(Table.RUNS, run, readings);
        (differences.isEmpty() ? same : changed).add(run.id());
        return differences;
    }

    List<String> changed() {
        return changed;
    }

    List<String> same() {
        return same;
    }

    List<Notice> notices() {
        return notices;
    }
}
