package farwatt.window.studies;

import farwatt.plan.Step;
import farwatt.study.Grown;
import java.util.List;

/** The copies that were added one by one; each count of them can be made a scenario. */
final class GrownTable extends PointsTable {
    private final Grown grown;
    private final String copied;

    GrownTable(Grown grown, String copied) {
        super(grown.points(), 0);
        this.grown = grown;
        this.copied = copied;
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
