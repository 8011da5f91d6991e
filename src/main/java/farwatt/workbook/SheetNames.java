package farwatt.workbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Names that workbook files allow for sheets: 1 to 31 characters, none of {@code : \ / ? * [ ]} and no control
 * character, no apostrophe at either end, not "History" (reserved for a record of changes), unique without regard to
 * case (ISO/IEC 29500 leaves the last two to the programs; all keep to them).
 */
final class SheetNames {
    private static final int LONGEST = 31;
    private static final String FORBIDDEN = ":\\/?*[]";

    private SheetNames() {}

    /** A valid name for each wanted one, in the same order; equal ones are told apart by {@code ~1}, {@code ~2} … */
    static List<String> of(List<String> wanted) {
        Set<String> taken = new HashSet<>(Set.of("history"));
        List<String> names = new ArrayList<>();
        List<String> plain = wanted.stream().map(SheetNames::allowed).toList();
        Set<String> seen = new HashSet<>();
        Set<String> twice = new HashSet<>();
        plain.forEach(name -> {
            if (!seen.add(fold(name))) {
                twice.add(fold(name));
            }
        });
        for (String name : plain) {
            String free = name;
            for (int i = 1; taken.contains(fold(free)) || (i == 1 && twice.contains(fold(name))); i++) {
                String tail = "~" + i;
                free = cut(name, LONGEST - tail.length()) + tail;
            }
            taken.add(fold(free));
            names.add(free);
        }
        return names;
    }

    private static String allowed(String wanted) {
        StringBuilder out = new StringBuilder();
        wanted.codePoints().forEach(c -> {
            boolean strange =
                    FORBIDDEN.indexOf(c) >= 0 || Character.isISOControl(c) || c == 0xFFFE || c == 0xFFFF || isHalf(c);
            out.appendCodePoint(strange ? '-' : c);
        });
        String name = cut(trimmed(out.toString()), LONGEST);
        name = trimmed(name);
        return name.isBlank() ? "Sheet" : name;
    }

    private static boolean isHalf(int c) {
        return c >= 0xD800 && c <= 0xDFFF;
    }

    private static String trimmed(String name) {
        int from = 0;
        int to = name.length();
        while (from < to && isEdge(name.charAt(from))) {
            from++;
        }
        while (to > from && isEdge(name.charAt(to - 1))) {
            to--;
        }
        return name.substring(from, to);
    }

    private static boolean isEdge(char c) {
        return c == '\'' || Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** Never through the middle of a character of two units. */
    private static String cut(String name, int length) {
        if (name.length() <= length) {
            return name;
        }
        return name.substring(0, Character.isHighSurrogate(name.charAt(length - 1)) ? length - 1 : length);
    }

    private static String fold(String name) {
        return name.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }
}
