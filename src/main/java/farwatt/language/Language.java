package farwatt.language;

import farwatt.quantity.Decimal;
import farwatt.quantity.Reader;
import farwatt.quantity.Typed;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The language of cells, needs, studies and the command line: reading, checking, planning, writing. No text makes any
 * of it fail: mistakes are problems in the result. Safe for any thread.
 */
public final class Language {
    private Language() {}

    /**
     * Reads a text and says all that is wrong with its form.
     *
     * <p>With {@link Decimal#COMMA} a comma directly between two digits is a decimal sign; one that separates the
     * values of a function has a space after it. The point is read as well, so that canonical text means the same.
     */
    public static Parsed parse(String text, Units units, Decimal decimal) {
        return Parser.parse(text, units, decimal);
    }

    /** The words of a text, for those who put expressions into a form of their own; an end without length last. */
    public static List<Token> tokens(String text, Units units, Decimal decimal) {
        return new Lexer(text, units, decimal, new Problems(), Optional.empty()).tokens();
    }

    /** Finds out what a text means and says all that is wrong with it, its form included. */
    public static Checked check(Parsed parsed, Scope scope, Wanted wanted) {
        return check(parsed, scope, wanted, Hole.none());
    }

    static Checked check(Parsed parsed, Scope scope, Wanted wanted, Hole hole) {
        Checker.Shared shared = Checker.Shared.of(parsed.problems(), Hoist.NONE, hole);
        Expr expr = withUnit(parsed.expr(), wanted.unit());
        Meaning meaning = new Checker(shared, scope).whole(expr, wanted);
        return new Checked(expr, meaning.type(), wanted, shared.problems().inOrder(), shared.known());
    }

    /** Makes a checked text ready to be worked out. One that has problems cannot be planned. */
    public static Planned plan(Checked checked, Scope scope, Hoist hoist) {
        Checker.Shared shared = Checker.Shared.of(checked.problems(), hoist, Hole.none());
        Checker checker = new Checker(shared, scope);
        Meaning meaning = checker.whole(checked.expr(), checked.wanted());
        if (!shared.problems().isEmpty()) {
            throw new IllegalArgumentException(
                    shared.problems().inOrder().get(0).text());
        }
        return new Planned(meaning.formula(), meaning.type(), checker.uses().build());
    }

    /** An expression in canonical form; what could not be read cannot be written. */
    public static String print(Expr expr) {
        return Printer.print(expr);
    }

    /**
     * The text of a cell in canonical form: decimal point, unit present, one space. A word of the wanted list stands
     * as it is spelled there, names of rows and plain text stay as they are, and so does what cannot be read.
     */
    public static String canonical(String text, Wanted wanted, Units units, Decimal decimal) {
        String typed = text.strip();
        if (wanted.type() instanceof Type.Choice choice) {
            Optional<String> word = choice.words().stream()
                    .filter(w -> w.equalsIgnoreCase(typed))
                    .findFirst();
            if (word.isPresent()) {
                return word.get();
            }
        }
        if (wanted.type() == Type.Plain.TEXT || wanted.type() instanceof Type.RowOf) {
            return text;
        }
        Optional<Typed> literal = Reader.read(text, units, decimal);
        if (literal.isPresent()) {
            Typed one = literal.get();
            return (one.unit().equals(Unit.ONE) ? one.in(wanted.unit()) : one).text();
        }
        Parsed parsed = parse(text, units, decimal);
        return parsed.problems().isEmpty() ? print(withUnit(parsed.expr(), wanted.unit())) : text;
    }

    /** A bare number with a unit; anything else as it is. */
    public static Expr withUnit(Expr expr, Unit unit) {
        return unit.symbol().isEmpty() ? expr : Checker.withUnit(expr, unit).orElse(expr);
    }

    /** What may stand at the cursor, best first. */
    public static Completion complete(String text, int cursor, Scope scope, Wanted wanted, Decimal decimal) {
        return new Completer(text, cursor, scope, wanted, decimal).completion();
    }

    /** True for what may be typed without quotes: a letter, then letters, digits and underscores; no reserved word. */
    public static boolean isName(String text) {
        return !text.isEmpty()
                && Lexer.isNameStart(text.codePointAt(0))
                && Lexer.nameEnd(text, 0) == text.length()
                && Keyword.of(text).isEmpty();
    }

    /** The id of a row as it is typed where no other name is in its way: bare if it is a plain name, else quoted. */
    public static String row(String id) {
        return isName(id) ? id : Printer.quotedRow(id);
    }

    /**
     * A text with every reference to something under its new name; all else stays as typed.
     *
     * @param meant tells which references are meant, such as those to one row
     * @param name the new id of a row, quoted here where it needs quotes, or the new name
     */
    public static String rename(String text, Scope scope, Predicate<Ref> meant, String name) {
        Checked checked = check(parse(text, scope.units(), Decimal.POINT), scope, Wanted.ANY);
        StringBuilder out = new StringBuilder(text);
        List<Checked.Known> known = new ArrayList<>(checked.known());
        known.sort((a, b) -> Integer.compare(b.span().from(), a.span().from()));
        for (Checked.Known one : known) {
            if (meant.test(one.ref())) {
                Span span = one.span();
                out.replace(span.from(), span.to(), one.ref() instanceof Ref.Fixed ? row(name, one.scope()) : name);
            }
        }
        return out.toString();
    }

    /** The same for the row of an id, in whatever capitals it is typed. */
    public static String rename(String text, Scope scope, String from, String to) {
        String id = from.toLowerCase(Locale.ROOT);
        Predicate<Ref> meant = ref -> ref instanceof Ref.Fixed row
                && row.name().toLowerCase(Locale.ROOT).equals(id);
        return rename(text, scope, meant, to);
    }

    /** The id of a row as it is typed in a scope: in quotes as well where a bare name would mean something else. */
    public static String row(String id, Scope scope) {
        boolean free = scope.bare(id).filter(ref -> !(ref instanceof Ref.Fixed)).isEmpty();
        return free ? row(id) : Printer.quotedRow(id);
    }

    /** Every name in a text that may refer to a row: bare names and ids in quotes, as they stand. */
    public static List<Expr.Part> references(Parsed parsed) {
        List<Expr.Part> all = new ArrayList<>();
        for (Coloured part : parsed.colours()) {
            String typed =
                    parsed.text().substring(part.span().from(), part.span().to());
            if (part.colour() == Coloured.Colour.NAME) {
                all.add(new Expr.Part(part.span(), typed));
            } else if (part.colour() == Coloured.Colour.ROW) {
                int end = typed.length() - (typed.length() > 1 && typed.endsWith("'") ? 1 : 0);
                all.add(new Expr.Part(part.span(), typed.substring(1, end).replace("''", "'")));
            }
        }
        return all;
    }
}
