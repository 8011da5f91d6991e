package farwatt.command;

import farwatt.study.Heading;
import farwatt.study.Points;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Points as a table in letters. */
final class StudyText {
    private static final int MOST_REASONS = 5;

    private StudyText() {}

    static void table(Output output, Points points) {
        TextTable table =
                new TextTable(points.columns().stream().map(Heading::name).toList());
        for (int i = 0; i < points.size(); i++) {
            List<String> cells = new ArrayList<>();
            for (int c = 0; c < points.columns().size(); c++) {
                cells.add(points.text(i, c));
            }
            table.row(cells);
        }
        table.lines().forEach(output::line);
    }

    /** Says why values are missing, each reason once. */
    static void reasons(Output output, Points points) {
        Set<String> reasons = new LinkedHashSet<>();
        for (int i = 0; i < points.size() && reasons.size() <= MOST_REASONS; i++) {
            for (int c = 0; c < points.columns().size(); c++) {
                points.why(i, c).ifPresent(reasons::add);
            }
        }
        if (!reasons.isEmpty()) {
            output.line("");
        }
        reasons.stream().limit(MOST_REASONS).forEach(reason -> output.line("– " + reason));
        if (reasons.size() > MOST_REASONS) {
            output.line("– …");
        }
    }
}
