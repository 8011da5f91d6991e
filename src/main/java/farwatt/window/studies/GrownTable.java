package farwatt.window.studies;

import farwatt.plan.Step;
import farwatt.quantity.Unit;
import farwatt.study.Grown;
import java.util.List;
import java.util.OptionalDouble;

/** The copies that were added one by one; each count of them can be made a scenario. */
final class GrownTable implements StudyTable {
    private final Grown grown;
    private final String copied;
    private final PointsTable points;

    GrownTable(Grown grown, String copied) {
        this.grown = grown;
        this.copied = copied;
        points = new PointsTable(grown.points(), 0);
    }

    @Override
    public List<String> headings() {
        return points.headings();
    }

    @Override
    public Unit unit(int column) {
        return points.unit(column);
    }

    @Override
    public int size() {
        return points.size();
    }

    @Override
    public String text(int row, int column) {
        return points.text(row, column);
    }

    @Override
    public OptionalDouble number(int row, int column) {
        return points.number(row, column);
    }

    @Override
    public List<Step> steps(int row) {
        return grown.steps(row);
    }

    @Override
    public String name(int row) {
        return row + " more like " + copied;
    }
}
