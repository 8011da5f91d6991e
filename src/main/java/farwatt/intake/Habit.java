package farwatt.intake;

import farwatt.quantity.Decimal;
import java.util.List;
import java.util.Optional;

/**
 * Counts which decimal mark the numbers of a column use.
 */
final class Habit {
    private int points;
    private int commas;

    /** Looks at every run of digits in a text. */
    void look(String text) {
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                i++;
                continue;
            }
            int end = i;
            boolean marks = false;
            while (end < text.length() && (isDigit(text.charAt(end)) || isInner(text, end))) {
                marks |= !isDigit(text.charAt(end));
                end++;
            }
            if (marks) {
                NumberText.evidence(text.substring(i, end)).ifPresent(this::count);
            }
            i = end + 1;
        }
    }

    private void count(Decimal found) {
        if (found == Decimal.POINT) {
            points++;
        } else {
            commas++;
        }
    }

    /** The mark most numbers use; empty without evidence or when as many speak for the one as for the other. */
    Optional<Decimal> found() {
        if (points == commas) {
            return Optional.empty();
        }
        return Optional.of(points > commas ? Decimal.POINT : Decimal.COMMA);
    }

    /** What all columns together say. */
    static Optional<Decimal> together(List<Habit> habits) {
        Habit all = new Habit();
        for (Habit habit : habits) {
            all.points += habit.points;
            all.commas += habit.commas;
        }
        return all.found();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isInner(String text, int at) {
        char c = text.charAt(at);
        return (c == '.' || c == ',') && at + 1 < text.length() && isDigit(text.charAt(at + 1));
    }
}
