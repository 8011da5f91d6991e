package farwatt.intake;

import java.text.Normalizer;
import java.util.Locale;

/** What counts as the same spelling: blanks that cannot be seen, upper and lower case, marks on letters. */
final class Spelling {
    private Spelling() {}

    /** Without blanks and invisible signs at both ends. Tabs stay: a name may begin with one. */
    static String strip(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isUnseen(text.charAt(from))) {
            from++;
        }
        while (to > from && isUnseen(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    /** Stripped, with plain blanks for odd ones and for line breaks, invisible signs gone. */
    static String tidy(String text) {
        String stripped = strip(text);
        if (isPlain(stripped)) {
            return stripped;
        }
        StringBuilder out = new StringBuilder(stripped.length());
        for (int i = 0; i < stripped.length(); i++) {
            char c = stripped.charAt(i);
            boolean second = c == '\n' && i > 0 && stripped.charAt(i - 1) == '\r';
            if (isOddBlank(c) || c == '\r' || c == '\n') {
                out.append(second ? "" : " ");
            } else if (!isInvisible(c)) {
                out.append(c);
            }
        }
        return out.toString();
    }

    /** For comparing: lower case, no marks on letters, letters and digits only, single blanks between. */
    static String fold(String text) {
        if (isFolded(text)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        String parted = isPlain(text) ? text : Normalizer.normalize(text, Normalizer.Form.NFKD);
        boolean gap = false;
        for (int i = 0; i < parted.length(); i++) {
            char typed = parted.charAt(i);
            char c = typed >= 'A' && typed <= 'Z' ? (char) (typed + 32) : Character.toLowerCase(typed);
            if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c > 127 && Character.isLetterOrDigit(c))) {
                if (gap && out.length() > 0) {
                    out.append(' ');
                }
                gap = false;
                append(out, c);
            } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
                gap = true;
            }
        }
        return out.toString();
    }

    /** True for what folding would not change. */
    private static boolean isFolded(String text) {
        char before = ' ';
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c == ' ' && before != ' ');
            if (!plain) {
                return false;
            }
            before = c;
        }
        return before != ' ' || text.isEmpty();
    }

    private static void append(StringBuilder out, char c) {
        if (c < 128) {
            out.append(c);
            return;
        }
        switch (c) {
            case 'ß' -> out.append("ss");
            case 'ł' -> out.append('l');
            case 'ø' -> out.append('o');
            case 'æ' -> out.append("ae");
            case 'œ' -> out.append("oe");
            case 'đ' -> out.append('d');
            default -> out.append(c);
        }
    }

    /** Lower case without regard to the machine's language. */
    static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c > 126 || c == '\n' || c == '\r') {
                return false;
            }
        }
        return true;
    }

    private static boolean isUnseen(char c) {
        if (c > ' ' && c < 127) {
            return false;
        }
        return c == ' ' || c == '\n' || c == '\r' || isOddBlank(c) || isInvisible(c);
    }

    private static boolean isOddBlank(char c) {
        return c == '\u00a0' || (c >= '\u2000' && c <= '\u200a') || c == '\u202f' || c == '\u205f' || c == '\u3000';
    }

    private static boolean isInvisible(char c) {
        return c == '\u200b'
                || c == '\u200c'
                || c == '\u200d'
                || c == '\u2060'
                || c == '\ufeff'
                || c == '\u00ad'
                || (c >= '\u200e' && c <= '\u200f')
                || (c >= '\u202a' && c <= '\u202e');
    }
}
