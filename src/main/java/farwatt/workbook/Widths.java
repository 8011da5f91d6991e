package farwatt.workbook;

import java.util.Arrays;
import java.util.List;

/**
 * How wide columns must be, worked out from the texts alone: no font and no display is asked. A width is counted in
 * digits of the body's font.
 */
final class Widths {
    private static final int NARROWEST = 6;
    /** Air beside the text, and the arrow that a filter puts into the heading. */
    static final int AIR = 3;

    private static final int GAP = 2;

    private final List<Column> columns;
    private final int[] longest;

    Widths(List<Column> columns) {
        this.columns = columns;
        longest = new int[columns.size()];
    }

    void see(int column, Entry entry) {
        Form form = entry.form().orElse(columns.get(column).form());
        longest[column] = Math.max(longest[column], length(entry.shown(), form));
    }

    /** Widths in digits, one a column. */
    int[] all() {
        int[] all = new int[longest.length];
        Arrays.setAll(all, i -> width(columns.get(i), longest[i]));
        return all;
    }

    static int width(Column column, int longest) {
        boolean open = column.form().isReading() || column.form() == Form.ADVICE;
        int text =
                open ? column.form().widest() : Math.min(longest, column.form().widest());
        int width = Math.max(NARROWEST, Math.max(text, heading(column.title())) + AIR);
        // a heading must not touch the one beside it
        return Math.max(width, longestLine(column.title(), width) + GAP);
    }

    private static int longestLine(String title, int width) {
        int longest = 0;
        int left = 0;
        for (String word : title.split(" ", -1)) {
            int length = length(word);
            left = left > 0 && left + 1 + length <= width ? left + 1 + length : length;
            longest = Math.max(longest, left);
        }
        return longest;
    }

    /** A heading takes up to three lines: no word is broken, none stands alone on a long line. */
    private static int heading(String title) {
        int word = 0;
        for (String one : title.split(" ", -1)) {
            word = Math.max(word, length(one));
        }
        return Math.max(word, (length(title) + 2) / 3);
    }

    private static int length(Entry.Content content, Form form) {
        if (content instanceof Entry.Amount number) {
            return digits(number.value(), form);
        }
        if (content instanceof Entry.Words words) {
            int most = 0;
            for (String line : words.text().split("\n", -1)) {
                most = Math.max(most, length(line));
            }
            return most;
        }
        return content instanceof Entry.Day ? 10 : 0;
    }

    private static int digits(double value, Form form) {
        if (form == Form.FREE) {
            return Math.min(11, Double.toString(value).length());
        }
        double shown = form == Form.SHARE ? value * 100 : value;
        int whole = Math.abs(shown) < 1 ? 1 : (int) Math.floor(Math.log10(Math.abs(shown)) + 1e-9) + 1;
        int decimals = form.decimals();
        return whole + (shown < 0 ? 1 : 0) + (decimals > 0 ? decimals + 1 : 0) + (form == Form.SHARE ? 1 : 0);
    }

    /** Characters as wide as a digit; those of East Asian scripts count twice. */
    static int length(String text) {
        return text.codePoints()
                .map(c -> (c >= 0x1100 && Character.isIdeographic(c))
                                || (c >= 0x1100 && c < 0x1200)
                                || (c >= 0x3040 && c < 0x3100)
                                || (c >= 0xAC00 && c < 0xD7B0)
                                || (c >= 0xFF00 && c < 0xFF61)
                        ? 2
                        : 1)
                .sum();
    }

    /** How many lines a sentence takes in a column of that width: letters are a little narrower than digits. */
    static int sentenceLines(String text, int width) {
        return lines(text, width + width / 10);
    }

    /** How many lines a text takes in a column of that width, words unbroken. */
    static int lines(String text, int width) {
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            int left = 0;
            lines++;
            for (String word : paragraph.split(" ", -1)) {
                int length = length(word);
                if (left > 0 && left + 1 + length > width) {
                    lines++;
                    left = 0;
                }
                // a word longer than the line is broken
                lines += left == 0 ? Math.max(0, (length - 1) / width) : 0;
                left = left > 0 ? left + 1 + length : length == 0 ? 0 : (length - 1) % width + 1;
            }
        }
        return lines;
    }
}
