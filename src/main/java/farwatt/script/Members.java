package farwatt.script;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a study's result has to offer after a dot, for completion. Any thread. */
public final class Members {
    private static final Pattern MADE = Pattern.compile("(?:^|[\\s;{(])(\\w+)\\s*=\\s*(?:plan\\.)?(\\w+)\\s*\\(");

    private static final List<Words.Word> ALL_HAVE = List.of(
            word("show", "show()", "Shows the result as a table.", ".show()"),
            word(
                    "picture",
                    "picture(column, name)",
                    "Draws a column; with a name it is saved as well.",
                    ".picture('gate.reserve_share')"),
            word("save", "save(name)", "Saves the table as .csv or .xlsx.", ".save('heat.xlsx')"),
            word("rows", "rows()", "The points as objects, a member for each column.", ".rows().length"),
            word("columns", "columns", "The columns: name and unit.", ".columns"),
            word("points", "points", "The points: a list of values for each.", ".points"));

    private static final List<Words.Word> SWEEP =
            List.of(word("varied", "varied", "The cells that were varied.", ".varied"));
    private static final List<Words.Word> GROW = List.of(
            word("fitted", "fitted", "How many copies fitted.", ".fitted"),
            word("stopped_by", "stopped_by", "What ended it, a sentence.", ".stopped_by"),
            word("reached", "reached", "Whether the condition was met.", ".reached"),
            word("first_dark", "first_dark", "With so many copies the first one stays dark, or null.", ".first_dark"),
            word("dark", "dark", "The one that stays dark, or an empty text.", ".dark"));
    private static final List<Words.Word> LIMIT = List.of(
            word("farthest", "farthest", "The farthest value for which it holds, SI, or null.", ".farthest"),
            word("text", "text", "The farthest value as people read it.", ".text"),
            word("beyond", "beyond", "The nearest value for which it does not hold, or null.", ".beyond"),
            word("monotonic", "monotonic", "Whether the condition comes and goes.", ".monotonic"));
    private static final List<Words.Word> SPREAD =
            List.of(word("read", "read", "The figures by expression.", ".read['gate.reserve_share'].mean"));
    private static final List<Words.Word> SENSITIVITY = List.of(
            word("read", "read", "What was looked at.", ".read"),
            word("now", "now", "Its value as things stand, SI.", ".now"),
            word("without", "without", "How many inputs have no effect.", ".without"));

    private static final Map<String, List<Words.Word>> OWN = Map.of(
            "sweep",
            SWEEP,
            "grow",
            GROW,
            "limit",
            LIMIT,
            "spread",
            SPREAD,
            "sensitivity",
            SENSITIVITY,
            "room",
            List.of(),
            "table",
            List.of());

    private Members() {}

    private static Words.Word word(String name, String call, String sentence, String example) {
        return new Words.Word(name, call, sentence, example);
    }

    /** What a result of that kind of study has, its own first; empty where the word makes no result. */
    public static List<Words.Word> of(String kind) {
        List<Words.Word> own = OWN.get(kind);
        if (own == null) {
            return List.of();
        }
        List<Words.Word> all = new ArrayList<>(own);
        all.addAll(ALL_HAVE);
        return all;
    }

    /** Which kind of study a name was last given the result of, anywhere in a script's text. */
    public static Optional<String> kind(String text, String name) {
        Optional<String> kind = Optional.empty();
        Matcher made = MADE.matcher(text);
        while (made.find()) {
            if (made.group(1).equals(name)) {
                kind = Optional.of(made.group(2)).filter(OWN::containsKey);
            }
        }
        return kind;
    }
}
