package farwatt.standard;

import java.util.List;

/**
 * A category of cable with what is usual for it.
 *
 * @param word as typed, such as "6A"
 * @param diameter outer diameter in metres
 */
public record CableCategory(String word, double diameter) {
    private static final List<CableCategory> ALL = Facts.rows("cable-categories").stream()
            .map(row -> new CableCategory(row.getField("category"), Facts.number(row, "diameter_mm") / 1000))
            .toList();

    public static List<CableCategory> all() {
        return ALL;
    }

    /** The category of a word of the list; another is a bug. */
    public static CableCategory of(String word) {
        return ALL.stream().filter(c -> c.word.equals(word)).findFirst().orElseThrow();
    }
}
