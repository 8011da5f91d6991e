package farwatt.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The heading of a list: where it stands and what it says a column.
 *
 * @param first place of its first row among the sheet's rows; equal to {@code after} when there is none
 * @param after place of the first row after it
 * @param texts one a column
 * @param score how much of it was recognised
 */
record Heading(int first, int after, List<HeadingText> texts, double score) {
    private static final int LOOK = 50;
    private static final double ENOUGH = 1.5;
    private static final double UNITS_BELOW = 0.2;

    Heading {
        texts = List.copyOf(texts);
    }

    /** The row or pair of rows that reads most like a heading; empty when none does. */
    static Optional<Heading> find(Sheet sheet, Mapping mapping) {
        List<RawRow> rows = sheet.rows();
        int width = sheet.width();
        Optional<Heading> best = Optional.empty();
        for (int i = 0; i < Math.min(LOOK, rows.size()); i++) {
            if (rows.get(i).full() < Math.min(2, width)) {
                continue;
            }
            best = better(best, of(sheet, i, i + 1, width, mapping));
            boolean pair = i + 1 < rows.size() && isWords(rows.get(i + 1)) && isWords(rows.get(i));
            if (pair) {
                Heading both = of(sheet, i, i + 2, width, mapping);
                boolean units = isUnits(rows.get(i + 1));
                best = better(best, units ? both.surer() : both);
            }
        }
        return best.filter(h -> h.score >= ENOUGH || (width == 1 && h.score >= 0.9))
                .or(() -> byShape(sheet, width));
    }

    /** Words of no language known here, over a column of numbers. */
    private static Optional<Heading> byShape(Sheet sheet, int width) {
        List<RawRow> rows = sheet.rows();
        boolean words = rows.size() > 1 && rows.get(0).full() >= 2 && hasNoDigit(rows.get(0));
        if (!words) {
            return Optional.empty();
        }
        List<RawRow> under = rows.subList(1, rows.size());
        for (int column : rows.get(0).filled()) {
            if (new ColumnContent(under, column).digits() > 0.6) {
                return Optional.of(of(sheet, 0, 1, width, Mapping.NONE));
            }
        }
        return Optional.empty();
    }

    /** A line of units alone belongs to the words above it even where they can do without. */
    private Heading surer() {
        return new Heading(first, after, texts, score + UNITS_BELOW);
    }

    /** True for a line that holds nothing but units, in brackets or bare. */
    private static boolean isUnits(RawRow row) {
        for (int column : row.filled()) {
            String text = Spelling.tidy(row.cell(column).text());
            boolean brackets = text.length() > 2 && "([".indexOf(text.charAt(0)) >= 0;
            if (ListUnit.of(brackets ? text.substring(1, text.length() - 1).strip() : text)
                    .isEmpty()) {
                return false;
            }
        }
        return row.full() > 0;
    }

    private static Optional<Heading> better(Optional<Heading> best, Heading other) {
        return best.isEmpty() || other.score > best.get().score + 0.05 ? Optional.of(other) : best;
    }

    private static Heading of(Sheet sheet, int first, int after, int width, Mapping mapping) {
        List<HeadingText> texts = new ArrayList<>();
        for (int column = 0; column < width; column++) {
            texts.add(HeadingText.of(text(sheet, first, after, column)));
        }
        return new Heading(first, after, texts, score(texts, mapping));
    }

    private static String text(Sheet sheet, int first, int after, int column) {
        RawRow upper = sheet.rows().get(first);
        String top = Spelling.tidy(spread(sheet, upper, column));
        if (after - first == 1) {
            return top;
        }
        RawRow lower = sheet.rows().get(first + 1);
        String under = Spelling.tidy(spread(sheet, lower, column));
        if (top.isEmpty() && !under.isEmpty()) {
            top = Spelling.tidy(leftOf(sheet, upper, column));
        }
        if (top.isEmpty() || under.isEmpty() || Spelling.fold(top).equals(Spelling.fold(under))) {
            return top + (top.equals(under) ? "" : under);
        }
        return top + " / " + under;
    }

    /** The cell's own text, or that of the merged area it belongs to. */
    private static String spread(Sheet sheet, RawRow row, int column) {
        if (!row.cell(column).isBlank()) {
            return row.cell(column).text();
        }
        for (Sheet.Area area : sheet.areas()) {
            boolean inside = area.top() == row.number() - 1 && area.left() <= column && column <= area.right();
            if (inside) {
                return row.cell(area.left()).text();
            }
        }
        return "";
    }

    /** In a text nothing is merged: an upper heading counts for the empty cells to its right. */
    private static String leftOf(Sheet sheet, RawRow upper, int column) {
        if (!sheet.areas().isEmpty()) {
            return "";
        }
        for (int left = column - 1; left >= 0; left--) {
            if (!upper.cell(left).isBlank()) {
                return upper.cell(left).text();
            }
        }
        return "";
    }

    private static double score(List<HeadingText> texts, Mapping mapping) {
        Map<Meaning, Double> best = new EnumMap<>(Meaning.class);
        for (HeadingText text : texts) {
            Optional<Meaning> laidDown = text.shown().isEmpty() ? Optional.empty() : mapping.meaning(text.shown());
            if (laidDown.isPresent()) {
                best.put(laidDown.get(), 1.0);
                continue;
            }
            Guess.of(text).stream()
                    .max(Comparator.comparingDouble(Guess::confidence))
                    .ifPresent(g -> best.merge(g.meaning(), g.confidence(), Double::max));
        }
        return best.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static boolean hasNoDigit(RawRow row) {
        return row.cells().stream()
                .allMatch(c -> c.form() == RawCell.Form.TEXT && c.text().chars().noneMatch(Character::isDigit));
    }

    /** True when no cell is a number or begins with one. */
    static boolean isWords(RawRow row) {
        for (RawCell cell : row.cells()) {
            String text = Spelling.strip(cell.text());
            boolean number = cell.form() != RawCell.Form.TEXT;
            if (number || (!text.isEmpty() && Character.isDigit(text.charAt(0)) && text.indexOf(' ') < 0)) {
                return false;
            }
        }
        return true;
    }
}
