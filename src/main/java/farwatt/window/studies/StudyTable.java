package farwatt.window.studies;

import farwatt.plan.Step;
import farwatt.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;

/** What a study found, row by row. Safe for any thread. */
public interface StudyTable {
    /** What stands above the columns. */
    List<String> headings();

    /** The unit of a column's numbers, the unit of plain numbers for all else. */
    Unit unit(int column);

    int size();

    /** A cell as a person reads it. */
    String text(int row, int column);

    /** A cell's number in the column's unit; empty where it is none. */
    OptionalDouble number(int row, int column);

    /** The steps of a scenario that is this row; none where a row is no state of the plan. */
    default List<Step> steps(int row) {
        return List.of();
    }

    /** What such a scenario may be called. */
    default String name(int row) {
        return "";
    }
}
