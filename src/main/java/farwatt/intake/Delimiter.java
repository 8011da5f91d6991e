package farwatt.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds out which sign parts the cells of a text. */
final class Delimiter {
    private static final char[] CANDIDATES = {'\t', ';', ',', '|', '^', '~', '\u001f', ':'};
    private static final int SAMPLE_ROWS = 200;
    private static final int SAMPLE_SIGNS = 200_000;
    private static final Pattern STATED = Pattern.compile("(?i)\"?sep=(.)\"?\\s*");

    private Delimiter() {}

    /** The sign a text names itself in a first line of its own, as some programs write it. */
    static Optional<Character> stated(String firstLine) {
        var m = STATED.matcher(firstLine);
        return m.matches() ? Optional.of(m.group(1).charAt(0)) : Optional.empty();
    }

    /** The likeliest sign; empty when the text is one column. */
    static Optional<Character> guess(String text, Mapping mapping) {
        String head = text.length() > SAMPLE_SIGNS ? text.substring(0, SAMPLE_SIGNS) : text;
        Optional<Character> best = Optional.empty();
        double most = 1.0;
        for (char candidate : CANDIDATES) {
            if (head.indexOf(candidate) >= 0) {
                double score = score(Splitter.sample(head, candidate, SAMPLE_ROWS), candidate, mapping);
                if (score > most + 1e-9) {
                    most = score;
                    best = Optional.of(candidate);
                }
            }
        }
        return best;
    }

    /** How many rows have as many cells as most rows have, and how much of a heading is recognised. */
    private static double score(List<RawRow> rows, char candidate, Mapping mapping) {
        Map<Integer, Integer> byWidth = new HashMap<>();
        int wide = 0;
        for (RawRow row : rows) {
            byWidth.merge(row.cells().size(), 1, Integer::sum);
            wide += row.cells().size() > 1 ? 1 : 0;
        }
        if (wide == 0) {
            return 0;
        }
        Map.Entry<Integer, Integer> most = byWidth.entrySet().stream()
                .filter(e -> e.getKey() > 1)
                .max(Map.Entry.comparingByValue())
                .orElseThrow();
        double regular = (double) most.getValue() / rows.size();
        double heading =
                Heading.find(Sheet.ofText(rows), mapping).map(Heading::score).orElse(0.0);
        double rare = candidate == ':' || candidate == '~' || candidate == '^' ? 0.8 : 0;
        return 3 * regular + 2 * heading + Math.min(most.getKey(), 8) * 0.05 - rare;
    }
}
