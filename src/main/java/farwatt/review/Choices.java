package farwatt.review;

import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a plan's practice list says of findings: a row named like a finding's code, or code and row as
 * {@code review.reach/trunk}, whose {@code is} is fail, warn, note or silent and whose {@code why} gives the reason.
 * Without a reason it does nothing.
 */
final class Choices {
    static final String PREFIX = "review.";
    private static final String SILENT = "silent";

    private record Choice(Row row, Optional<Level> level) {}

    private final Map<String, Choice> byName = new HashMap<>();
    private final Map<String, Row> applied = new LinkedHashMap<>();

    Choices(Plan plan) {
        for (Row row : plan.rows(Table.PRACTICE)) {
            if (row.id().startsWith(PREFIX) && isSound(row)) {
                byName.put(Rows.fold(row.id()), new Choice(row, level(row)));
            }
        }
    }

    /** True for a row with a word that is understood and a reason. */
    static boolean isSound(Row row) {
        String word = row.text("is").strip();
        return (word.equals(SILENT) || level(row).isPresent())
                && !row.text("why").isBlank();
    }

    private static Optional<Level> level(Row row) {
        String word = row.text("is").strip();
        for (Level level : Level.values()) {
            if (level.word().equals(word)) {
                return Optional.of(level);
            }
        }
        return Optional.empty();
    }

    /** The level of a finding in this plan; empty if it is silenced. */
    Optional<Level> level(ReviewCode code, String row, Level usual) {
        if (byName.isEmpty() || code.isFirm()) {
            return Optional.of(usual);
        }
        Choice here = byName.get(Rows.fold(code.key() + "/" + row));
        Choice choice = here == null ? byName.get(code.key()) : here;
        if (choice == null) {
            return Optional.of(usual);
        }
        applied.put(choice.row().id(), choice.row());
        return choice.level();
    }

    /** What the plan chose that changed something, each with its reason, as sentences to follow a verdict. */
    String said() {
        StringBuilder all = new StringBuilder();
        for (Row row : applied.values()) {
            String word = row.text("is").strip();
            all.append(' ')
                    .append(Phrase.VERDICT_CHOICE.text(
                            row.id(), word, row.text("why").strip()));
        }
        return all.toString();
    }
}
