package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.engine.Value;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What to order: cable and cord by their kind with slack, what goes onto cables, gear by its kind. */
final class TakeOffTable {
    private static final int ENDS = 2;

    private final Calculation calc;
    private final List<List<Entry>> lines = new ArrayList<>();
    private final double slack;

    private TakeOffTable(Calculation calc) {
        this.calc = calc;
        slack = calc.value(Table.PLAN, 0, "slack").inside();
    }

    static Schedule of(Calculation calc) {
        TakeOffTable table = new TakeOffTable(calc);
        table.cable();
        table.cords();
        table.fittings();
        table.gear(Table.SOURCES, "source", "type");
        table.gear(Table.SWITCHES, "switch", "mode");
        table.gear(Table.DEVICES, "device", "kind");
        Entry share = Double.isFinite(table.slack) ? Entry.number(table.slack) : Entry.NONE;
        return new Schedule(
                Titles.TAKE_OFF,
                "What to order. Cable without its cords; slack is added to lengths only.",
                List.of(new Schedule.Fact("slack", "slack", Form.SHARE, share, "Added to every length.")),
                List.of(
                        Column.of("what", "what", Form.WORD),
                        Column.of("kind", "kind", Form.WORD),
                        Column.of("runs", "runs", Form.WHOLE),
                        Column.of("quantity", "planned", Form.ONE),
                        Column.of("order", "with slack", Form.ONE),
                        Column.of("unit", "unit", Form.WORD),
                        Column.of("note", "note", Form.SENTENCE)),
                Schedule.Lines.of(table.lines));
    }

    /** Runs of one kind: how many, their metres together, how many have no length. */
    private static final class Group {
        private final Sum metres = new Sum();
        private int runs;
        private int unknown;

        void add(double length) {
            runs++;
            if (Double.isNaN(length)) {
                unknown++;
            } else {
                metres.add(length);
            }
        }
    }

    private void cable() {
        Map<String, Group> groups = new LinkedHashMap<>();
        for (int run : InUse.places(calc, Table.RUNS)) {
            String kind = "category " + words(run, "category") + ", " + words(run, "gauge") + ", " + words(run, "metal")
                    + (yes(run, "screened") ? ", screened, " : ", ") + words(run, "sheath");
            groups.computeIfAbsent(kind, k -> new Group()).add(plain(run, "length") - plain(run, "cord_length"));
        }
        groups.forEach((kind, group) -> lengths("cable", kind, group));
    }

    private void cords() {
        Map<String, Group> groups = new LinkedHashMap<>();
        for (int run : InUse.places(calc, Table.RUNS)) {
            double length = plain(run, "cord_length");
            if (length > 0) {
                groups.computeIfAbsent(words(run, "cord_gauge"), k -> new Group())
                        .add(length);
            }
        }
        groups.forEach((kind, group) -> lengths("cord", kind, group));
    }

    private void lengths(String what, String kind, Group group) {
        String unknown = group.unknown == 0 ? "" : group.unknown + " of these runs have no length yet";
        double metres = group.metres.value();
        lines.add(List.of(
                Entry.words(what),
                Entry.words(kind),
                Entry.number(group.runs),
                Entry.number(metres),
                Entry.live("{quantity}*(1+{#slack})", metres * (1 + slack)),
                Entry.words("m"),
                Entry.words(unknown)));
    }

    private void fittings() {
        int runs = 0;
        int surge = 0;
        double joints = 0;
        for (int run : InUse.places(calc, Table.RUNS)) {
            runs++;
            surge += yes(run, "surge") ? 1 : 0;
            double mated = plain(run, "joints");
            joints += Double.isNaN(mated) ? 0 : mated;
        }
        pieces("cable label", "", runs, ENDS * runs, "one at each end");
        pieces("mated connection", "", runs, joints, "");
        if (surge > 0) {
            pieces("surge protection", "", surge, ENDS * surge, "at both ends");
        }
    }

    private void gear(Table table, String what, String by) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int place : InUse.places(calc, table)) {
            String kind = calc.value(table, place, by).text();
            counts.merge(by.equals("type") ? "type " + kind : kind, 1, Integer::sum);
        }
        counts.forEach((kind, count) -> pieces(what, kind, 0, count, ""));
    }

    private void pieces(String what, String kind, int runs, double count, String note) {
        if (count > 0) {
            Entry whole = Entry.number(count).as(Form.WHOLE);
            Entry of = runs == 0 ? Entry.NONE : Entry.number(runs);
            Entry order = Entry.live("{quantity}", count).as(Form.WHOLE);
            lines.add(List.of(
                    Entry.words(what), Entry.words(kind), of, whole, order, Entry.words("pcs"), Entry.words(note)));
        }
    }

    private String words(int run, String name) {
        return calc.value(Table.RUNS, run, name).text();
    }

    private boolean yes(int run, String name) {
        return calc.value(Table.RUNS, run, name).inside() == 1;
    }

    private double plain(int run, String name) {
        Value value = calc.value(Table.RUNS, run, name);
        return value.isPresent() ? value.inside() : Double.NaN;
    }
}
