package farwatt.window.studies;

import farwatt.picture.Figures;
import farwatt.picture.StudyCharts;
import farwatt.picture.SweepChart;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import farwatt.study.Heading;
import farwatt.study.Points;
import java.util.List;

/** Charts of the points of a sweep. */
final class SweepDrawing implements Drawing {
    private final Plan plan;
    private final Points points;
    private final int varied;
    private final List<List<String>> values;

    SweepDrawing(Plan plan, Points points, int varied) {
        this.plan = plan;
        this.points = points;
        this.varied = varied;
        values = SweepChart.held(Figures.of(points), varied);
    }

    @Override
    public List<String> figures() {
        return points.columns().subList(varied, points.columns().size()).stream()
                .map(Heading::name)
                .toList();
    }

    @Override
    public List<String> held() {
        return varied < 3
                ? List.of()
                : points.columns().subList(2, varied).stream()
                        .map(Heading::name)
                        .toList();
    }

    @Override
    public List<String> values(int held) {
        return values.get(held);
    }

    @Override
    public Drawn draw(int figure, List<Integer> at) throws Refusal {
        String read = points.columns().get(varied + figure).name();
        SweepChart chart =
                SweepChart.of(Figures.of(points), varied, varied + figure, at, StudyCharts.target(plan, read), "");
        return new Drawn(chart.chart(), chart.points());
    }
}
