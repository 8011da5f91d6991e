package farwatt.language;

import farwatt.report.Span;

/** Shows a place in a text to someone who reads it in letters of one width. */
public final class Marked {
    private static final int WIDEST = 100;
    private static final int AROUND = 40;

    private Marked() {}

    /**
     * The text on one line and carets under a stretch of it on the next. Of a long text only what is around the place
     * is shown; line ends and tabs are shown as spaces.
     */
    public static String show(String text, Span span) {
        int from = Math.min(span.from(), text.length());
        int to = Math.min(span.to(), text.length());
        int left = 0;
        int right = text.length();
        if (text.length() > WIDEST) {
            left = whole(text, Math.max(0, from - AROUND));
            right = whole(text, Math.min(text.length(), Math.max(Math.min(to, left + WIDEST), from) + AROUND));
        }
        String before = left > 0 ? "…" : "";
        String after = right < text.length() ? "…" : "";
        String line = before + flat(text.substring(left, right)) + after;
        int indent = before.length() + width(text, left, from);
        int carets = Math.max(1, width(text, from, Math.min(to, right)));
        return line + "\n" + " ".repeat(indent) + "^".repeat(carets);
    }

    /** A place between two characters, not inside one. */
    private static int whole(String text, int at) {
        boolean inside = at > 0
                && at < text.length()
                && Character.isLowSurrogate(text.charAt(at))
                && Character.isHighSurrogate(text.charAt(at - 1));
        return inside ? at - 1 : at;
    }

    private static String flat(String text) {
        StringBuilder out = new StringBuilder(text);
        for (int i = 0; i < out.length(); i++) {
            if (Character.isISOControl(out.charAt(i)) || Character.getType(out.charAt(i)) == Character.LINE_SEPARATOR) {
                out.setCharAt(i, ' ');
            }
        }
        return out.toString();
    }

    private static int width(String text, int from, int to) {
        int columns = 0;
        for (int at = from; at < to; at += Character.charCount(text.codePointAt(at))) {
            columns += width(text.codePointAt(at));
        }
        return columns;
    }

    /** Marks stand on the letter before them; ideographs and their like take two columns. */
    private static int width(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        boolean wide = Character.isIdeographic(c)
                || (c >= 0x3040 && c <= 0x30FF)
                || (c >= 0xAC00 && c <= 0xD7A3)
                || (c >= 0xFF01 && c <= 0xFF60);
        return wide ? 2 : 1;
    }
}
