package farwatt.picture;

import farwatt.language.Type;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The chart of a sweep, and which of its points each place of the chart stands for. One varied quantity gives a curve;
 * two give a heat map, the first across, the second down; of more, the others are held at one value each. Safe for any
 * thread once made.
 */
public final class SweepChart {
    private static final int MOST_ACROSS = 150;
    private static final int MOST_DOWN = 93;
    private static final int MOST_POINTS = 2_000;
    private static final int FEW = 16;

    private final Figures figures;
    private final int varied;
    private final int read;
    private final OptionalDouble target;
    private final List<Axis> axes = new ArrayList<>();
    private final List<Integer> held = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();
    private final Chart chart;

    private SweepChart(Figures figures, int varied, int read, List<Integer> held, OptionalDouble target, String below)
            throws Refusal {
        this.figures = figures;
        this.varied = varied;
        this.read = read;
        var heading = figures.columns().get(read);
        if (heading.isText()) {
            throw Refusal.of(PictureCode.NO_CHART, heading.name());
        }
        this.target = heading.type() == Type.Plain.YES_NO ? OptionalDouble.of(1) : target;
        for (int k = 0; k < varied; k++) {
            Axis axis = new Axis(figures, k);
            axes.add(axis);
            if (k > 1) {
                int wanted = k - 2 < held.size() ? held.get(k - 2) : 0;
                this.held.add(Math.max(0, Math.min(axis.size() - 1, wanted)));
            }
        }
        if (!this.held.isEmpty()) {
            List<String> said = new ArrayList<>();
            for (int k = 2; k < varied; k++) {
                said.add(axes.get(k).name() + " " + axes.get(k).text(this.held.get(k - 2)));
            }
            notes.add(Messages.text(PictureCode.HELD, String.join(", ", said)));
        }
        chart = varied == 1 && figures.columns().get(0).isNumber() ? curve(below) : map(below);
    }

    /**
     * Makes the chart.
     *
     * @param varied how many columns are varied; they come first
     * @param read the column that is drawn
     * @param held for the third varied column and those after it, which of its values is drawn; the first where
     *     nothing is said
     * @param target SI; empty for no line
     * @param below what it was asked of
     * @throws Refusal if what is read is no figure, such as a text
     */
    public static SweepChart of(
            Figures figures, int varied, int read, List<Integer> held, OptionalDouble target, String below)
            throws Refusal {
        return new SweepChart(figures, varied, read, held, target, below);
    }

    public Chart chart() {
        return chart;
    }

    /** The number of the point that a tip of the picture stands for; −1 for none. */
    public int point(int tip) {
        return tip >= 0 && tip < places.size() ? places.get(tip) : -1;
    }

    /** The tip of the picture that stands for a point; −1 where it is not drawn. */
    public int tip(int point) {
        return places.indexOf(point);
    }

    /** The values of the columns that can be held, as a person reads them. */
    public static List<List<String>> held(Figures figures, int varied) {
        List<List<String>> all = new ArrayList<>();
        for (int k = 2; k < varied; k++) {
            Axis axis = new Axis(figures, k);
            List<String> texts = new ArrayList<>();
            for (int i = 0; i < axis.size(); i++) {
                texts.add(axis.text(i));
            }
            all.add(texts);
        }
        return all;
    }

    private Caption caption(String below) {
        StringBuilder title = new StringBuilder(
                figures.columns().get(read).name() + " over " + axes.get(0).name());
        if (varied > 1) {
            title.append(" and ").append(axes.get(1).name());
        }
        return new Caption(title.toString(), StudyCharts.noted(below, notes));
    }

    /** Every so many values are drawn, so that at most so many are; said where some are not. */
    private int every(Axis axis, int most) {
        int every = (axis.size() + most - 1) / most;
        if (every > 1) {
            notes.add(Messages.text(PictureCode.THINNED, every, axis.name()));
        }
        return Math.max(1, every);
    }

    private HeatMap map(String below) {
        Axis across = axes.get(0);
        int stepX = every(across, MOST_ACROSS);
        int stepY = varied > 1 ? every(axes.get(1), MOST_DOWN) : 1;
        int wide = (across.size() + stepX - 1) / stepX;
        int high = varied > 1 ? (axes.get(1).size() + stepY - 1) / stepY : 1;
        double[] values = new double[wide * high];
        int[] points = new int[wide * high];
        Arrays.fill(values, Double.NaN);
        Arrays.fill(points, -1);
        for (int i = 0; i < figures.size(); i++) {
            int x = across.place(i);
            int y = varied > 1 ? axes.get(1).place(i) : 0;
            if (x % stepX == 0 && y % stepY == 0 && isHeld(i)) {
                values[y / stepY * wide + x / stepX] = figures.inside(i, read);
                points[y / stepY * wide + x / stepX] = i;
            }
        }
        Arrays.stream(points).forEach(places::add);
        Scale down =
                varied > 1 ? scale(axes.get(1), stepY) : new Scale("", figures.size() == 0 ? List.of() : List.of(""));
        return new HeatMap(
                caption(below),
                scale(across, stepX),
                down,
                (column, row) -> values[row * wide + column],
                Measure.of(figures.columns().get(read)),
                target);
    }

    private static Scale scale(Axis axis, int every) {
        List<String> steps = new ArrayList<>();
        for (int i = 0; i < axis.size(); i += every) {
            steps.add(axis.text(i));
        }
        return new Scale(axis.name(), steps);
    }

    private boolean isHeld(int point) {
        for (int k = 2; k < varied; k++) {
            if (axes.get(k).place(point) != held.get(k - 2)) {
                return false;
            }
        }
        return true;
    }

    private Curve curve(String below) {
        var heading = figures.columns().get(0);
        int every = every(axes.get(0), MOST_POINTS);
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < figures.size(); i += every) {
            all.add(i);
        }
        all.sort(Comparator.comparingDouble(i -> figures.inside(i, 0)));
        places.addAll(all);
        Measure up = Measure.of(figures.columns().get(read));
        List<Guide> guides = new ArrayList<>();
        if (up.words().isEmpty()) {
            target.ifPresent(
                    at -> guides.add(new Guide(Guide.Way.LEVEL, at, Messages.text(PictureCode.TARGET, up.text(at)))));
        }
        boolean few = heading.type() == Type.Plain.GAUGE || all.size() <= FEW;
        Curve.Form joined = few ? Curve.Form.MARKED : Curve.Form.LINE;
        return new Curve(
                caption(below),
                Measure.of(heading),
                up,
                all.stream()
                        .map(i -> new Point(figures.inside(i, 0), figures.inside(i, read)))
                        .toList(),
                up.words().isEmpty() ? joined : Curve.Form.STEPS,
                guides);
    }
}
