package farwatt.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One table for a workbook or a list: its name, what stands above it, its columns and its lines. Lines are asked for
 * one by one, so that a table may be far larger than memory. As safe for threads as its lines are.
 *
 * @param name as people call it; the workbook's own name of the sheet may have to differ
 * @param note one or two sentences under the title, "" for none
 * @param facts figures above the table that its formulas use
 * @param chart what is drawn of it beside it
 */
public record Schedule(
        String name, String note, List<Fact> facts, List<Column> columns, Lines lines, Optional<Chart> chart) {
    /** How a table is drawn: its first column goes along, every further column of numbers is a series. */
    public enum Chart {
        /** A line from point to point; the first column holds numbers. */
        LINE,
        /** Bars without gaps: what stays the same until the next step. */
        STEPS,
        /** Bars, one a line of the table. */
        BARS
    }

    public Schedule {
        facts = List.copyOf(facts);
        columns = List.copyOf(columns);
    }

    public Schedule(String name, String note, List<Column> columns, Lines lines) {
        this(name, note, List.of(), columns, lines);
    }

    public Schedule(String name, String note, List<Fact> facts, List<Column> columns, Lines lines) {
        this(name, note, facts, columns, lines, Optional.empty());
    }

    /** The same with a chart beside it. */
    public Schedule with(Chart drawn) {
        return new Schedule(name, note, facts, columns, lines, Optional.of(drawn));
    }

    /**
     * One figure with its name.
     *
     * @param key by which formulas name it
     * @param label in words, with the unit
     */
    public record Fact(String key, String label, Form form, Entry value, String note) {}

    /** The lines of a table. */
    public interface Lines {
        int size();

        /** The entries of a line, one a column. */
        List<Entry> at(int line);

        static Lines of(List<List<Entry>> lines) {
            return new Lines() {
                @Override
                public int size() {
                    return lines.size();
                }

                @Override
                public List<Entry> at(int line) {
                    return lines.get(line);
                }
            };
        }
    }

    /** A table without the columns that are empty in every line; one without lines keeps them all. */
    static Schedule trimmed(String name, String note, List<Fact> facts, List<Column> columns, List<List<Entry>> lines) {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            if (lines.isEmpty()
                    || lines.stream().anyMatch(line -> !line.get(column).isBlank())) {
                kept.add(i);
            }
        }
        List<Column> some = kept.stream().map(columns::get).toList();
        List<List<Entry>> shorter = lines.stream()
                .map(line -> kept.stream().map(line::get).toList())
                .toList();
        return new Schedule(name, note, facts, some, Lines.of(shorter));
    }

    boolean isBanded() {
        return columns.stream().anyMatch(column -> column.band() != Column.Band.OTHER);
    }

    boolean isSummed() {
        return columns.stream().anyMatch(column -> column.total() == Column.Total.SUM);
    }
}
