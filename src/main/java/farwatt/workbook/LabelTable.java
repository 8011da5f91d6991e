package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/** A label for each end of each run: the run, where this end is, where the other one is. */
final class LabelTable {
    private LabelTable() {}

    static Schedule of(Calculation calc) {
        List<Column> columns = List.of(
                Column.of("label", "label", Form.SENTENCE),
                Column.of("end", "end", Form.WORD),
                Column.of("run", "run", Form.WORD),
                Column.of("at", "at", Form.WORD),
                Column.of("to", "leads to", Form.WORD),
                Column.of("length", "length", Form.ONE).in("m"));
        List<List<Entry>> lines = new ArrayList<>();
        for (int place : InUse.places(calc, Table.RUNS)) {
            String run = calc.id(Table.RUNS, place);
            String from = end(calc, place, "from");
            String to = end(calc, place, "to");
            Entry length = Figure.of(calc.value(Table.RUNS, place, "length"));
            lines.add(line(run, "near", from, to, length));
            lines.add(line(run, "far", to, from, length));
        }
        return new Schedule(Titles.LABELS, "Two labels a run, one at each end.", columns, Schedule.Lines.of(lines));
    }

    /** The id at an end of a run; as typed where no such row is there. */
    static String end(Calculation calc, int run, String which) {
        Plan plan = calc.plan();
        return calc.related(Table.RUNS, run, which)
                .map(spot -> plan.rows(spot.table()).at(spot.place()).id())
                .orElseGet(() -> plan.rows(Table.RUNS).at(run).text(which));
    }

    private static List<Entry> line(String run, String end, String at, String to, Entry length) {
        return List.of(
                Entry.words(run + ": " + at + " → " + to),
                Entry.words(end),
                Entry.words(run),
                Entry.words(at),
                Entry.words(to),
                length);
    }
}
