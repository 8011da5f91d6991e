package farwatt.window.studies;

import farwatt.picture.StudyCharts;
import farwatt.quantity.Show;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Heading;
import farwatt.study.Scatter;
import farwatt.study.Spread;
import farwatt.study.Vary;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Values by chance within tolerances. */
final class SpreadStudy {
    private static final List<String> HEADINGS = List.of(
            "read",
            "mean",
            "deviation",
            "least",
            "1 % below",
            "5 % below",
            "25 % below",
            "middle",
            "75 % below",
            "95 % below",
            "99 % below",
            "greatest",
            "without value",
            "no");
    private static final int FIVE = 2;
    private static final int MIDDLE = 4;
    private static final int NINETY_FIVE = 6;

    private final StudyRun run;
    private final Ground ground;
    private final Effort effort;
    private final Units units;

    SpreadStudy(StudyRun run, Ground ground, Effort effort) {
        this.run = run;
        this.ground = ground;
        this.effort = effort;
        units = new Units(ground.plan().currency());
    }

    StudyResult result() throws Refusal, IOException {
        List<Vary> over = run.varies(ground, StudyField.TOLERANCE);
        Spread.of(ground, over, List.of("1"), Spread.LEAST_RUNS, 1);
        long seed = run.whole(StudyField.SEED, 1);
        int runs = (int) Math.min(Integer.MAX_VALUE, run.whole(StudyField.RUNS, Spread.USUAL_RUNS));
        Spread.of(ground, over, List.of("1"), runs, 1);
        List<String> reads = run.lines(StudyField.READ);
        Spread spread = spread(over, reads, runs, seed);
        double[][] kept = new double[reads.size()][runs];
        List<Scatter> found = spread.run(effort, point -> {
            for (int r = 0; r < kept.length; r++) {
                kept[r][(int) point.number()] = point.inside(over.size() + r);
            }
        });
        List<Charts.Maker> makers = new ArrayList<>();
        List<farwatt.workbook.StudyTable> sheets = new ArrayList<>();
        for (int r = 0; r < kept.length; r++) {
            Scatter scatter = found.get(r);
            double[] values = kept[r];
            OptionalDouble target = StudyCharts.target(ground.plan(), reads.get(r));
            makers.add(() -> StudyCharts.of(scatter, DoubleStream.of(values), target, ""));
            sheets.add(run.sheets().spread(scatter, values));
        }
        return run.result(
                found.stream().map(this::said).toList(),
                new TextRows(HEADINGS, found.stream().map(this::row).toList()),
                new Charts(reads, makers, List.of()),
                sheets);
    }

    private Spread spread(List<Vary> over, List<String> reads, int runs, long seed) throws Refusal {
        try {
            return Spread.of(ground, over, reads, runs, seed);
        } catch (Refusal e) {
            if (!reads.isEmpty()) {
                run.blameRead(one -> Spread.of(ground, over, one, runs, seed));
            }
            throw e;
        }
    }

    private String said(Scatter scatter) {
        Heading heading = scatter.heading();
        return heading.isNumber()
                ? Messages.text(
                        StudiesCode.HALF_BETWEEN,
                        heading.name(),
                        Show.text(scatter.levels().get(MIDDLE), heading.unit()),
                        Show.text(scatter.levels().get(FIVE), heading.unit()),
                        Show.text(scatter.levels().get(NINETY_FIVE), heading.unit()))
                : Messages.text(StudiesCode.FAILS_SHARE, heading.name(), share(scatter.failing()));
    }

    private List<TextRows.Cell> row(Scatter scatter) {
        Heading heading = scatter.heading();
        Unit unit = heading.unit();
        Unit apart = unit.isAbsoluteTemperature() ? units.need("K") : unit;
        List<TextRows.Cell> cells = new ArrayList<>(List.of(TextRows.Cell.words(heading.name())));
        cells.add(number(heading, scatter.mean(), unit));
        cells.add(number(heading, scatter.deviation(), apart));
        scatter.levels().forEach(level -> cells.add(number(heading, level, unit)));
        cells.add(TextRows.Cell.whole(scatter.without()));
        cells.add(TextRows.Cell.words(heading.isNumber() ? "" : share(scatter.failing())));
        return cells;
    }

    /** A figure with its unit, since every row may have another one. */
    private static TextRows.Cell number(Heading heading, double inside, Unit unit) {
        return TextRows.Cell.words(heading.isNumber() ? Show.text(inside, unit) : "");
    }

    private String share(double share) {
        return Show.text(share, units.need("%"));
    }
}
