package farwatt.review;

import farwatt.catalogue.Catalogue;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Place;
import java.util.Arrays;

/** Rows of the practice list that change nothing, or give no reason. */
final class ChoiceChecks implements Check {
    private final Scene scene;

    ChoiceChecks(Scene scene) {
        this.scene = scene;
    }

    @Override
    public void look(Findings findings) {
        for (Row row : scene.calc().plan().rows(Table.PRACTICE)) {
            Place place = new Place(Table.PRACTICE.key(), "", row.id());
            if (row.id().startsWith(Choices.PREFIX)) {
                choice(findings, row, place);
            } else if (Catalogue.find(Table.PRACTICE, row.id()).isEmpty()) {
                findings.add(ReviewCode.PRACTICE_UNKNOWN, Level.WARN, place, () -> new Object[] {row.id()});
            } else if (row.text("why").isBlank()) {
                findings.add(ReviewCode.PRACTICE_NO_REASON, Level.NOTE, place, () -> new Object[] {row.id()});
            }
        }
    }

    private static void choice(Findings findings, Row row, Place place) {
        String key = row.id().replaceFirst("/.*", "");
        var known = Arrays.stream(ReviewCode.values())
                .filter(code -> code.key().equals(key))
                .findFirst();
        if (known.isEmpty()) {
            findings.add(ReviewCode.PRACTICE_UNKNOWN, Level.WARN, place, () -> new Object[] {row.id()});
        } else if (known.get().isFirm()) {
            findings.add(ReviewCode.CHOICE_FIRM, Level.WARN, place, () -> new Object[] {row.id()});
        } else if (!Choices.isSound(row)) {
            findings.add(ReviewCode.CHOICE_UNSOUND, Level.WARN, place, () -> new Object[] {row.id()});
        }
    }
}
