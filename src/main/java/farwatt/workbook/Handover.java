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
 * @param picture of the network, for the summary
 * @param studies each gets a sheet with its chart
 */
public record Handover(
        Calculation calc,
        Review review,
        Optional<String> scenario,
        String version,
        Optional<String> planFingerprint,
        LocalDate date,
        Paper paper,
        List<Schedule> more,
        Optional<BookPicture> picture,
        List<StudyTable> studies) {
    public Handover {
        more = List.copyOf(more);
        studies = List.copyOf(studies);
    }

    /** Without a picture and studies. */
    public Handover(
            Calculation calc,
            Review review,
            Optional<String> scenario,
            String version,
            Optional<String> planFingerprint,
            LocalDate date,
            Paper paper,
            List<Schedule> more) {
        this(calc, review, scenario, version, planFingerprint, date, paper, more, Optional.empty(), List.of());
    }

    /** The same with a picture on its summary. */
    public Handover with(BookPicture drawn) {
        return new Handover(
                calc, review, scenario, version, planFingerprint, date, paper, more, Optional.of(drawn), studies);
    }

    /** The same with the plan's diagram on its summary, where it can be read on a page and a font is there. */
    public Handover drawn() {
        return SiteDiagram.of(calc.still(), review, scenario).map(this::with).orElse(this);
    }

    /** The same with studies, each on a sheet of its own. */
    public Handover with(List<StudyTable> tables) {
        return new Handover(calc, review, scenario, version, planFingerprint, date, paper, more, picture, tables);
    }

    Imprint imprint() {
        String name = calc.plan().name();
        String title = scenario.map(id -> name + " · " + id).orElse(name);
        return new Imprint(title, version, planFingerprint, date, paper);
    }
}
