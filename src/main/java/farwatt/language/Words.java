package farwatt.language;

import farwatt.report.Span;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The words of a text with a place in them; knows which reserved words could have stood where it is. */
final class Words {
    private final List<Token> tokens;
    private final Problems problems;
    private final Optional<Span> hole;
    private final Coloured.Colour[] colours;
    private final Set<Keyword> possible = EnumSet.noneOf(Keyword.class);
    private final Set<Keyword> possibleInHole = EnumSet.noneOf(Keyword.class);
    private int at;
    private int possibleAt;
    private int complainedAt = -1;

    /** @param hole a word to be completed: what could stand in its place is kept */
    Words(List<Token> tokens, Problems problems, Optional<Span> hole) {
        this.tokens = tokens;
        this.problems = problems;
        this.hole = hole;
        this.colours = new Coloured.Colour[tokens.size()];
    }

    Token here() {
        return tokens.get(at);
    }

    Token following() {
        return tokens.get(Math.min(at + 1, tokens.size() - 1));
    }

    boolean atEnd() {
        return here().kind() == Token.Kind.END;
    }

    /** Takes the word here. */
    Token next() {
        Token token = here();
        if (!atEnd()) {
            at++;
        }
        return token;
    }

    Token next(Coloured.Colour colour) {
        colours[at] = colour;
        return next();
    }

    boolean take(String sign) {
        boolean found = here().is(sign);
        if (found) {
            next();
        }
        return found;
    }

    boolean take(Keyword keyword) {
        boolean found = is(keyword);
        if (found) {
            next();
        }
        return found;
    }

    /** True if this reserved word stands here; remembers that it could. */
    boolean is(Keyword keyword) {
        if (here().kind() == Token.Kind.NAME) {
            if (possibleAt != at) {
                possible.clear();
                possibleAt = at;
            }
            possible.add(keyword);
            if (complainedAt != at && hole.isPresent() && hole.get().equals(here().span())) {
                possibleInHole.add(keyword);
            }
        }
        return here().is(keyword);
    }

    int from() {
        return here().span().from();
    }

    /** From a place to the end of the last word taken. */
    Span since(int from) {
        int to = at == 0 ? 0 : tokens.get(at - 1).span().to();
        return new Span(Math.min(from, to), Math.max(from, to));
    }

    /** Says what is wrong with the word here: once a word, and not where something was wrong just before. */
    void complain(ProblemCode code, Object... more) {
        int before = at == 0 ? 0 : tokens.get(at - 1).span().to();
        if (complainedAt == at || problems.within(before, here().span().to())) {
            return;
        }
        complainedAt = at;
        Object[] parts = new Object[more.length + 1];
        parts[0] = said();
        System.arraycopy(more, 0, parts, 1, more.length);
        Optional<String> near = near();
        boolean said = near.map(Say::quoted).filter(List.of(more)::contains).isPresent();
        if (said) {
            problems.instead(here().span(), code, near.get(), parts);
        } else {
            problems.near(here().span(), code, near, parts);
        }
    }

    private String said() {
        Token token = here();
        return switch (token.kind()) {
            case END -> farwatt.report.Messages.text(Phrase.THE_END);
            case TEXT -> Say.quoted("\"" + token.text() + "\"");
            case ROW -> Say.quoted("'" + token.text() + "'");
            case QUANTITY, NAME, WORD, SIGN -> Say.quoted(token.text());
        };
    }

    /** The reserved word that the word here may have been meant to be. */
    Optional<String> near() {
        if (here().kind() != Token.Kind.NAME || possibleAt != at) {
            return Optional.empty();
        }
        return Near.best(here().text(), possible.stream().map(Keyword::word).toList());
    }

    /** Goes on at the next place where a reserved word stands outside inner parentheses, if there is one. */
    boolean skipTo(Keyword keyword) {
        int nest = 0;
        for (int i = at; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            nest += token.is("(") ? 1 : token.is(")") ? -1 : 0;
            if (nest < 0) {
                return false;
            }
            if (nest == 0 && token.is(keyword)) {
                at = i;
                return true;
            }
        }
        return false;
    }

    /** Goes on behind the parenthesis that closes the one around here, if there is one. */
    void skipOut() {
        int nest = 0;
        for (int i = at; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            nest += token.is("(") ? 1 : token.is(")") ? -1 : 0;
            if (nest < 0) {
                at = i + 1;
                return;
            }
        }
    }

    void skipAll() {
        at = tokens.size() - 1;
        complainedAt = at;
    }

    Set<Keyword> possibleInHole() {
        return possibleInHole;
    }

    /** Every word's colour, those of nonsense put in between. */
    List<Coloured> colours(List<Span> strange) {
        List<Coloured> all = new ArrayList<>();
        int reached = 0;
        int nextStrange = 0;
        for (int i = 0; i < tokens.size(); i++) {
            Span span = tokens.get(i).span();
            while (nextStrange < strange.size() && strange.get(nextStrange).from() <= span.from()) {
                all.add(new Coloured(strange.get(nextStrange++), Coloured.Colour.STRANGE));
            }
            if (span.to() > reached && tokens.get(i).kind() != Token.Kind.END) {
                colour(i, all);
                reached = span.to();
            }
        }
        return all;
    }

    private void colour(int i, List<Coloured> all) {
        Token token = tokens.get(i);
        if (token.literal().isPresent()) {
            List<Span> numbers = token.literal().get().numbers();
            List<Span> units = token.literal().get().units();
            for (int part = 0; part < numbers.size(); part++) {
                all.add(new Coloured(numbers.get(part), Coloured.Colour.NUMBER));
                if (part < units.size()) {
                    all.add(new Coloured(units.get(part), Coloured.Colour.UNIT));
                }
            }
        } else {
            all.add(new Coloured(token.span(), colours[i] == null ? usual(token) : colours[i]));
        }
    }

    private static Coloured.Colour usual(Token token) {
        return switch (token.kind()) {
            case QUANTITY -> Coloured.Colour.NUMBER;
            case TEXT -> Coloured.Colour.TEXT;
            case ROW -> Coloured.Colour.ROW;
            case NAME -> Coloured.Colour.NAME;
            case WORD -> Coloured.Colour.WORD;
            case SIGN, END -> Coloured.Colour.SIGN;
        };
    }
}
