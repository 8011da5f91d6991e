package farwatt.language;

import farwatt.quantity.Decimal;
import farwatt.quantity.Units;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a text by recursive descent, one method a rule of the grammar. Says all that is wrong and goes on behind it;
 * every loop takes a word or ends, so it ends for any text.
 */
final class Parser {
    static final int LONGEST = 20_000;
    static final int DEEPEST = 200;
    private static final Set<String> OF_STUDIES = Set.of("..", "±", "~");

    private final String text;
    private final Problems problems = new Problems();
    private final Lexer lexer;
    private final Words words;
    private final Operators operators;
    private int depth;

    Parser(String text, Units units, Decimal decimal, Optional<Span> hole) {
        this.text = text;
        this.lexer = new Lexer(text, units, decimal, problems, hole);
        this.words = new Words(lexer.tokens(), problems, hole);
        this.operators = new Operators(this, words);
    }

    /** Reads a text; one that is too long is not read at all. */
    static Parsed parse(String text, Units units, Decimal decimal) {
        if (text.length() > LONGEST) {
            Problems problems = new Problems();
            Span all = new Span(0, text.length());
            problems.add(all, ProblemCode.TOO_LONG, LONGEST);
            return new Parsed(text, new Expr.Broken(all, List.of()), problems.inOrder(), List.of());
        }
        return new Parser(text, units, decimal, Optional.empty()).parsed();
    }

    Parsed parsed() {
        Expr expr = whole();
        return new Parsed(text, expr, problems.inOrder(), words.colours(lexer.strangeStretches()));
    }

    /** Reserved words that could stand where the word to be completed is. */
    Set<Keyword> possibleInHole() {
        return words.possibleInHole();
    }

    private Expr whole() {
        if (words.atEnd()) {
            words.complain(ProblemCode.EMPTY);
            return nothing();
        }
        Expr first = expr();
        if (words.atEnd()) {
            return first;
        }
        List<Expr> parts = new ArrayList<>(List.of(first));
        leftOver();
        while (!words.atEnd()) {
            if (!startsValue(words.here())) {
                words.next();
            } else {
                parts.add(expr());
            }
        }
        return new Expr.Broken(words.since(0), parts);
    }

    private void leftOver() {
        if (!complainOfSigns()) {
            words.complain(ProblemCode.LEFT_OVER);
        }
    }

    /** Names what a sign that belongs elsewhere was probably meant to be. */
    boolean complainOfSigns() {
        Token here = words.here();
        boolean inStudies = OF_STUDIES.contains(here.text()) && here.kind() == Token.Kind.SIGN;
        if (inStudies) {
            words.complain(ProblemCode.SPAN_HERE);
        } else if (here.is(",") && isInsideNumber(here.span().from())) {
            words.complain(ProblemCode.COMMA_IN_NUMBER);
        } else {
            return false;
        }
        return true;
    }

    private boolean isInsideNumber(int comma) {
        return comma > 0
                && comma + 1 < text.length()
                && Character.isDigit(text.charAt(comma - 1))
                && Character.isDigit(text.charAt(comma + 1));
    }

    static boolean startsValue(Token token) {
        return switch (token.kind()) {
            case QUANTITY, TEXT, ROW, NAME -> true;
            case SIGN -> token.is("(") || token.is("-");
            case WORD -> {
                Keyword keyword = Keyword.of(token.text()).orElseThrow();
                yield keyword.gather().isPresent() || Keyword.startingValues().contains(keyword);
            }
            case END -> false;
        };
    }

    /** The rule all others start from. */
    Expr expr() {
        if (!enter()) {
            return nothing();
        }
        Expr read = words.here().is(Keyword.IF) ? condition() : operators.climb(Operator.Level.OR);
        leave();
        return read;
    }

    /** False, with everything skipped, where the text is nested too deeply to be read on. */
    boolean enter() {
        if (depth < DEEPEST) {
            depth++;
            return true;
        }
        words.complain(ProblemCode.TOO_DEEP, DEEPEST);
        words.skipAll();
        return false;
    }

    void leave() {
        depth--;
    }

    private Expr condition() {
        int from = words.from();
        List<Expr.Branch> branches = new ArrayList<>();
        while (words.take(Keyword.IF)) {
            Expr when = expr();
            want(Keyword.THEN);
            branches.add(new Expr.Branch(when, expr()));
            want(Keyword.ELSE);
        }
        Expr otherwise = expr();
        return Shape.condition(words.since(from), branches, otherwise);
    }

    /** Takes a reserved word; where it is missing, goes on behind the next one if there is one. */
    void want(Keyword keyword) {
        if (words.take(keyword)) {
            return;
        }
        words.complain(ProblemCode.WANTED_WORD, Say.quoted(keyword.word()));
        boolean slip = words.near().filter(keyword.word()::equals).isPresent();
        boolean here = slip || words.skipTo(keyword);
        // a word with a value behind it stands where the reserved word should
        if (here || (words.here().kind() == Token.Kind.NAME && startsValue(words.following()))) {
            words.next();
        }
    }

    /** A place where something is missing. */
    Expr nothing() {
        return new Expr.Broken(new Span(words.from(), words.from()), List.of());
    }
}
