package farwatt.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Trade words of several languages from the room's data files. Immutable, safe for any thread. */
final class Words {
    /**
     * A word that may head a column.
     *
     * @param meaning what the column then holds
     * @param weak true when the word is also used for other things
     */
    record Entry(Meaning meaning, boolean weak) {}

    private static final Map<String, List<Entry>> HEADINGS = headings();
    private static final Map<String, Set<String>> REMARKS = remarks();

    private Words() {}

    /** What a phrase, folded, can mean as a heading. */
    static List<Entry> headings(String phrase) {
        return HEADINGS.getOrDefault(phrase, List.of());
    }

    /** Whether a phrase, folded, belongs to a group of remark words. */
    static boolean isRemark(String group, String phrase) {
        return REMARKS.getOrDefault(group, Set.of()).contains(phrase);
    }

    private static Map<String, List<Entry>> headings() {
        Map<String, List<Entry>> all = new HashMap<>();
        for (RawRow row : load("words.csv")) {
            Meaning meaning =
                    Meaning.of(row.cell(0).text()).orElseThrow(() -> new IllegalStateException("words.csv: " + row));
            for (String typed : row.cell(2).text().split("\\|", -1)) {
                boolean weak = typed.endsWith("?");
                String phrase = Spelling.fold(typed);
                List<Entry> entries = all.computeIfAbsent(phrase, p -> new ArrayList<>());
                if (entries.stream().noneMatch(e -> e.meaning() == meaning)) {
                    entries.add(new Entry(meaning, weak));
                }
            }
        }
        return all;
    }

    private static Map<String, Set<String>> remarks() {
        Map<String, Set<String>> all = new HashMap<>();
        for (RawRow row : load("remarks.csv")) {
            Set<String> words = new HashSet<>();
            for (String typed : row.cell(1).text().split("\\|", -1)) {
                words.add(Spelling.fold(typed));
            }
            all.put(row.cell(0).text(), words);
        }
        return all;
    }

    private static List<RawRow> load(String file) {
        try (InputStream in = Words.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no data file " + file);
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            List<RawRow> rows = Splitter.split(text, ';');
            return rows.subList(1, rows.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
