package farwatt.window.studies;

import farwatt.plan.Cell;
import farwatt.plan.Step;
import farwatt.plan.StepPath;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.study.Heading;
import farwatt.study.Points;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Points of a study as a table; where cells of the plan were varied, each point can be made a scenario. */
class PointsTable implements StudyTable {
    private final Points points;
    private final int varied;

    /** @param varied how many columns are cells of the plan; they come first */
    PointsTable(Points points, int varied) {
        this.points = points;
        this.varied = varied;
    }

    @Override
    public List<String> headings() {
        return points.columns().stream().map(Heading::name).toList();
    }

    @Override
    public Unit unit(int column) {
        Heading heading = points.columns().get(column);
        return heading.isNumber() ? heading.unit() : Unit.ONE;
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
        Heading heading = points.columns().get(column);
        double inside = points.inside(row, column);
        return heading.isNumber() && Double.isFinite(inside)
                ? OptionalDouble.of(heading.unit().fromInside(inside))
                : OptionalDouble.empty();
    }

    @Override
    public List<Step> steps(int row) {
        List<Step> steps = new ArrayList<>();
        for (int k = 0; k < varied; k++) {
            Heading heading = points.columns().get(k);
            String text = heading.isNumber() ? Show.exact(points.inside(row, k), heading.unit()) : points.text(row, k);
            steps.add(new Step.Set(heading.name(), Cell.text(text)));
        }
        return steps;
    }

    /** The names of the cells without their rows where that is enough to tell them apart. */
    @Override
    public String name(int row) {
        Set<String> distinct = new HashSet<>();
        for (int k = 0; k < varied; k++) {
            distinct.add(shortened(k));
        }
        List<String> parts = new ArrayList<>();
        for (int k = 0; k < varied; k++) {
            String called = distinct.size() == varied
                    ? shortened(k)
                    : points.columns().get(k).name();
            parts.add(called + " " + points.text(row, k));
        }
        return String.join(", ", parts);
    }

    private String shortened(int column) {
        String name = points.columns().get(column).name();
        return StepPath.of(name).map(StepPath::name).orElse(name);
    }
}
