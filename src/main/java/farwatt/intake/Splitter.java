package farwatt.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts a text into rows and cells by a delimiter. A quote opens a cell only at its start and only when a closing one
 * stands before a delimiter or a line's end; any other quote (an inch mark, a ditto mark) is text. Takes time in
 * proportion to the text whatever is in it.
 */
final class Splitter {
    private static final int LONGEST_QUOTED = 20_000;
    private static final String GUARDED = "=+-@\t\r";

    private final String text;
    private final char delimiter;
    private final List<RawRow> rows = new ArrayList<>();
    private final Alike alike = new Alike();
    private List<RawCell> cells = new ArrayList<>();
    private long scans;
    private int line = 1;
    private int at;

    private Splitter(String text, char delimiter) {
        this.text = text;
        this.delimiter = delimiter;
        this.scans = 8L * text.length() + LONGEST_QUOTED;
    }

    /** All rows, blank ones left out. */
    static List<RawRow> split(String text, char delimiter) {
        return new Splitter(text, delimiter).rows(Integer.MAX_VALUE);
    }

    /** The first rows, up to a number. */
    static List<RawRow> sample(String text, char delimiter, int most) {
        return new Splitter(text, delimiter).rows(most);
    }

    private List<RawRow> rows(int most) {
        while (at < text.length() && rows.size() < most) {
            row();
        }
        return rows;
    }

    private void row() {
        int started = line;
        cells = new ArrayList<>(cells.size());
        boolean more = true;
        while (more) {
            cell();
            more = at < text.length() && text.charAt(at) == delimiter;
            if (more) {
                at++;
            }
        }
        endLine();
        RawRow row = new RawRow(started, cells, Look.PLAIN);
        if (!row.isBlank()) {
            rows.add(row);
        }
    }

    private void endLine() {
        if (at < text.length()) {
            boolean pair = text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
            at += pair ? 2 : 1;
            line++;
        }
    }

    private void cell() {
        int start = at;
        int quote = start;
        while (quote < text.length() && text.charAt(quote) == ' ') {
            quote++;
        }
        int close = quote < text.length() && text.charAt(quote) == '"' ? closing(quote) : -1;
        if (close >= 0) {
            quoted(quote, close);
            return;
        }
        while (at < text.length() && text.charAt(at) != delimiter && !isBreak(text.charAt(at))) {
            at++;
        }
        cells.add(alike.text(text, isGuarded(start) ? start + 1 : start, at));
    }

    private void quoted(int open, int close) {
        String inside = text.substring(open + 1, close);
        for (int i = open; i < close; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && text.charAt(i + 1) != '\n')) {
                line++;
            }
        }
        boolean guarded = inside.startsWith("'") && isGuarded(open + 1);
        cells.add(RawCell.text((guarded ? inside.substring(1) : inside).replace("\"\"", "\"")));
        at = afterBlanks(close + 1);
    }

    /** The quote that closes the one at a place, or −1 if that one is plain text. */
    private int closing(int open) {
        int end = (int) Math.min(text.length(), open + Math.min(LONGEST_QUOTED, scans));
        int i = open + 1;
        while (i < end) {
            if (text.charAt(i) != '"') {
                i++;
            } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                i += 2;
            } else if (endsCell(i + 1)) {
                scans -= i - open;
                return isDitto(open, i) ? -1 : i;
            } else {
                i++;
            }
        }
        scans -= i - open;
        return -1;
    }

    /** A mark that programs put before what a sheet program would run, so that it stays text. */
    private boolean isGuarded(int start) {
        int i = start;
        while (i < text.length() && text.charAt(i) == '\'') {
            i++;
        }
        return i > start && i < text.length() && text.charAt(i) != delimiter && GUARDED.indexOf(text.charAt(i)) >= 0;
    }

    private boolean endsCell(int place) {
        int after = afterBlanks(place);
        return after >= text.length() || text.charAt(after) == delimiter || isBreak(text.charAt(after));
    }

    /** A lone quote that means "as above" looks like the start of a cell that runs on to the next such mark. */
    private boolean isDitto(int open, int close) {
        String inside = text.substring(open + 1, close);
        return !inside.isEmpty() && inside.charAt(0) == delimiter && inside.indexOf('\n') > 0;
    }

    private int afterBlanks(int place) {
        int i = place;
        while (i < text.length() && text.charAt(i) == ' ') {
            i++;
        }
        return i;
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
