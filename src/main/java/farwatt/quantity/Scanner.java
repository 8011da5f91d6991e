package farwatt.quantity;

import farwatt.report.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds numbers with their units in a text: {@code 60 m}, {@code 5 ft 3 in}, {@code 0.4 %/K}. A unit stands directly
 * after its number or after spaces; a quotient of units has no spaces around its slash, and only as much of it is
 * taken as is a unit: {@code 10 W/length} is a power over something else.
 *
 * <p>With a comma as decimal sign, a comma directly between two digits is that sign (the point is still read, since
 * texts are kept with it). A second sign in the same number is a doubt, never a thousands mark.
 */
public final class Scanner {
    private static final int LONGEST_QUOTIENT = 4;

    private final String text;
    private final Units units;
    private final Decimal decimal;
    private final Set<String> words;

    /**
     * Looks through one text.
     *
     * @param words that are never units: the reserved words of the language around
     */
    public Scanner(String text, Units units, Decimal decimal, Set<String> words) {
        this.text = text;
        this.units = units;
        this.decimal = decimal;
        this.words = words;
    }

    /** The literal whose first digit stands at a place. */
    public Literal at(int from) {
        int end = numberEnd(from);
        Span number = new Span(from, end);
        String digits = number(text.substring(from, end));
        int doubtful = end;
        while (isDecimalSign(doubtful)) {
            doubtful = digitsEnd(doubtful + 1);
        }
        if (doubtful > end) {
            List<Span> all = List.of(new Span(from, doubtful));
            return new Literal(typed(digits), all, List.of(), doubtful, Literal.Doubt.DECIMALS);
        }
        int at = spacesEnd(end);
        Literal feet = feet(number, digits, at);
        return feet != null ? feet : withUnit(number, digits, at);
    }

    private Literal withUnit(Span number, String digits, int at) {
        int end = unitEnd(at);
        if (end == at || words.contains(text.substring(at, end))) {
            return checked(typed(digits), List.of(number), List.of(), number.to());
        }
        Optional<Unit> unit = Optional.empty();
        int unitTo = end;
        int part = end;
        for (int i = 0; i < LONGEST_QUOTIENT && part > at; i++) {
            Optional<Unit> found = units.of(text.substring(at, part));
            if (found.isPresent()) {
                unit = found;
                unitTo = part;
            }
            part = quotientEnd(part);
        }
        if (unit.isEmpty()) {
            int whole = quotientEnd(end);
            unitTo = whole > 0 && units.near(text.substring(at, whole)).isPresent() ? whole : end;
            List<Span> strange = List.of(new Span(at, unitTo));
            return new Literal(typed(digits), List.of(number), strange, unitTo, Literal.Doubt.UNIT);
        }
        return checked(typed(digits).in(unit.get()), List.of(number), List.of(new Span(at, unitTo)), unitTo);
    }

    /** Feet followed by inches, or null where it is not that. */
    private @Nullable Literal feet(Span number, String digits, int at) {
        int inches = spacesEnd(at + 2);
        if (!text.startsWith("ft", at) || !isDigit(inches)) {
            return null;
        }
        int inchesEnd = numberEnd(inches);
        int in = spacesEnd(inchesEnd);
        if (!text.startsWith("in", in) || isUnitPart(in + 2) || isSlashUnit(in + 2)) {
            return null;
        }
        Typed typed = new Typed(digits, number(text.substring(inches, inchesEnd)), units.need("ft"));
        List<Span> numbers = List.of(number, new Span(inches, inchesEnd));
        return checked(typed, numbers, List.of(new Span(at, at + 2), new Span(in, in + 2)), in + 2);
    }

    private static Literal checked(Typed typed, List<Span> numbers, List<Span> units, int end) {
        double inside = typed.inside();
        boolean lost = typed.unit().form() == Unit.Form.PLAIN && inside == 0 && hasDigitAboveZero(typed);
        Literal.Doubt doubt = Double.isFinite(inside) && !lost ? Literal.Doubt.NONE : Literal.Doubt.RANGE;
        return new Literal(typed, numbers, units, end, doubt);
    }

    private static Typed typed(String digits) {
        return new Typed(digits, "", Unit.ONE);
    }

    private static boolean hasDigitAboveZero(Typed typed) {
        String mantissa = typed.number().split("e", 2)[0] + typed.inches().split("e", 2)[0];
        return mantissa.chars().anyMatch(c -> c >= '1' && c <= '9');
    }

    /** One spelling for what means the same: decimal point, small e, no plus in the exponent. */
    private static String number(String typed) {
        return typed.replace(',', '.').toLowerCase(Locale.ROOT).replace("e+", "e");
    }

    private int numberEnd(int from) {
        int at = digitsEnd(from);
        if (isDecimalSign(at)) {
            at = digitsEnd(at + 1);
        }
        if (is(at, 'e') || is(at, 'E')) {
            int power = is(at + 1, '+') || is(at + 1, '-') ? at + 2 : at + 1;
            if (isDigit(power)) {
                at = digitsEnd(power);
            }
        }
        return at;
    }

    private boolean isDecimalSign(int at) {
        boolean sign = is(at, '.') || (decimal == Decimal.COMMA && is(at, ','));
        return sign && isDigit(at + 1);
    }

    private int digitsEnd(int from) {
        int at = from;
        while (isDigit(at)) {
            at++;
        }
        return at;
    }

    private int spacesEnd(int from) {
        int at = from;
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** The end of one word that may be a unit; the same place where there is none. */
    private int unitEnd(int from) {
        if (from >= text.length()) {
            return from;
        }
        int first = text.codePointAt(from);
        int at = from + Character.charCount(first);
        if (first == '%' || Character.getType(first) == Character.CURRENCY_SYMBOL) {
            return at;
        }
        if (!Character.isLetter(first) && Character.getType(first) != Character.OTHER_SYMBOL) {
            return from;
        }
        while (isUnitPart(at)) {
            at += Character.charCount(text.codePointAt(at));
        }
        return at;
    }

    /** The end of a slash and a word directly after it, or 0. */
    private int quotientEnd(int slash) {
        if (!is(slash, '/')) {
            return 0;
        }
        int end = unitEnd(slash + 1);
        return end > slash + 1 && !words.contains(text.substring(slash + 1, end)) ? end : 0;
    }

    private boolean isSlashUnit(int at) {
        int end = quotientEnd(at);
        return end > 0 && units.of("in" + text.substring(at, end)).isPresent();
    }

    private boolean isUnitPart(int at) {
        if (at >= text.length()) {
            return false;
        }
        int c = text.codePointAt(at);
        return Character.isLetterOrDigit(c) || c == '²' || c == '_';
    }

    private boolean is(int at, char c) {
        return at < text.length() && text.charAt(at) == c;
    }

    private boolean isDigit(int at) {
        return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    /** True for spaces, tabs and line ends of every kind, also those that do not break a line. */
    public static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }
}
