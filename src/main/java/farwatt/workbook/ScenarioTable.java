package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.review.Review;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Scenarios side by side: verdicts, least reserves and what every node gives and keeps; what differs is marked. */
public final class ScenarioTable {
    private static final List<String> OF_NODES = List.of("available", "sent", "reserve_share");
    private static final List<String> OF_PLAN = List.of("lost", "mains", "least_headroom", "cable_length");

    /**
     * One scenario.
     *
     * @param id as the column's heading shows it
     * @param calc the scenario worked out, looking at the corner to compare in
     */
    public record Side(String id, Calculation calc, Review review) {}

    private final List<Side> sides;
    private final List<List<Entry>> lines = new ArrayList<>();

    private ScenarioTable(List<Side> sides) {
        this.sides = List.copyOf(sides);
    }

    /**
     * The table; the first side is what the others are held against.
     *
     * @param sides at least one
     */
    public static Schedule of(List<Side> sides) {
        ScenarioTable table = new ScenarioTable(sides);
        List<Column> columns = new ArrayList<>();
        columns.add(Column.of("of", "of", Form.WORD));
        columns.add(Column.of("what", "what", Form.WORD));
        columns.add(Column.of("unit", "unit", Form.WORD));
        for (int i = 0; i < sides.size(); i++) {
            columns.add(Column.of("s" + i, sides.get(i).id(), Form.FREE));
        }
        columns.add(Column.of("differs", "differs", Form.WORD));
        table.fill();
        return new Schedule(
                Titles.SCENARIOS,
                "Figures " + sides.get(0).calc().corner().phrase() + ", verdicts over all corners.",
                columns,
                Schedule.Lines.of(table.lines));
    }

    private void fill() {
        line(
                "plan",
                "holds in every corner",
                "",
                side -> Entry.words(side.review().verdict().holds() ? "yes" : "no"));
        line(
                "plan",
                "tightest corner",
                "",
                side -> Entry.words(side.review().verdict().corner().word()));
        for (Corner corner : Corner.values()) {
            boolean reviewed =
                    sides.stream().anyMatch(side -> side.review().corners().containsKey(corner));
            if (reviewed) {
                line("plan", "least reserve, " + corner.word(), "", side -> least(side, corner));
            }
        }
        for (String name : OF_PLAN) {
            values(Table.PLAN, "", name);
        }
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES)) {
            for (String id : ids(table)) {
                OF_NODES.forEach(name -> values(table, id, name));
            }
        }
        line("devices", "without power", "", side -> Entry.number(dark(side)));
    }

    private static Entry least(Side side, Corner corner) {
        var verdict = side.review().corners().get(corner);
        return verdict == null
                ? Entry.NONE
                : Entry.number(verdict.leastReserveShare()).as(Form.SHARE);
    }

    /** Rows of any side, each once. */
    private List<String> ids(Table table) {
        Map<String, Boolean> ids = new LinkedHashMap<>();
        for (Side side : sides) {
            for (Row row : side.calc().plan().rows(table)) {
                ids.put(row.id(), true);
            }
        }
        return List.copyOf(ids.keySet());
    }

    private void values(Table table, String id, String name) {
        String unit = "";
        for (Side side : sides) {
            Optional<Value> value = value(side, table, id, name);
            unit = unit.isEmpty() && value.isPresent() ? Figure.unit(value.get().unit()) : unit;
        }
        line(table == Table.PLAN ? "plan" : id, name.replace('_', ' '), unit, side -> {
            Optional<Value> value = value(side, table, id, name);
            return value.map(v -> Figure.of(v).as(Form.of(v.unit()))).orElse(Entry.words("–"));
        });
    }

    /** Empty where the side has no such row or the row has no such figure. */
    private static Optional<Value> value(Side side, Table table, String id, String name) {
        int place = table == Table.PLAN ? 0 : side.calc().plan().rows(table).place(id);
        boolean there = place >= 0 && place < side.calc().rows(table);
        return there ? Optional.of(side.calc().value(table, place, name)).filter(Value::isPresent) : Optional.empty();
    }

    private static double dark(Side side) {
        int dark = 0;
        for (int place : InUse.places(side.calc(), Table.DEVICES)) {
            Value powered = side.calc().value(Table.DEVICES, place, "powered");
            dark += powered.isPresent() && powered.inside() != 0 ? 0 : 1;
        }
        return dark;
    }

    private void line(String of, String what, String unit, Function<Side, Entry> cell) {
        List<Entry> entries = new ArrayList<>(List.of(Entry.words(of), Entry.words(what), Entry.words(unit)));
        Entry first = cell.apply(sides.get(0));
        boolean differs = false;
        for (Side side : sides) {
            Entry entry = cell.apply(side);
            boolean other = !entry.equals(first);
            differs |= other;
            entries.add(other ? entry.in(Tone.POOR) : entry);
        }
        entries.add(Entry.words(differs ? "yes" : ""));
        lines.add(entries);
    }
}
