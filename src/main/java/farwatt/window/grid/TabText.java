package farwatt.window.grid;

import java.util.ArrayList;
import java.util.List;

/**
 * A block of cells as text: tabs between cells, line breaks between rows. A cell that holds one of these or a double
 * quote stands in double quotes, with quotes inside doubled.
 */
public final class TabText {
    private final String text;
    private int at;

    private TabText(String text) {
        this.text = text;
    }

    /** Cells by rows as one text. */
    public static String write(List<List<String>> rows) {
        StringBuilder out = new StringBuilder();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                out.append(i == 0 ? "" : "\t").append(quoted(row.get(i)));
            }
            out.append('\n');
        }
        return out.toString();
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == '\t' || c == '\n' || c == '\r' || c == '"');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    /** The rows of a text; a line break at its end begins no further row. Rows may differ in length. */
    static List<List<String>> read(String text) {
        return new TabText(text).rows();
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        while (at < text.length()) {
            row.add(cell());
            boolean goesOn = at < text.length() && text.charAt(at) == '\t';
            if (goesOn) {
                at++;
                if (at == text.length()) {
                    row.add("");
                }
            }
            if (!goesOn || at == text.length()) {
                at = lineEnd(at);
                rows.add(row);
                row = new ArrayList<>();
            }
        }
        return rows;
    }

    /** The place after a line break at {@code from}, of whatever kind. */
    private int lineEnd(int from) {
        if (text.startsWith("\r\n", from)) {
            return from + 2;
        }
        return Math.min(from + 1, text.length());
    }

    private String cell() {
        if (text.charAt(at) == '"') {
            int end = closing(at + 1);
            if (end >= 0 && (end + 1 == text.length() || isBreak(text.charAt(end + 1)))) {
                String inside = text.substring(at + 1, end).replace("\"\"", "\"");
                at = end + 1;
                return inside;
            }
        }
        int from = at;
        while (at < text.length() && !isBreak(text.charAt(at))) {
            at++;
        }
        return text.substring(from, at);
    }

    /** Where the quote closes that was opened before {@code from}; −1 if it never does. */
    private int closing(int from) {
        int i = from;
        while (i < text.length()) {
            if (text.charAt(i) == '"') {
                if (!text.startsWith("\"\"", i)) {
                    return i;
                }
                i++;
            }
            i++;
        }
        return -1;
    }

    private static boolean isBreak(char c) {
        return c == '\t' || c == '\n' || c == '\r';
    }
}
