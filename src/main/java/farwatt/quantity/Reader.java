package farwatt.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one literal quantity such as {@code 60 m}, {@code -5 degF}, {@code 5 ft 3 in} or {@code 20 %}. Never guesses
 * a thousands mark: with a comma as decimal sign {@code 1,30} is 1.3, with a point {@code 1,30} is not a number.
 */
public final class Reader {
    private static final String NUMBER = "([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)";
    private static final Pattern FEET = Pattern.compile(NUMBER + "\\s*ft\\s*(\\d+(?:\\.\\d+)?)\\s*in");
    private static final Pattern PLAIN = Pattern.compile(NUMBER + "\\s*(\\D.*)?");

    private Reader() {}

    /** The quantity, or empty when the text is no single literal with a known unit and a finite value. */
    public static Optional<Typed> read(String text, Units units, Decimal decimal) {
        String plain = text.strip().replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2212', '-');
        if (decimal == Decimal.COMMA) {
            plain = plain.replaceFirst("(\\d),(\\d)", "$1.$2");
        }
        Matcher feet = FEET.matcher(plain);
        if (feet.matches()) {
            return finite(new Typed(number(feet.group(1)), feet.group(2), units.need("ft")));
        }
        Matcher m = PLAIN.matcher(plain);
        if (!m.matches()) {
            return Optional.empty();
        }
        String unit = m.group(2) == null ? "" : m.group(2).strip();
        String digits = m.group(1);
        return units.of(unit).flatMap(u -> finite(new Typed(number(digits), "", u)));
    }

    private static Optional<Typed> finite(Typed typed) {
        return Double.isFinite(typed.inside()) ? Optional.of(typed) : Optional.empty();
    }

    /** One spelling for what means the same: no plus sign, a digit before and after the point. */
    private static String number(String typed) {
        String s = typed.startsWith("+") ? typed.substring(1) : typed;
        s = s.replace('E', 'e').replace("e+", "e");
        s = s.replaceFirst("^(-?)\\.", "$10.");
        return s.replaceFirst("\\.(?=e|$)", "");
    }
}
