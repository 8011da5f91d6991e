package farwatt.workbook;

import farwatt.engine.Calculation;
import farwatt.review.Review;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a hand-over workbook is made from.
 *
 * @param calc the solved plan; looked at in every corner while writing and left as it was
 * @param scenario id of the scenario that was applied; empty for base
 * @param version of the program
 * @param planFingerprint of the plan file, if there is one
 * @param date on the record
 * @param sides the plan and its scenarios, to be laid side by side; the first is what the others are held against
 * @param picture of the network, for the summary
 * @param studies each gets a sheet with its chart
 * @param leftOut names of {@link #SHEETS} that are not wanted
 */
public record Handover(
        Calculation calc,
        Review review,
        Optional<String> scenario,
        String version,
        Optional<String> planFingerprint,
        LocalDate date,
        Paper paper,
        List<ScenarioTable.Side> sides,
        Optional<BookPicture> picture,
        List<StudyTable> studies,
        Set<String> leftOut) {
    /** The sheets that can be left out, in their order; the summary always stays, and studies are there if given. */
    public static final List<String> SHEETS = Titles.ALL.stream()
            .filter(title -> !Titles.FOLLOWING.containsKey(title) && !title.equals(Titles.SUMMARY))
            .toList();

    public Handover {
        sides = List.copyOf(sides);
        studies = List.copyOf(studies);
        leftOut = Set.copyOf(leftOut);
    }

    /** With every sheet, without scenarios, a picture and studies. */
    public Handover(
            Calculation calc,
            Review review,
            Optional<String> scenario,
            String version,
            Optional<String> planFingerprint,
            LocalDate date,
            Paper paper) {
        this(
                calc,
                review,
                scenario,
                version,
                planFingerprint,
                date,
                paper,
                List.of(),
                Optional.empty(),
                List.of(),
                Set.of());
    }

    private Handover and(
            List<ScenarioTable.Side> others,
            Optional<BookPicture> drawn,
            List<StudyTable> tables,
            Set<String> without) {
        return new Handover(
                calc, review, scenario, version, planFingerprint, date, paper, others, drawn, tables, without);
    }

    /** The same with a picture on its summary. */
    public Handover with(BookPicture drawn) {
        return and(sides, Optional.of(drawn), studies, leftOut);
    }

    /** The same with the plan's diagram on its summary, where it can be read on a page and a font is there. */
    public Handover drawn() {
        return SiteDiagram.of(calc.still(), review, scenario).map(this::with).orElse(this);
    }

    /** The same with studies, each on a sheet of its own. */
    public Handover with(List<StudyTable> tables) {
        return and(sides, picture, tables, leftOut);
    }

    /** The same with scenarios side by side. */
    public Handover beside(List<ScenarioTable.Side> others) {
        return and(others, picture, studies, leftOut);
    }

    /** The same without some of {@link #SHEETS}. */
    public Handover without(Collection<String> titles) {
        return and(sides, picture, studies, new HashSet<>(titles));
    }

    /** True where a sheet is wanted. */
    boolean has(String title) {
        return !leftOut.contains(Titles.FOLLOWING.getOrDefault(title, title));
    }

    Imprint imprint() {
        String name = calc.plan().name();
        String title = scenario.map(id -> name + " · " + id).orElse(name);
        return new Imprint(title, version, planFingerprint, date, paper);
    }
}
