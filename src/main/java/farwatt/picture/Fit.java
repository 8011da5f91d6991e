package farwatt.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide texts are, reckoned without a font so that a layout is the same on every machine; on the wide side of
 * common fonts without serifs.
 */
final class Fit {
    private static final String NARROW = "iljI.,:;'|!()[]{} ·ft1";
    private static final String WIDE = "mwMW@%—–…&";
    private static final int TAIL = 8;

    private Fit() {}

    /** Width of a text in units of the drawing. */
    static double width(String text, double size, Weight weight) {
        double em = text.codePoints().mapToDouble(Fit::em).sum();
        return em * size * (weight == Weight.BOLD ? 1.1 : 1);
    }

    private static double em(int c) {
        if (NARROW.indexOf(c) >= 0) {
            return 0.37;
        }
        if (WIDE.indexOf(c) >= 0 || c >= 0x1100) {
            return 1;
        }
        return Character.isUpperCase(c) ? 0.72 : 0.62;
    }

    /** The text if it fits, else its beginning and its end: numbers that tell rows apart often stand at the end. */
    static String trim(String text, double size, Weight weight, double room) {
        return trim(text, size, weight, room, TAIL);
    }

    /** The same with only its beginning. */
    static String trimEnd(String text, double size, Weight weight, double room) {
        return trim(text, size, weight, room, 0);
    }

    private static String trim(String text, double size, Weight weight, double room, int longestTail) {
        if (width(text, size, weight) <= room) {
            return text;
        }
        int[] all = text.codePoints().toArray();
        for (int keep = all.length - 1; keep > 1; keep--) {
            int tail = Math.min(keep / 3, longestTail);
            String cut = new String(all, 0, keep - tail) + "…" + new String(all, all.length - tail, tail);
            if (width(cut, size, weight) <= room) {
                return cut;
            }
        }
        return "…";
    }

    /** A sentence in lines no wider than the room; a longer word is trimmed. */
    static List<String> wrap(String text, double size, Weight weight, double room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size, weight) > room) {
                lines.add(line.toString());
                line.setLength(0);
                longer = word;
            }
            line.setLength(0);
            line.append(trim(longer, size, weight, room));
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /**
     * A text from outside as it may be drawn: characters that cannot stand in XML, steer the direction of writing or
     * break lines become a replacement sign or a blank.
     */
    static String plain(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            boolean steering = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
            if (Character.isWhitespace(c) || c == 0x2028 || c == 0x2029) {
                out.append(' ');
            } else if (Character.isISOControl(c)
                    || steering
                    || Character.getType(c) == Character.SURROGATE
                    || (c & 0xFFFE) == 0xFFFE) {
                out.append('\uFFFD');
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }
}
