package farwatt.window.studies;

import farwatt.plan.Step;
import farwatt.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;

/** A table of cells that were put together one by one. */
final class TextRows implements StudyTable {
    private final List<String> headings;
    private final List<List<Cell>> rows;
    private final List<Step> steps;

    /**
     * One cell.
     *
     * @param number in the plain unit; empty for words
     */
    record Cell(String text, OptionalDouble number) {
        static Cell words(String text) {
            return new Cell(text, OptionalDouble.empty());
        }

        static Cell whole(long number) {
            return new Cell(Long.toString(number), OptionalDouble.of((double) number));
        }
    }

    TextRows(List<String> headings, List<List<Cell>> rows) {
        this(headings, rows, List.of());
    }

    /** @param steps for every row the step to the state of the plan that it tells of; none for rows that tell of none */
    TextRows(List<String> headings, List<List<Cell>> rows, List<Step> steps) {
        this.headings = List.copyOf(headings);
        this.rows = List.copyOf(rows);
        this.steps = List.copyOf(steps);
    }

    @Override
    public List<Step> steps(int row) {
        return steps.isEmpty() ? List.of() : List.of(steps.get(row));
    }

    @Override
    public String name(int row) {
        return !steps.isEmpty() && steps.get(row) instanceof Step.Set set
                ? set.path() + " " + set.to().text()
                : "";
    }

    @Override
    public List<String> headings() {
        return headings;
    }

    @Override
    public Unit unit(int column) {
        return Unit.ONE;
    }

    @Override
    public int size() {
        return rows.size();
    }

    @Override
    public String text(int row, int column) {
        return rows.get(row).get(column).text();
    }

    @Override
    public OptionalDouble number(int row, int column) {
        return rows.get(row).get(column).number();
    }
}
