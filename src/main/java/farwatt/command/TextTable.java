package farwatt.command;

import java.util.ArrayList;
import java.util.List;

/** A table in letters of one width; columns as wide as their longest cell, two blanks between. */
final class TextTable {
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(List<String> headings) {
        rows.add(List.copyOf(headings));
    }

    void row(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    boolean isEmpty() {
        return rows.size() == 1;
    }

    /** The lines, without blanks at their ends. */
    List<String> lines() {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], width(row.get(i)));
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                line.append(row.get(i)).append(" ".repeat(widths[i] - width(row.get(i)) + 2));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
