package farwatt.language;

import farwatt.quantity.Literal;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rules of the grammar for what stands between operators: literals, names, paths, calls, gathers. */
final class Primaries {
    private final Parser parser;
    private final Words words;

    Primaries(Parser parser, Words words) {
        this.parser = parser;
        this.words = words;
    }

    /** A value with the names after its points. */
    Expr primary() {
        int from = words.from();
        return path(from, bare(from));
    }

    Expr path(int from, Expr root) {
        List<Expr.Part> members = new ArrayList<>(0);
        while (words.take(".")) {
            if (words.here().kind() != Token.Kind.NAME) {
                words.complain(ProblemCode.WANTED_NAME);
                if (Parser.startsValue(words.here())) {
                    words.next();
                }
                return new Expr.Broken(words.since(from), List.of(Shape.path(words.since(from), root, members)));
            }
            Token name = words.next(Coloured.Colour.MEMBER);
            members.add(new Expr.Part(name.span(), name.text()));
        }
        return Shape.path(words.since(from), root, members);
    }

    private Expr bare(int from) {
        Token here = words.here();
        switch (here.kind()) {
            case QUANTITY -> {
                Literal literal = words.next().literal().orElseThrow();
                boolean sound = literal.doubt() == Literal.Doubt.NONE;
                return sound
                        ? new Expr.Quantity(here.span(), literal.typed())
                        : new Expr.Broken(here.span(), List.of());
            }
            case TEXT -> {
                return new Expr.Text(words.next().span(), here.text());
            }
            case ROW -> {
                return new Expr.Row(words.next().span(), here.text());
            }
            case NAME -> {
                return words.following().is("(")
                        ? call(from)
                        : new Expr.Name(words.next().span(), here.text());
            }
            case WORD -> {
                return word(from);
            }
            case SIGN, END -> {
                return words.take("(") ? group() : missing();
            }
        }
        throw new AssertionError(here.kind());
    }

    private Expr group() {
        Expr inner = parser.expr();
        close(List.of());
        return inner;
    }

    private Expr missing() {
        if (words.here().is(".") && words.following().kind() == Token.Kind.QUANTITY) {
            words.complain(ProblemCode.POINT_FIRST);
            words.next();
            words.next();
        } else if (!parser.complainOfSigns()) {
            words.complain(ProblemCode.WANTED_VALUE);
        }
        return parser.nothing();
    }

    private Expr word(int from) {
        Token here = words.here();
        Keyword keyword = Keyword.of(here.text()).orElseThrow();
        if (keyword.gather().isPresent()) {
            words.next(Coloured.Colour.CALL);
            return gather(from, keyword.gather().get());
        }
        switch (keyword) {
            case YES, NO, THIS, PLAN -> {
                return new Expr.Word(words.next().span(), keyword);
            }
            case IF -> {
                words.complain(ProblemCode.NEEDS_PARENTHESES);
                return parser.expr();
            }
            case NOT -> {
                words.complain(ProblemCode.NEEDS_PARENTHESES);
                while (words.take(Keyword.NOT)) {
                    // one complaint is enough for all of them
                }
                return words.here().is(Keyword.IF) ? parser.nothing() : primary();
            }
            default -> {
                return missing();
            }
        }
    }

    private Expr call(int from) {
        Token name = words.next(Coloured.Colour.CALL);
        words.next();
        List<Expr> arguments = new ArrayList<>();
        if (!words.here().is(")")) {
            do {
                arguments.add(parser.expr());
            } while (words.take(","));
        }
        close(List.of("\",\""));
        return new Expr.Call(words.since(from), new Expr.Part(name.span(), name.text()), arguments);
    }

    private Expr gather(int from, GatherKind kind) {
        if (!words.take("(")) {
            words.complain(ProblemCode.WANTED_OPEN, Say.quoted(kind.word()));
            return new Expr.Broken(words.since(from), List.of());
        }
        if (!parser.enter()) {
            return parser.nothing();
        }
        Optional<Expr> body = Optional.empty();
        if (kind != GatherKind.COUNT) {
            body = Optional.of(parser.expr());
            parser.want(Keyword.OF);
        }
        Expr.RowsOf rows = rows();
        close(List.of(rows.where().isPresent() ? "" : "\"where\""));
        parser.leave();
        return new Expr.Gather(words.since(from), kind, body, rows);
    }

    private Expr.RowsOf rows() {
        int from = words.from();
        Expr.Part table = new Expr.Part(new Span(from, from), "");
        if (words.here().kind() == Token.Kind.NAME) {
            Token name = words.next(Coloured.Colour.TABLE);
            table = new Expr.Part(name.span(), name.text());
        } else {
            words.complain(ProblemCode.WANTED_TABLE);
        }
        Reach reach = Reach.ALL;
        if (words.take(Keyword.ON)) {
            reach = Reach.ON;
        } else if (words.take(Keyword.UNDER)) {
            reach = Reach.UNDER;
        }
        Optional<Expr> base = reach == Reach.ALL ? Optional.empty() : Optional.of(primary());
        Optional<Expr> where = words.take(Keyword.WHERE) ? Optional.of(parser.expr()) : Optional.empty();
        return new Expr.RowsOf(table, reach, base, where);
    }

    /** Takes the closing parenthesis; where it is missing, goes on behind the one that would close. */
    private void close(List<String> alsoPossible) {
        if (words.take(")")) {
            return;
        }
        List<String> possible = new ArrayList<>(alsoPossible);
        possible.remove("");
        possible.add("\")\"");
        if (!parser.complainOfSigns()) {
            words.complain(ProblemCode.WANTED_CLOSE, Say.alternatives(possible));
        }
        words.skipOut();
    }
}
