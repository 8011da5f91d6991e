package farwatt.quantity;

import java.util.Optional;
import java.util.Set;

/**
 * Reads a text that is one literal quantity, such as {@code 60 m}, {@code -5 degF}, {@code 5 ft 3 in} or
 * {@code 20 %}. Never guesses a thousands mark: with a comma as decimal sign {@code 1,30} is 1.3, with a point
 * {@code 1,30} is not a number. Takes a sign, {@code .5} and {@code 5.} as well, which expressions do not.
 */
public final class Reader {
    private Reader() {}

    /** The quantity, or empty when the text is no single literal with a known unit and a finite value. */
    public static Optional<Typed> read(String text, Units units, Decimal decimal) {
        String plain = trimmed(text);
        char sign = plain.isEmpty() ? '0' : plain.charAt(0);
        boolean signed = sign == '-' || sign == '+' || sign == '\u2212';
        String rest = wholeDecimals(signed ? plain.substring(1) : plain, decimal);
        if (!isDigit(rest, 0)) {
            return Optional.empty();
        }
        Literal found = new Scanner(rest, units, decimal, Set.of()).at(0);
        if (found.doubt() != Literal.Doubt.NONE || found.end() != rest.length()) {
            return Optional.empty();
        }
        Typed typed = signed && sign != '+' ? found.typed().negated() : found.typed();
        return Double.isFinite(typed.inside()) ? Optional.of(typed) : Optional.empty();
    }

    private static String trimmed(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && Scanner.isSpace(text.charAt(from))) {
            from++;
        }
        while (to > from && Scanner.isSpace(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    /** A digit on both sides of the decimal sign: {@code .5} and {@code 5.} are how some people write. */
    private static String wholeDecimals(String text, Decimal decimal) {
        if (isSign(text, 0, decimal)) {
            return isDigit(text, 1) ? "0" + text : text;
        }
        int at = 0;
        while (isDigit(text, at)) {
            at++;
        }
        boolean bare = at > 0 && isSign(text, at, decimal) && !isDigit(text, at + 1);
        return bare ? text.substring(0, at) + text.substring(at + 1) : text;
    }

    private static boolean isSign(String text, int at, Decimal decimal) {
        char c = at < text.length() ? text.charAt(at) : ' ';
        return c == '.' || (c == ',' && decimal == Decimal.COMMA);
    }

    private static boolean isDigit(String text, int at) {
        return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }
}
