package farwatt.intake;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Takes an understood list into a plan as one change. Devices are matched by name (and place, where both have one): what
 * is there already is compared cell by cell, so that the same list twice changes nothing. Used once, by one thread.
 */
public final class TakeIn {
    /** What becomes of a list with rows held back. */
    public enum Policy {
        /** Nothing is taken until no row is held back. */
        STOP,
        /** Rows held back stay out. */
        SKIP,
        /** Rows held back come in as devices that are not in use, with the reason in their note. */
        KEEP
    }

    /** What becomes of devices that are in the plan already. */
    public enum Known {
        /** Their cells follow the list; cells the list does not speak of stay. */
        UPDATE,
        /** They stay as they are. */
        SKIP,
        /** The list's devices are others of the same name and get new names. */
        ADD
    }

    /** What becomes of the plan's devices that the list does not name. */
    public enum Gone {
        /** They stay as they are. */
        LEAVE,
        /** They stay, but are not in use. */
        OUT_OF_USE,
        /** They are removed, and the runs that end at them. */
        REMOVE
    }

    /** How a list is taken in. */
    public record Manner(Policy policy, Known known, Gone gone) {
        /** What is usual where a list is taken in by hand. */
        public static final Manner USUAL = new Manner(Policy.SKIP, Known.UPDATE, Gone.LEAVE);
    }

    private final Plan plan;
    private final Outcome outcome;
    private final Manner manner;
    private final Names names = new Names();
    private final List<Change> changes = new ArrayList<>();
    /** Cells that the list says otherwise, whether they follow it or not. */
    private final List<Change> differing = new ArrayList<>();

    private final List<String> added = new ArrayList<>();
    private final List<String> changed = new ArrayList<>();
    private final List<String> same = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();
    /** Ids of the list → ids in the plan. */
    private final Map<String, String> devices = new HashMap<>();

    private final Map<String, String> zones = new HashMap<>();
    private final Map<String, String> ownNames = new HashMap<>();
    private final int[] ends = new int[Table.values().length];

    private TakeIn(Plan plan, Outcome outcome, Manner manner) {
        this.plan = plan;
        this.outcome = outcome;
        this.manner = manner;
        plan.ids().forEach(names::take);
        for (Table table : Table.values()) {
            ends[table.ordinal()] = plan.rows(table).size();
        }
    }

    /** What taking the list into the plan does where devices that the list does not name stay. */
    public static Taken into(Plan plan, Outcome outcome, Policy policy, Known known) {
        return into(plan, outcome, new Manner(policy, known, Gone.LEAVE));
    }

    /** What taking the list into the plan does. */
    public static Taken into(Plan plan, Outcome outcome, Manner manner) {
        int held = outcome.count(RowState.HELD_BACK);
        if (manner.policy() == Policy.STOP && held > 0) {
            Notice stopped = Notice.of(Level.FAIL, IntakeSays.STOPPED, Place.NONE, held);
            return new Taken(
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(stopped));
        }
        return new TakeIn(plan, outcome, manner).taken();
    }

    private Taken taken() {
        outcome.ownColumns().forEach(this::ownColumn);
        outcome.zones().forEach(this::zone);
        outcome.switches().forEach(row -> device(Table.SWITCHES, row));
        outcome.devices().forEach(row -> device(Table.DEVICES, row));
        if (manner.policy() == Policy.KEEP) {
            outcome.held().forEach(row -> device(Table.DEVICES, row));
        }
        TakeInReadings readings = new TakeInReadings(plan);
        outcome.readings().forEach(row -> changes.addAll(readings.place(row)));
        changed.addAll(readings.changed());
        same.addAll(readings.same());
        notices.addAll(readings.notices());
        TakeInRuns runs = new TakeInRuns(plan, names, devices, outcome);
        outcome.runs().forEach(run -> runs.place(run).forEach(this::run));
        questions.addAll(runs.questions());
        notices.addAll(runs.notices());
        boolean readingsOnly =
                outcome.devices().isEmpty() && !outcome.readings().isEmpty();
        List<String> gone = readingsOnly ? List.of() : gone();
        changes.addAll(new TakeOut(plan).changes(gone, manner.gone()));
        List<Difference> differences = manner.known() == Known.ADD ? List.of() : TakeOut.differences(plan, differing);
        questions.addAll(TakeOut.questions(readingsOnly ? List.of() : differences, gone, manner));
        String label = Messages.text(IntakeSays.STEP, added.size(), changed.size());
        Optional<Change.Batch> batch =
                changes.isEmpty() ? Optional.empty() : Optional.of(new Change.Batch(label, changes));
        return new Taken(batch, added, changed, same, gone, differences, questions, notices);
    }

    /** A run that is there follows the list only where its device does. */
    private void run(Change change) {
        if (!(change instanceof Change.SetCell)) {
            add(change);
            return;
        }
        differing.add(change);
        if (manner.known() != Known.SKIP) {
            add(change);
        }
    }

    private void add(Change change) {
        if (change instanceof Change.AddRow row) {
            int at = ends[row.table().ordinal()]++;
            changes.add(new Change.AddRow(row.table(), at, row.row()));
        } else {
            changes.add(change);
        }
    }

    private void ownColumn(Row column) {
        String name = column.id();
        while (isUsedOtherwise(name)) {
            name = name + "_listed";
        }
        if (!name.equals(column.id())) {
            ownNames.put(column.id(), name);
            notices.add(Notice.of(Level.NOTE, IntakeSays.COLUMN_IN_USE, Place.NONE, column.id(), name));
        }
        if (plan.rows(Table.COLUMNS).row(name).isEmpty()) {
            add(new Change.AddRow(Table.COLUMNS, 0, column.renamed(name)));
        }
    }

    /** Own names share their name space with values and with each other. */
    private boolean isUsedOtherwise(String name) {
        Optional<Row> there = plan.rows(Table.COLUMNS).row(name);
        boolean input = there.isPresent()
                && there.get().text("table").equals(Table.DEVICES.key())
                && there.get().text("is").isEmpty();
        boolean value = plan.rows(Table.VALUES).row(name).isPresent();
        return value || (there.isPresent() && !input);
    }

    private Row ownCells(Row row) {
        Row renamed = row;
        for (Map.Entry<String, String> own : ownNames.entrySet()) {
            Optional<Cell> cell = row.cell(own.getKey());
            if (cell.isPresent()) {
                renamed = renamed.without(own.getKey()).with(own.getValue(), cell.get());
            }
        }
        return renamed;
    }

    private void zone(Row zone) {
        Optional<Row> there = plan.rows(Table.ZONES)
                .row(zone.id())
                .or(() -> plan.rows(Table.ZONES).row(zone.id() + " (place)"));
        String id = there.map(Row::id).orElseGet(() -> names.apart(zone.id(), "place"));
        zones.put(Rows.fold(zone.id()), id);
        if (there.isEmpty()) {
            add(new Change.AddRow(Table.ZONES, 0, zone.renamed(id)));
        }
    }

    private void device(Table table, Row listed) {
        Row row = ownCells(listed);
        String zone = listed.text("zone");
        if (!zone.isEmpty()) {
            row = row.with("zone", zones.getOrDefault(Rows.fold(zone), zone));
        }
        Optional<Row> there = manner.known() == Known.ADD ? Optional.empty() : known(table, row);
        if (there.isEmpty()) {
            String id = names.take(row.id()) ? row.id() : names.numbered(row.id());
            devices.put(Rows.fold(listed.id()), id);
            add(new Change.AddRow(table, 0, row.renamed(id)));
            added.add(id);
            return;
        }
        devices.put(Rows.fold(listed.id()), there.get().id());
        List<Change> found = differences(table, there.get(), row);
        differing.addAll(found);
        boolean stays = found.isEmpty() || manner.known() == Known.SKIP;
        (stays ? same : changed).add(there.get().id());
        changes.addAll(stays ? List.of() : found);
    }

    /** The plan's row of this name, unless both say where they are and it is elsewhere. */
    private Optional<Row> known(Table table, Row row) {
        return plan.rows(table).row(row.id()).filter(there -> {
            String here = row.text("zone");
            String elsewhere = there.text("zone");
            return here.isEmpty() || elsewhere.isEmpty() || Rows.fold(here).equals(Rows.fold(elsewhere));
        });
    }

    static List<Change> differences(Table table, Row there, Row listed) {
        List<Change> differences = new ArrayList<>();
        listed.forEach((name, cell) -> {
            Optional<Cell> before = there.cell(name);
            boolean alike = before.isPresent() && before.get().text().equals(cell.text());
            if (!alike) {
                differences.add(new Change.SetCell(table, there.id(), name, Optional.of(cell)));
            }
        });
        return differences;
    }

    private List<String> gone() {
        Set<String> named = new HashSet<>();
        devices.values().forEach(id -> named.add(Rows.fold(id)));
        List<String> gone = new ArrayList<>();
        for (Row row : plan.rows(Table.DEVICES)) {
            if (!named.contains(Rows.fold(row.id()))) {
                gone.add(row.id());
            }
        }
        return gone;
    }
}
