package farwatt.script;

import farwatt.picture.Caption;
import farwatt.picture.Curve;
import farwatt.picture.Guide;
import farwatt.picture.Measure;
import farwatt.picture.Palette;
import farwatt.picture.Picture;
import farwatt.picture.Point;
import farwatt.picture.Sensitivity;
import farwatt.picture.SweepChart;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Draws what scripts ask for. What a table shows goes by its columns: what was varied along the axes, the effects of
 * inputs as bars, the scatter of trials as what share of them lies below, anything else over its first column. Any
 * thread.
 */
public final class ResultPictures {
    private static final String FIGURE = "figure";
    private static final List<String> EFFECTS = List.of("input", "low", "high", "down", "up", "effect");
    private static final int MOST_INPUTS = 24;

    private ResultPictures() {}

    /**
     * The picture in the colours of a palette.
     *
     * @param below what it was asked of, "" for nothing
     * @throws Refusal if the column holds words, or the table nothing else to draw it over
     */
    public static Picture of(ResultPicture result, String below, Palette palette) throws Refusal {
        ResultTable table = result.table();
        int drawn = place(table, result.column());
        if (EFFECTS.stream().allMatch(name -> place(table, name) >= 0)
                && result.now().isPresent()) {
            return effects(table, result, below).picture(palette);
        }
        if (isScatter(table) && drawn > 0) {
            return scatter(table, drawn, below).picture(palette);
        }
        List<Integer> order = new ArrayList<>();
        result.varied().forEach(name -> order.add(place(table, name)));
        if (order.isEmpty()) {
            order.addAll(over(table, drawn));
        }
        if (order.isEmpty() || order.contains(-1) || drawn < 0) {
            throw Refusal.of(ScriptCode.NOT_DRAWN, result.column());
        }
        int varied = order.size();
        order.add(drawn);
        return SweepChart.of(ResultFigures.of(table, order), varied, varied, List.of(), OptionalDouble.empty(), below)
                .chart()
                .picture(palette);
    }

    private static int place(ResultTable table, String name) {
        return table.columns().stream().map(ResultTable.Column::name).toList().indexOf(name);
    }

    /** The first column that is another; none in a table of one. */
    private static List<Integer> over(ResultTable table, int drawn) {
        int first = drawn == 0 ? 1 : 0;
        return first < table.columns().size() ? List.of(first) : List.of();
    }

    private static Sensitivity effects(ResultTable table, ResultPicture result, String below) {
        List<Sensitivity.Input> inputs = new ArrayList<>();
        int down = place(table, "down");
        int up = place(table, "up");
        for (List<ResultTable.Cell> row : table.rows()) {
            inputs.add(new Sensitivity.Input(
                    text(table, row, "input"),
                    text(table, row, "low"),
                    number(row.get(down)),
                    text(table, row, "high"),
                    number(row.get(up))));
        }
        Unit unit = table.columns().get(up).unit();
        int most = Math.min(MOST_INPUTS, inputs.size());
        String read = result.read().isEmpty() ? "the value" : result.read();
        Caption caption = new Caption("What moves " + read, below);
        return new Sensitivity(caption, new Measure(read, unit), result.now().getAsDouble(), inputs.subList(0, most));
    }

    private static String text(ResultTable table, List<ResultTable.Cell> row, String name) {
        int at = place(table, name);
        return ResultTable.text(row.get(at), table.columns().get(at));
    }

    private static double number(ResultTable.Cell cell) {
        return cell instanceof ResultTable.Amount amount ? amount.inside() : Double.NaN;
    }

    private static boolean isScatter(ResultTable table) {
        return place(table, FIGURE) == 0
                && table.rows().stream().anyMatch(row -> row.get(0).equals(new ResultTable.Words("50 %")));
    }

    /** What share of the trials lies below each value. */
    private static Curve scatter(ResultTable table, int drawn, String below) {
        List<Point> points = new ArrayList<>();
        List<Guide> guides = new ArrayList<>();
        Measure of = new Measure(
                table.columns().get(drawn).name(), table.columns().get(drawn).unit());
        for (List<ResultTable.Cell> row : table.rows()) {
            double share = share(row.get(0));
            double value = number(row.get(drawn));
            if (!Double.isNaN(share) && !Double.isNaN(value)) {
                points.add(new Point(value, share));
                if (share == 0.5) {
                    String middle = "middle "
                            + ResultTable.text(row.get(drawn), table.columns().get(drawn));
                    guides.add(new Guide(Guide.Way.UPRIGHT, value, middle));
                }
            }
        }
        Caption caption = new Caption("How " + of.name() + " spreads", below);
        Measure trials = new Measure("trials below", new Units("").need("%"));
        return new Curve(caption, of, trials, points, Curve.Form.MARKED, guides);
    }

    private static double share(ResultTable.Cell cell) {
        String word = cell instanceof ResultTable.Words words ? words.text() : "";
        if (word.equals("least") || word.equals("greatest")) {
            return word.equals("least") ? 0 : 1;
        }
        return Stream.of(word)
                .filter(w -> w.matches("[0-9]+ %"))
                .mapToDouble(w -> Double.parseDouble(w.substring(0, w.length() - 2)) / 100)
                .findFirst()
                .orElse(Double.NaN);
    }
}
