package farwatt.language;

import farwatt.quantity.Dimension;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** How types and parts of a text are named in a sentence. */
final class Say {
    private static final int LONGEST = 40;
    private static final int MOST_WORDS = 12;
    private static final Map<Dimension, Phrase> NAMED = Map.of(
            Dimension.NONE,
            Phrase.A_NUMBER,
            Dimension.WATT,
            Phrase.A_POWER,
            Dimension.VOLT,
            Phrase.A_VOLTAGE,
            Dimension.AMPERE,
            Phrase.A_CURRENT,
            Dimension.OHM,
            Phrase.A_RESISTANCE,
            Dimension.METRE,
            Phrase.A_LENGTH,
            Dimension.KELVIN,
            Phrase.A_DIFFERENCE,
            Dimension.SECOND,
            Phrase.A_TIME,
            Dimension.BIT.over(Dimension.SECOND),
            Phrase.A_RATE,
            Dimension.MONEY,
            Phrase.MONEY);

    private Say() {}

    /** In double quotes, unless it has quotes of its own; a long one shortened, on one line. */
    static String quoted(String part) {
        String shown = part.codePointCount(0, part.length()) > LONGEST
                ? part.substring(0, part.offsetByCodePoints(0, LONGEST)) + "…"
                : part;
        String line = shown.replaceAll("\\p{Cntrl}", " ");
        return line.startsWith("'") || line.startsWith("\"") ? line : "\"" + line + "\"";
    }

    /** Words as alternatives: {@code "a", "b" or "c"}. */
    static String oneOf(Collection<String> words) {
        List<String> shown = words.stream().limit(MOST_WORDS).map(Say::quoted).toList();
        if (words.size() > MOST_WORDS) {
            return String.join(", ", shown) + ", …";
        }
        return alternatives(shown);
    }

    /** Phrases as alternatives: {@code a, b or c}. */
    static String alternatives(List<String> phrases) {
        int last = phrases.size() - 1;
        if (last < 1) {
            return String.join("", phrases);
        }
        String or = " " + Messages.text(Phrase.EITHER) + " ";
        return String.join(", ", phrases.subList(0, last)) + or + phrases.get(last);
    }

    /** A type with its article: {@code a length (m)}. */
    static String type(Type type, Scope scope) {
        if (type instanceof Type.Amount amount) {
            return amount(amount.dimension(), scope.units());
        }
        if (type instanceof Type.Choice choice) {
            return Messages.text(Phrase.ONE_OF, oneOf(choice.words()));
        }
        if (type instanceof Type.RowOf row) {
            return scope.called(row.kind());
        }
        return Messages.text(plain((Type.Plain) type));
    }

    private static String amount(Dimension dimension, Units units) {
        Phrase phrase = NAMED.getOrDefault(dimension, Phrase.A_QUANTITY);
        if (dimension.equals(units.need("Wh").dimension())) {
            phrase = Phrase.AN_ENERGY;
        }
        return Messages.text(phrase, units.plain(dimension).symbol());
    }

    private static Phrase plain(Type.Plain type) {
        return switch (type) {
            case TEMPERATURE -> Phrase.A_TEMPERATURE;
            case GAUGE -> Phrase.A_GAUGE;
            case YES_NO -> Phrase.YES_OR_NO;
            case TEXT -> Phrase.A_TEXT;
            case UNKNOWN -> Phrase.ANYTHING;
        };
    }
}
