package farwatt.workbook;

import farwatt.quantity.Show;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The points of a study for a sheet of its own: a table and how it is drawn. Immutable, safe for any thread.
 *
 * @param title name of the sheet
 * @param note what was varied and what was not, "" for nothing
 * @param columns headings with units
 * @param lines an entry a column
 */
public record StudyTable(String title, String note, Shape shape, List<Column> columns, List<List<Entry>> lines) {
    private static final List<Tone> SHADES =
            List.of(Tone.SHADE_1, Tone.SHADE_2, Tone.SHADE_3, Tone.SHADE_4, Tone.SHADE_5);
    /** More columns than that nobody takes in at a glance: the points are listed instead. */
    private static final int MOST_ACROSS = 100;

    private static final int DIGITS = 4;

    /** How a study is drawn. */
    public enum Shape {
        /** The first column goes along, the others are lines. */
        LINE,
        /** Three columns: what goes across, what goes down, and the figure that is shaded. */
        HEAT,
        /** The first column names a range, the others count. */
        HISTOGRAM,
        /** The first column counts steps, the others stay the same from one to the next. */
        STEPS,
        /** Numbers only. */
        TABLE
    }

    public StudyTable {
        columns = List.copyOf(columns);
        lines = lines.stream().map(List::copyOf).toList();
        for (List<Entry> line : lines) {
            if (line.size() != columns.size()) {
                throw new IllegalArgumentException(line.size() + " entries for " + columns.size() + " columns");
            }
        }
        if (shape == Shape.HEAT && columns.size() != 3) {
            throw new IllegalArgumentException("a heat map has three columns, not " + columns.size());
        }
    }

    /** The table as it is written. */
    public Schedule schedule() {
        Schedule plain = new Schedule(title, note, columns, Schedule.Lines.of(lines));
        return switch (shape) {
            case LINE -> plain.with(Schedule.Chart.LINE);
            case STEPS -> plain.with(Schedule.Chart.STEPS);
            case HISTOGRAM -> plain.with(Schedule.Chart.BARS);
            case TABLE -> plain;
            case HEAT -> heat().orElse(plain);
        };
    }

    /** One column a value across, one line a value down; empty where that would be too wide. */
    private Optional<Schedule> heat() {
        Map<Entry, Integer> across = new LinkedHashMap<>();
        Map<Entry, Entry[]> down = new LinkedHashMap<>();
        lines.forEach(line -> across.putIfAbsent(line.get(0), across.size()));
        if (across.size() > MOST_ACROSS) {
            return Optional.empty();
        }
        double[] ends = ends();
        for (List<Entry> line : lines) {
            Entry[] cells = down.computeIfAbsent(line.get(1), k -> empty(across.size()));
            cells[across.getOrDefault(line.get(0), 0)] = shaded(line.get(2), ends);
        }
        List<Column> wide = new ArrayList<>();
        wide.add(columns.get(1));
        across.forEach((value, at) ->
                wide.add(Column.of("across" + at, words(value), columns.get(2).form())
                        .in(columns.get(0).unit())));
        List<List<Entry>> shown = new ArrayList<>();
        down.forEach((value, cells) -> {
            List<Entry> line = new ArrayList<>(List.of(value));
            line.addAll(List.of(cells));
            shown.add(line);
        });
        String said = columns.get(2).title() + ": across " + columns.get(0).title() + ", down "
                + columns.get(1).title() + "." + (note.isEmpty() ? "" : " " + note);
        return Optional.of(new Schedule(title, said, legend(ends), wide, Schedule.Lines.of(shown)));
    }

    private static Entry[] empty(int size) {
        Entry[] cells = new Entry[size];
        java.util.Arrays.fill(cells, Entry.NONE);
        return cells;
    }

    private static String words(Entry entry) {
        return entry.shown() instanceof Entry.Amount amount
                ? Show.number(amount.value(), DIGITS)
                : entry.shown() instanceof Entry.Words words ? words.text() : "–";
    }

    /** The least and the greatest figure. */
    private double[] ends() {
        double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (List<Entry> line : lines) {
            if (line.get(2).shown() instanceof Entry.Amount amount) {
                ends[0] = Math.min(ends[0], amount.value());
                ends[1] = Math.max(ends[1], amount.value());
            }
        }
        return ends;
    }

    private static Entry shaded(Entry entry, double[] ends) {
        if (!(entry.shown() instanceof Entry.Amount amount)) {
            return entry;
        }
        double span = ends[1] - ends[0];
        int shade = span > 0 ? (int) ((amount.value() - ends[0]) / span * SHADES.size()) : 0;
        return entry.in(SHADES.get(Math.min(shade, SHADES.size() - 1)));
    }

    private List<Schedule.Fact> legend(double[] ends) {
        List<Schedule.Fact> facts = new ArrayList<>();
        double step = (ends[1] - ends[0]) / SHADES.size();
        Column figure = columns.get(2);
        for (int i = 0; step > 0 && i < SHADES.size(); i++) {
            Entry from = Entry.number(ends[0] + i * step).in(SHADES.get(i));
            boolean last = i == SHADES.size() - 1;
            facts.add(new Schedule.Fact(
                    "shade" + i, figure.title() + " from", figure.form(), from, last ? "up" : "to the next"));
        }
        return facts;
    }
}
