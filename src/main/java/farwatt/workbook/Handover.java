package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.review.Review;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a hand-over workbook is made from.
 *
 * @param calc the solved plan; looked at in every corner while writing and left as it was
 * @param scenario id of the scenario that was applied; empty for base
 * @param version of the program
 * @param planFingerprint of the plan file, if there is one
 * @param date on the record
 * @param more further tables to put at the end, such as scenarios side by side
 */
public record Handover(
        Calculation calc,
        Review review,
        Optional<String> scenario,
        String version,
        Optional<String> planFingerprint,
        LocalDate date,
        Paper paper,
        List<Schedule> more) {
    public Handover {
        more = List.copyOf(more);
    }

    Imprint imprint() {
        String name = calc.plan().name();
        String title = scenario.map(id -> name + " · " + id).orElse(name);
        return new Imprint(title, version, planFingerprint, date, paper);
    }
}
