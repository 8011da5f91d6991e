package farwatt.plan;

import java.util.Optional;
import java.util.Set;

/**
 * Where a scenario's step sets something: {@code trunk.gauge}, {@code 'cam 1'.draw}, or a bare name of a value or of
 * the plan.
 *
 * @param row id of the row, "" for a bare name
 * @param name of the cell or value
 */
public record StepPath(String row, String name) {
    /** Words that have a meaning in expressions, or may get one: an id that is one of these is put in quotes. */
    private static final Set<String> WORDS = Set.of(
            "if",
            "then",
            "else",
            "or",
            "and",
            "not",
            "is",
            "yes",
            "no",
            "this",
            "plan",
            "of",
            "on",
            "under",
            "where",
            "total",
            "mean",
            "least",
            "greatest",
            "every",
            "some",
            "count",
            "min",
            "max",
            "abs",
            "sqrt",
            "round",
            "down",
            "up",
            "devices",
            "runs",
            "switches",
            "sources",
            "zones",
            "bundles");

    /** Takes a path apart; empty if it is none. */
    public static Optional<StepPath> of(String text) {
        String path = text.strip();
        int end = path.startsWith("'") ? quoteEnd(path) : wordEnd(path);
        if (end < 0) {
            return Optional.empty();
        }
        String first = path.substring(0, end);
        if (end == path.length()) {
            return isName(first) ? Optional.of(new StepPath("", first)) : Optional.empty();
        }
        String name = path.substring(end + 1).strip();
        if (path.charAt(end) != '.' || !isName(name)) {
            return Optional.empty();
        }
        if (first.startsWith("'")) {
            return Optional.of(new StepPath(first.substring(1, end - 1).replace("''", "'"), name));
        }
        String row = first.strip();
        return isName(row) ? Optional.of(new StepPath(row.equals("plan") ? "" : row, name)) : Optional.empty();
    }

    /** The path as people and files write it. */
    public String text() {
        return row.isEmpty() ? name : quoted(row) + "." + name;
    }

    /** An id as expressions write it: bare where it is a plain name, else in single quotes. */
    public static String quoted(String id) {
        return isName(id) && !WORDS.contains(id) ? id : "'" + id.replace("'", "''") + "'";
    }

    /** True for a word that has a meaning in expressions, or may get one: no column or value can be named so. */
    public static boolean isReserved(String name) {
        return WORDS.contains(name);
    }

    /** True for a letter followed by letters, digits and underscores, of any script. */
    public static boolean isName(String text) {
        return !text.isEmpty()
                && Character.isLetter(text.codePointAt(0))
                && text.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == '_');
    }

    private static int wordEnd(String path) {
        int dot = path.indexOf('.');
        return dot < 0 ? path.length() : dot;
    }

    private static int quoteEnd(String path) {
        int at = 1;
        while (at < path.length()) {
            if (path.charAt(at) == '\'') {
                if (!path.startsWith("''", at)) {
                    return at + 1;
                }
                at++;
            }
            at++;
        }
        return -1;
    }
}
