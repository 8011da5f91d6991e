package farwatt.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Parts a sheet on which several tables stand below each other, each with a heading of its own. */
final class Tables {
    private static final double LIKELY = 0.6;
    private static final double ENOUGH = 1.5;
    private static final int LONGEST = 40;
    private static final Guess NONE = new Guess(Meaning.OWN, 0, "");

    private Tables() {}

    static List<Sheet> of(Sheet sheet) {
        List<RawRow> rows = sheet.rows();
        List<Integer> starts = new ArrayList<>();
        Set<String> last = Set.of();
        int lastAt = -2;
        for (int i = 0; i < rows.size(); i++) {
            if (!isHeading(rows.get(i))) {
                continue;
            }
            Set<String> texts = texts(rows.get(i));
            boolean other = !last.isEmpty() && lastAt < i - 1 && shared(texts, last) * 2 < texts.size();
            if (other) {
                starts.add(i);
            }
            if (other || last.isEmpty()) {
                last = texts;
            }
            lastAt = i;
        }
        if (starts.isEmpty()) {
            return List.of(sheet);
        }
        return parts(sheet, starts);
    }

    private static List<Sheet> parts(Sheet sheet, List<Integer> starts) {
        List<Sheet> parts = new ArrayList<>();
        int from = 0;
        for (int start : starts) {
            parts.add(sheet.withRows(sheet.rows().subList(from, start)));
            from = start;
        }
        parts.add(sheet.withRows(sheet.rows().subList(from, sheet.rows().size())));
        return parts;
    }

    /** Words that are all likely headings, one of them of a column of numbers. */
    private static boolean isHeading(RawRow row) {
        if (!Heading.isWords(row) || row.full() < 2) {
            return false;
        }
        List<Integer> filled = row.filled();
        double sum = 0;
        boolean numbers = false;
        for (int column : filled) {
            String text = row.cell(column).text();
            Guess best = text.length() > LONGEST
                    ? NONE
                    : Guess.of(HeadingText.of(text)).stream().findFirst().orElse(NONE);
            if (best.confidence() < LIKELY) {
                return false;
            }
            sum += best.confidence();
            numbers |= best.meaning().isMeasured() || best.meaning() == Meaning.QUANTITY;
        }
        return numbers && sum >= ENOUGH;
    }

    private static Set<String> texts(RawRow row) {
        Set<String> texts = new HashSet<>();
        for (int column : row.filled()) {
            texts.add(Spelling.fold(row.cell(column).text()));
        }
        return texts;
    }

    private static int shared(Set<String> some, Set<String> others) {
        int shared = 0;
        for (String text : some) {
            shared += others.contains(text) ? 1 : 0;
        }
        return shared;
    }
}
