package farwatt.picture;

import farwatt.quantity.Show;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.DoubleStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.Styler.ChartTheme;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Makes the library's chart of a curve in our own look. */
final class ChartMaker {
    private static final double AIR = 0.06;
    private static final double HALF = 0.5;
    private static final double SIZE = 12;
    private static final int DIGITS = 6;

    private final Curve curve;
    private final List<Point> points;
    private final List<Guide> guides;
    private final Palette palette;

    /** @param points in the units shown, some of them with a value */
    ChartMaker(Curve curve, List<Point> points, List<Guide> guides, Palette palette) {
        this.curve = curve;
        this.points = points;
        this.guides = guides;
        this.palette = palette;
    }

    XYChart chart(int width, int height) {
        XYChart chart = new XYChart(width, height, ChartTheme.XChart);
        style(chart.getStyler());
        range(chart.getStyler());
        chart.setXAxisTitle(curve.across().label());
        chart.setYAxisTitle(curve.up().label());
        boolean whole = curve.form() == Curve.Form.STEPS;
        // the library steps further apart until no label comes twice: whole pieces get whole labels
        chart.setCustomXAxisTickLabelsFormatter(x -> Show.number(whole ? Math.rint(x) : x, DIGITS));
        chart.setCustomYAxisTickLabelsFormatter(y -> curve.up().mark(y, DIGITS));
        XYSeries series = chart.addSeries(
                "points",
                points.stream().mapToDouble(Point::x).toArray(),
                points.stream().mapToDouble(Point::y).toArray());
        series.setLineColor(colour(Ink.RUN));
        series.setLineStyle(new BasicStroke(2.4f));
        series.setMarkerColor(colour(Ink.RUN));
        series.setFillColor(colour(Ink.TRACK));
        series.setXYSeriesRenderStyle(
                switch (curve.form()) {
                    case LINE, MARKED -> XYSeriesRenderStyle.Line;
                    case STEPS -> XYSeriesRenderStyle.Step;
                    case COLUMNS -> XYSeriesRenderStyle.StepArea;
                });
        boolean marked = curve.form() == Curve.Form.STEPS || curve.form() == Curve.Form.MARKED || points.size() == 1;
        series.setMarker(marked ? SeriesMarkers.CIRCLE : SeriesMarkers.NONE);
        return chart;
    }

    private Color colour(Ink ink) {
        return new Color(palette.rgb(ink));
    }

    private void style(XYStyler style) {
        style.setLocale(Locale.ROOT);
        style.setTimezone(TimeZone.getTimeZone("UTC"));
        style.setLegendVisible(false);
        style.setChartTitleVisible(false);
        style.setChartPadding(4);
        style.setPlotMargin(0);
        style.setPlotContentSize(1);
        style.setMarkerSize(7);
        style.setBaseFont(Brush.font(SIZE, Weight.PLAIN));
        style.setAxisTitleFont(Brush.font(SIZE, Weight.BOLD));
        style.setAxisTickLabelsFont(Brush.font(SIZE, Weight.PLAIN));
        style.setChartBackgroundColor(colour(Ink.PAPER));
        style.setPlotBackgroundColor(colour(Ink.CARD));
        style.setPlotBorderColor(colour(Ink.EDGE));
        style.setChartFontColor(colour(Ink.TEXT));
        style.setXAxisTitleColor(colour(Ink.TEXT));
        style.setYAxisTitleColor(colour(Ink.TEXT));
        style.setAxisTickLabelsColor(colour(Ink.TEXT));
        style.setXAxisTickLabelsColor(colour(Ink.TEXT));
        style.setYAxisTickLabelsColor(colour(Ink.TEXT));
        style.setAxisTickMarksColor(colour(Ink.EDGE));
        style.setXAxisTickMarksColor(colour(Ink.EDGE));
        style.setYAxisTickMarksColor(colour(Ink.EDGE));
        style.setPlotGridLinesColor(colour(Ink.TRACK));
        style.setPlotGridLinesStroke(new BasicStroke(0.8f));
    }

    /** Both axes hold every point and every guide, with some air; columns stand on zero. */
    private void range(XYStyler style) {
        double[] across = ends(points.stream().mapToDouble(Point::x), Guide.Way.UPRIGHT, curve.across());
        double[] up =
                ends(points.stream().mapToDouble(Point::y).filter(y -> !Double.isNaN(y)), Guide.Way.LEVEL, curve.up());
        double airX = curve.form() == Curve.Form.LINE ? 0 : AIR / 2;
        style.setXAxisMin(across[0] - air(across) * airX);
        style.setXAxisMax(across[1] + air(across) * Math.max(airX, 0.02));
        style.setYAxisMin(curve.form() == Curve.Form.COLUMNS ? 0.0 : up[0] - air(up) * AIR);
        style.setYAxisMax(up[1] + air(up) * AIR);
        if (!curve.up().words().isEmpty()) {
            style.setYAxisMin(-HALF / 2);
            style.setYAxisMax(curve.up().words().size() - 1 + HALF / 2);
        }
    }

    private double[] ends(DoubleStream values, Guide.Way way, Measure measure) {
        DoubleStream marked = guides.stream()
                .filter(g -> g.way() == way)
                .mapToDouble(g -> measure.unit().fromInside(g.at()));
        var all = DoubleStream.concat(values, marked).summaryStatistics();
        return new double[] {all.getMin(), all.getMax()};
    }

    private static double air(double[] ends) {
        double span = ends[1] - ends[0];
        return span > 0 ? span : Math.max(1, Math.abs(ends[0])) * 2;
    }
}
