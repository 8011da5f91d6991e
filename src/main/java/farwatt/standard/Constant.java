package farwatt.standard;

import java.util.ArrayList;
import java.util.List;

/**
 * A named constant that a plan may replace.
 *
 * @param name its name in the plan's practice list
 * @param unit its unit, "" for a bare number
 * @param literal the value as text in that unit
 * @param low smallest plausible value in that unit; NaN where anything goes
 * @param high largest plausible value
 * @param sentence what it is
 * @param source where it comes from
 */
public record Constant(
        String name, String unit, String literal, double low, double high, String sentence, String source) {
    private static final List<String> FILES = List.of("wire", "heat", "reach", "limits", "battery", "as-built");
    private static final List<Constant> ALL = load();

    /** Every constant, file by file. */
    public static List<Constant> all() {
        return ALL;
    }

    private static List<Constant> load() {
        List<Constant> all = new ArrayList<>();
        for (String file : FILES) {
            Facts.rows(file)
                    .forEach(row -> all.add(new Constant(
                            row.getField("name"),
                            row.getField("unit"),
                            row.getField("default"),
                            Facts.number(row, "low"),
                            Facts.number(row, "high"),
                            row.getField("sentence"),
                            row.getField("source"))));
        }
        return List.copyOf(all);
    }
}
