package farwatt.intake;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a heading taken apart.
 *
 * @param shown as people see it, the lines of a two-line heading joined by {@code " / "}
 * @param words folded, without the unit
 * @param unit the unit it names
 * @param volts the volts of a heading such as {@code mA @ 48 V}
 * @param bracketed true when the unit stood in brackets and so needs no other support
 */
record HeadingText(String shown, String words, Optional<ListUnit> unit, Optional<BigDecimal> volts, boolean bracketed) {
    private static final Pattern AT_VOLTS = Pattern.compile(
            "(?:@|\\bat\\b|\\bbei\\b|\\bà\\b)\\s*(\\d+(?:[.,]\\d+)?)\\s*V(?:DC)?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern BRACKETS = Pattern.compile("[(\\[]\\s*([^)\\]]{1,20}?)\\s*[)\\]]");
    private static final Pattern LAST = Pattern.compile("^(.*?)[\\s_,/:.-]+(\\S{1,9})$");
    private static final Pattern FIRST =
            Pattern.compile("(W|mW|kW|mA|Watts?)[\\s_/:.-]+((?:each|per|unit|pc|piece|total|max|typ)\\b.*)");
    private static final Pattern CAMEL_UNIT = Pattern.compile("^(.{2,}?[a-zäöüß])_?(W|mW|mA)$");

    private static final HeadingText EMPTY = new HeadingText("", "", Optional.empty(), Optional.empty(), false);

    static HeadingText of(String typed) {
        String shown = Spelling.tidy(typed);
        if (shown.isEmpty()) {
            return EMPTY;
        }
        String rest = shown;
        Matcher at = AT_VOLTS.matcher(rest);
        Optional<BigDecimal> volts = Optional.empty();
        if (at.find()) {
            volts = Optional.of(new BigDecimal(at.group(1).replace(',', '.')));
            rest = at.replaceFirst(" ");
        }
        Matcher brackets = BRACKETS.matcher(rest);
        while (brackets.find()) {
            Optional<ListUnit> unit = ListUnit.of(withoutLead(brackets.group(1)));
            if (unit.isPresent()) {
                String words = rest.substring(0, brackets.start()) + " " + rest.substring(brackets.end());
                return new HeadingText(shown, Spelling.fold(words), unit, volts, true);
            }
        }
        return trailing(shown, rest.strip(), volts);
    }

    /** A heading that as a whole is a trade word has no unit at its end: the last letter of a verb is no ampere. */
    private static boolean isKnown(String words) {
        return Words.headings(words).stream()
                .anyMatch(entry -> !entry.weak() && !entry.meaning().isMeasured());
    }

    private static HeadingText trailing(String shown, String rest, Optional<BigDecimal> volts) {
        String whole = Spelling.fold(rest);
        if (isKnown(whole)) {
            return new HeadingText(shown, whole, Optional.empty(), volts, false);
        }
        Matcher first = FIRST.matcher(rest);
        if (first.matches()) {
            return new HeadingText(shown, Spelling.fold(first.group(2)), ListUnit.of(first.group(1)), volts, false);
        }
        for (Pattern pattern : new Pattern[] {LAST, CAMEL_UNIT}) {
            Matcher last = pattern.matcher(rest);
            if (last.matches()) {
                Optional<ListUnit> unit = ListUnit.of(last.group(2));
                if (unit.isPresent()) {
                    String words = withoutIn(Spelling.fold(last.group(1)));
                    return new HeadingText(shown, words, unit, volts, false);
                }
            }
        }
        Optional<ListUnit> alone = ListUnit.of(rest);
        return new HeadingText(shown, Spelling.fold(rest), alone, volts, false);
    }

    private static String withoutLead(String inBrackets) {
        String plain = Spelling.strip(inBrackets);
        return plain.startsWith("in ") ? plain.substring(3) : plain;
    }

    private static String withoutIn(String words) {
        return words.endsWith(" in") ? words.substring(0, words.length() - 3) : words;
    }

    /** The same with another unit. */
    HeadingText with(ListUnit other) {
        return new HeadingText(shown, words, Optional.of(other), volts, bracketed);
    }

    /** The heading taken as words only: what looked like a unit was none. */
    HeadingText withoutUnit() {
        return new HeadingText(shown, Spelling.fold(shown), Optional.empty(), volts, false);
    }
}
