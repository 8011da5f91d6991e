package farwatt.intake;

import farwatt.quantity.Decimal;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The digits of one number as a customer wrote them, read by the column's decimal habit. What can only be meant one way
 * is read that way whatever the habit; a single mark before three digits needs the habit.
 *
 * @param value the number
 * @param other what it would be with the mark read the other way, where nothing decides
 */
record NumberText(BigDecimal value, Optional<BigDecimal> other) {
    private static final int LONGEST = 40;

    /** The number, or empty where the digits make none ("1.2.3"). */
    static Optional<NumberText> read(String run, Optional<Decimal> habit) {
        if (run.length() > LONGEST) {
            return Optional.empty();
        }
        String digits = run;
        if (run.indexOf('\'') >= 0
                || run.indexOf('’') >= 0
                || run.indexOf('\u00a0') >= 0
                || run.indexOf('\u202f') >= 0) {
            digits = run.replaceAll("['’\u00a0\u202f]", "_");
            if (!grouped(digits, '_')) {
                return Optional.empty();
            }
            digits = digits.replace("_", "");
        }
        int point = digits.lastIndexOf('.');
        int comma = digits.lastIndexOf(',');
        if (point < 0 && comma < 0) {
            return number(digits);
        }
        if (point >= 0 && comma >= 0) {
            return both(digits, point > comma ? '.' : ',');
        }
        return one(digits, point >= 0 ? '.' : ',', habit);
    }

    private static Optional<NumberText> both(String digits, char decimal) {
        char group = decimal == '.' ? ',' : '.';
        if (digits.indexOf(decimal) != digits.lastIndexOf(decimal)
                || !grouped(digits.substring(0, digits.indexOf(decimal)), group)) {
            return Optional.empty();
        }
        return number(digits.replace(String.valueOf(group), "").replace(decimal, '.'));
    }

    private static Optional<NumberText> one(String digits, char mark, Optional<Decimal> habit) {
        int at = digits.indexOf(mark);
        if (at != digits.lastIndexOf(mark)) {
            return grouped(digits, mark) ? number(digits.replace(String.valueOf(mark), "")) : Optional.empty();
        }
        String asDecimal = digits.replace(mark, '.');
        if (isDecisive(digits, at)) {
            return number(asDecimal);
        }
        String asGroup = digits.replace(String.valueOf(mark), "");
        if (habit.isPresent()) {
            boolean sameMark = (habit.get() == Decimal.POINT) == (mark == '.');
            return number(sameMark ? asDecimal : asGroup);
        }
        return number(asDecimal).map(n -> new NumberText(n.value, Optional.of(new BigDecimal(asGroup))));
    }

    /** A single mark is surely the decimal one unless one to three digits stand before it and three after it. */
    private static boolean isDecisive(String digits, int at) {
        return digits.length() - at - 1 != 3 || at == 0 || at > 3 || digits.charAt(0) == '0';
    }

    private static boolean grouped(String digits, char mark) {
        String[] parts = digits.split(Pattern.quote(String.valueOf(mark)), -1);
        for (int i = 1; i < parts.length; i++) {
            int whole = i == parts.length - 1 ? endOfDigits(parts[i]) : parts[i].length();
            if (whole != 3) {
                return false;
            }
        }
        return !parts[0].isEmpty() && (parts.length == 1 || parts[0].length() <= 3);
    }

    private static int endOfDigits(String part) {
        int i = 0;
        while (i < part.length() && Character.isDigit(part.charAt(i))) {
            i++;
        }
        return i;
    }

    private static Optional<NumberText> number(String plain) {
        String whole = plain.startsWith(".") ? "0" + plain : plain;
        String trimmed = whole.endsWith(".") ? whole.substring(0, whole.length() - 1) : whole;
        for (int i = 0; i < trimmed.length(); i++) {
            char c = trimmed.charAt(i);
            if ((c < '0' || c > '9') && c != '.') {
                return Optional.empty();
            }
        }
        return trimmed.isEmpty()
                ? Optional.empty()
                : Optional.of(new NumberText(new BigDecimal(trimmed), Optional.empty()));
    }

    /** What a number's marks say about the decimal habit of whoever wrote it; empty where they leave it open. */
    static Optional<Decimal> evidence(String run) {
        int point = run.lastIndexOf('.');
        int comma = run.lastIndexOf(',');
        if (point < 0 && comma < 0) {
            return Optional.empty();
        }
        if (point >= 0 && comma >= 0) {
            return Optional.of(point > comma ? Decimal.POINT : Decimal.COMMA);
        }
        char mark = point >= 0 ? '.' : ',';
        int at = run.indexOf(mark);
        boolean grouping = at != run.lastIndexOf(mark);
        if (grouping) {
            return grouped(run, mark) ? Optional.of(mark == '.' ? Decimal.COMMA : Decimal.POINT) : Optional.empty();
        }
        if (!isDecisive(run, at)) {
            return Optional.empty();
        }
        return Optional.of(mark == '.' ? Decimal.POINT : Decimal.COMMA);
    }
}
