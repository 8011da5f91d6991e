package farwatt.window.console;

import farwatt.script.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** How a stretch of a script is coloured. */
enum Tint {
    PLAIN("plain"),
    /** A word of the language. */
    KEYWORD("keyword"),
    /** A word that this program brings. */
    OURS("ours"),
    TEXT("quoted"),
    NUMBER("number"),
    /** What is there for people alone. */
    REMARK("remark");

    private static final Set<String> KEYWORDS = Set.of(
            ("await break case catch class const continue debugger default delete do else export extends finally for"
                            + " function if import in instanceof let new of return static super switch this throw try"
                            + " typeof var void while yield true false null undefined async")
                    .split(" "));
    private static final Set<String> OUR_WORDS = Words.all().stream()
            .flatMap(word -> List.of(word.name().split("\\.")).subList(0, 1).stream())
            .collect(Collectors.toUnmodifiableSet());

    final String style;

    Tint(String style) {
        this.style = style;
    }

    /**
     * A stretch of one colour.
     *
     * @param from the first place
     * @param to the place after the last
     */
    record Stretch(int from, int to, Tint tint) {}

    /** The stretches of a text, without gaps; goes by signs alone, whatever is wrong with it. */
    static List<Stretch> of(String text) {
        List<Stretch> all = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            Stretch next = next(text, at);
            int last = all.size() - 1;
            if (last >= 0 && next.tint() == PLAIN && all.get(last).tint() == PLAIN) {
                all.set(last, new Stretch(all.get(last).from(), next.to(), PLAIN));
            } else {
                all.add(next);
            }
            at = next.to();
        }
        return all;
    }

    private static Stretch next(String text, int at) {
        char c = text.charAt(at);
        if (text.startsWith("//", at)) {
            return new Stretch(at, end(text, "\n", at, 0), REMARK);
        }
        if (text.startsWith("/*", at)) {
            return new Stretch(at, end(text, "*/", at + 2, 2), REMARK);
        }
        if (c == '\'' || c == '"' || c == '`') {
            return new Stretch(at, quoted(text, at), TEXT);
        }
        if (Character.isJavaIdentifierStart(c)) {
            return word(text, at);
        }
        if (Character.isDigit(c)) {
            int to = at + 1;
            while (to < text.length() && (Character.isLetterOrDigit(text.charAt(to)) || text.charAt(to) == '.')) {
                to++;
            }
            return new Stretch(at, to, NUMBER);
        }
        return new Stretch(at, at + 1, PLAIN);
    }

    private static Stretch word(String text, int at) {
        int to = at + 1;
        while (to < text.length() && Character.isJavaIdentifierPart(text.charAt(to))) {
            to++;
        }
        String word = text.substring(at, to);
        boolean member = at > 0 && text.charAt(at - 1) == '.';
        Tint tint = member ? PLAIN : KEYWORDS.contains(word) ? KEYWORD : OUR_WORDS.contains(word) ? OURS : PLAIN;
        return new Stretch(at, to, tint);
    }

    private static int end(String text, String sign, int from, int length) {
        int found = text.indexOf(sign, from);
        return found < 0 ? text.length() : found + length;
    }

    /** The end of a quoted text; one on a single line ends with it. */
    private static int quoted(String text, int at) {
        char quote = text.charAt(at);
        int to = at + 1;
        while (to < text.length()) {
            char c = text.charAt(to);
            if (c == quote) {
                return to + 1;
            }
            if (c == '\n' && quote != '`') {
                return to;
            }
            to += c == '\\' ? 2 : 1;
        }
        return text.length();
    }

    /** True for a place in what is there for people alone. */
    static boolean isRemark(String text, int place) {
        return of(text).stream()
                .anyMatch(stretch -> stretch.tint() == REMARK && place > stretch.from() && place <= stretch.to());
    }

    /** Where the quoted text begins that the place lies in; −1 for none. */
    static int quotedAt(String text, int place) {
        for (Stretch stretch : of(text)) {
            if (stretch.tint() == TEXT && place > stretch.from() && place <= stretch.to()) {
                char last = text.charAt(stretch.to() - 1);
                boolean closed = stretch.to() - stretch.from() > 1 && last == text.charAt(stretch.from());
                return place < stretch.to() || !closed ? stretch.from() : -1;
            }
        }
        return -1;
    }
}
