package farwatt.language;

import farwatt.quantity.Decimal;
import farwatt.quantity.Literal;
import farwatt.quantity.Scanner;
import farwatt.quantity.Units;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Cuts a text into words. Signs of other languages are read as ours, with a problem that says how ours is written. */
final class Lexer {
    /** Longest first, so that {@code <=} is not taken for {@code <}. */
    private static final List<String> SIGNS =
            List.of("..", "<=", ">=", "(", ")", ",", ".", "+", "-", "*", "/", "^", "<", ">", "±", "~");
    /** What other languages write, in the order in which it is tried, and how it is written here. */
    private static final List<Map.Entry<String, String>> OTHERS = List.of(
            Map.entry("**", "^"),
            Map.entry("==", "is"),
            Map.entry("=<", "<="),
            Map.entry("=>", ">="),
            Map.entry("!=", "is not"),
            Map.entry("<>", "is not"),
            Map.entry("&&", "and"),
            Map.entry("||", "or"),
            Map.entry("≠", "is not"),
            Map.entry("≤", "<="),
            Map.entry("≥", ">="),
            Map.entry("×", "*"),
            Map.entry("·", "*"),
            Map.entry("÷", "/"),
            Map.entry("&", "and"),
            Map.entry("|", "or"),
            Map.entry("!", "not"),
            Map.entry("=", "is"),
            Map.entry(";", ","));

    private final String text;
    private final Scanner scanner;
    private final Problems problems;
    private final List<Token> tokens = new ArrayList<>();
    private final List<Span> strange = new ArrayList<>();
    private final Units units;
    private int at;

    /** @param hole a word to be completed, which is never a unit */
    Lexer(String text, Units units, Decimal decimal, Problems problems, Optional<Span> hole) {
        this.text = text;
        this.units = units;
        Set<String> words = new HashSet<>(Keyword.words());
        hole.ifPresent(span -> words.add(text.substring(span.from(), span.to())));
        this.scanner = new Scanner(text, units, decimal, words);
        this.problems = problems;
    }

    /** All words, with an end of no length behind the last. */
    List<Token> tokens() {
        while (at < text.length()) {
            char c = text.charAt(at);
            if (Scanner.isSpace(c)) {
                at++;
            } else if (c >= '0' && c <= '9') {
                number();
            } else if (isNameStart(text.codePointAt(at))) {
                name();
            } else if (!quoted(c) && !sign() && !otherSign()) {
                strange();
            }
        }
        add(Token.Kind.END, new Span(text.length(), text.length()), "");
        return tokens;
    }

    /** Stretches that no word was made of. */
    List<Span> strangeStretches() {
        return strange;
    }

    private void number() {
        Literal literal = scanner.at(at);
        Span span = literal.span();
        String said = text.substring(span.from(), span.to());
        switch (literal.doubt()) {
            case NONE -> {}
            case UNIT -> {
                Span unit = literal.units().get(0);
                String spelling = text.substring(unit.from(), unit.to());
                problems.near(unit, ProblemCode.UNKNOWN_UNIT, units.near(spelling), Say.quoted(spelling));
            }
            case RANGE -> problems.add(span, ProblemCode.NUMBER_RANGE, Say.quoted(said));
            case DECIMALS -> problems.add(span, ProblemCode.NUMBER_DOUBT, Say.quoted(said));
        }
        tokens.add(new Token(Token.Kind.QUANTITY, span, said, Optional.of(literal)));
        at = span.to();
    }

    private void name() {
        int end = nameEnd(text, at);
        String word = text.substring(at, end);
        add(Keyword.of(word).isPresent() ? Token.Kind.WORD : Token.Kind.NAME, new Span(at, end), word);
        at = end;
    }

    private boolean quoted(char c) {
        return switch (c) {
            case '"' -> quoted(Token.Kind.TEXT, "\"");
            case '\'' -> quoted(Token.Kind.ROW, "'");
            case '\u201c', '\u201d', '\u201e' -> quoted(Token.Kind.TEXT, "\"\u201c\u201d\u201e");
            case '\u2018', '\u2019', '\u201a' -> quoted(Token.Kind.ROW, "'\u2018\u2019\u201a");
            default -> false;
        };
    }

    /** Reads up to a closing quote; the plain quote, first of those that close, doubled is one of its content. */
    private boolean quoted(Token.Kind kind, String closing) {
        int from = at++;
        char plain = closing.charAt(0);
        StringBuilder content = new StringBuilder();
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (closing.indexOf(c) < 0) {
                content.append(c);
            } else if (c == plain && at < text.length() && text.charAt(at) == plain) {
                content.append(c);
                at++;
            } else {
                finish(kind, new Span(from, at), content.toString(), plain);
                return true;
            }
        }
        Span open = new Span(from, at);
        problems.add(open, ProblemCode.OPEN_QUOTE, String.valueOf(plain));
        add(kind, open, content.toString());
        return true;
    }

    private void finish(Token.Kind kind, Span span, String content, char plain) {
        if (text.charAt(span.from()) != plain) {
            Span open = new Span(span.from(), span.from() + 1);
            problems.add(open, ProblemCode.OTHER_SPELLING, text.charAt(span.from()), plain);
        }
        add(kind, span, content);
    }

    private boolean sign() {
        if (text.charAt(at) == '\u2212') {
            add(Token.Kind.SIGN, new Span(at, ++at), "-");
            return true;
        }
        for (String sign : SIGNS) {
            if (text.startsWith(sign, at) && !text.startsWith("**", at) && !text.startsWith("<>", at)) {
                add(Token.Kind.SIGN, new Span(at, at + sign.length()), sign);
                at += sign.length();
                return true;
            }
        }
        return false;
    }

    private boolean otherSign() {
        for (Map.Entry<String, String> other : OTHERS) {
            if (text.startsWith(other.getKey(), at)) {
                Span span = new Span(at, at + other.getKey().length());
                at = span.to();
                asOurs(span, other.getKey(), other.getValue());
                return true;
            }
        }
        return false;
    }

    private void asOurs(Span span, String theirs, String ours) {
        if (tokens.isEmpty() && theirs.startsWith("=")) {
            problems.add(span, ProblemCode.LEADING_EQUALS, Say.quoted(theirs));
            strange.add(span);
            return;
        }
        problems.instead(span, ProblemCode.OTHER_SPELLING, ours, Say.quoted(theirs), Say.quoted(ours));
        for (String word : ours.split(" ", -1)) {
            add(Keyword.of(word).isPresent() ? Token.Kind.WORD : Token.Kind.SIGN, span, word);
        }
    }

    private void strange() {
        int from = at;
        at += Character.charCount(text.codePointAt(at));
        Span span = new Span(from, at);
        // a stretch of nonsense is complained about once
        if (strange.isEmpty() || strange.get(strange.size() - 1).to() != from) {
            problems.add(span, ProblemCode.STRANGE_SIGN, Say.quoted(text.substring(from, at)));
        }
        strange.add(span);
    }

    private void add(Token.Kind kind, Span span, String word) {
        tokens.add(new Token(kind, span, word, Optional.empty()));
    }

    static boolean isNameStart(int c) {
        return Character.isLetter(c);
    }

    /** The end of the name that starts at a place. */
    static int nameEnd(String text, int from) {
        int at = from;
        while (at < text.length() && isNamePart(text.codePointAt(at))) {
            at += Character.charCount(text.codePointAt(at));
        }
        return at;
    }

    private static boolean isNamePart(int c) {
        // marks belong to the letters of many scripts
        return Character.isLetterOrDigit(c)
                || c == '_'
                || Character.getType(c) == Character.NON_SPACING_MARK
                || Character.getType(c) == Character.COMBINING_SPACING_MARK;
    }
}
