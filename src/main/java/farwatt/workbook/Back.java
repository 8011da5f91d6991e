package farwatt.workbook;

import farwatt.plan.Change;
import farwatt.report.Place;
import java.util.List;
import java.util.Optional;

/**
 * What came back with a hand-over workbook that people worked in. Immutable.
 *
 * @param batch the one step that takes all of it into the plan; empty when there is nothing to take
 * @param edited given cells and readings that changed, in the workbook's order
 * @param added rows that the plan did not have
 * @param missing rows of the plan that the workbook no longer has; they stay
 * @param left what cannot be taken, and why
 * @param formulas that people wrote; only their results are used
 */
public record Back(
        Optional<Change.Batch> batch,
        List<Edited> edited,
        List<Place> added,
        List<Place> missing,
        List<Left> left,
        List<Formula> formulas) {
    /**
     * One cell of the plan that changes.
     *
     * @param where as people find it in the workbook: {@code Runs!F12}
     * @param before text in the plan, "" for an empty cell
     * @param after text that takes its place, "" to empty it
     */
    public record Edited(String where, Place place, String before, String after) {}

    /** Something that stands in the workbook and cannot be taken. */
    public record Left(String where, String typed, String why) {}

    /** A formula that was not ours. */
    public record Formula(String where, String text) {}

    public Back {
        edited = List.copyOf(edited);
        added = List.copyOf(added);
        missing = List.copyOf(missing);
        left = List.copyOf(left);
        formulas = List.copyOf(formulas);
    }
}
