package farwatt.picture;

import farwatt.report.Messages;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.knowm.xchart.XYChart;

/** Draws a curve with the chart library, and its guides upon it. */
final class CurvePicture implements Picture {
    private static final int WIDE = 900;
    private static final int HIGH = 480;
    private static final double LABEL = 12;
    private static final double LABEL_LINE = 17;

    private final Curve curve;
    private final Palette palette;
    private final Frame frame;
    private final List<Point> points;
    private final List<Guide> guides;
    /** Height above the chart for the labels of upright guides. */
    private final double band;

    CurvePicture(Curve curve, Palette palette) {
        this.curve = curve;
        this.palette = palette;
        points = curve.points().stream()
                .filter(p -> Double.isFinite(p.x()))
                .map(p -> new Point(
                        curve.across().unit().fromInside(p.x()),
                        Double.isFinite(p.y()) ? curve.up().unit().fromInside(p.y()) : Double.NaN))
                .toList();
        guides = curve.guides().stream()
                .filter(g -> Double.isFinite(g.at()))
                .sorted(Comparator.comparingDouble(Guide::at))
                .toList();
        band = guides.stream().filter(g -> g.way() == Guide.Way.UPRIGHT).count() * LABEL_LINE;
        frame = new Frame(curve.caption(), WIDE, HIGH + band, palette);
    }

    @Override
    public double width() {
        return frame.width();
    }

    @Override
    public double height() {
        return frame.height();
    }

    @Override
    public String title() {
        return curve.caption().title();
    }

    @Override
    public String description() {
        List<String> lines = new ArrayList<>();
        lines.add(curve.up().label() + " over " + curve.across().label() + ".");
        curve.guides().forEach(guide -> lines.add(Fit.plain(guide.label()) + "."));
        curve.points()
                .forEach(p ->
                        lines.add(curve.across().text(p.x()) + ": " + curve.up().text(p.y())));
        return Frame.described(lines);
    }

    /** Each point has the stretch of the chart that is nearest to it, each column its own. */
    @Override
    public List<Tip> tips() {
        if (isEmpty()) {
            return List.of();
        }
        XYChart chart = new ChartMaker(curve, points, guides, palette).chart(WIDE, HIGH);
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        chart.paint(nowhere, WIDE, HIGH);
        nowhere.dispose();
        double top = band + chart.getScreenYFromChart(chart.getStyler().getYAxisMax());
        double bottom = band + chart.getScreenYFromChart(chart.getStyler().getYAxisMin());
        double[] edges = edges(chart);
        List<Tip> tips = new ArrayList<>();
        for (int i = 0; i + 1 < edges.length; i++) {
            Box box = new Box(edges[i], top, edges[i + 1] - edges[i], bottom - top);
            tips.add(new Tip(frame.moved(box), said(i)));
        }
        return tips;
    }

    private double[] edges(XYChart chart) {
        boolean columns = curve.form() == Curve.Form.COLUMNS;
        double[] at = points.stream()
                .mapToDouble(p -> chart.getScreenXFromChart(p.x()))
                .toArray();
        if (columns) {
            return at;
        }
        double[] edges = new double[at.length + 1];
        edges[0] = chart.getScreenXFromChart(chart.getStyler().getXAxisMin());
        for (int i = 1; i < at.length; i++) {
            edges[i] = (at[i - 1] + at[i]) / 2;
        }
        edges[at.length] = chart.getScreenXFromChart(chart.getStyler().getXAxisMax());
        return edges;
    }

    private String said(int point) {
        String from = across(points.get(point).x());
        String to = curve.form() == Curve.Form.COLUMNS
                ? " to " + across(points.get(point + 1).x())
                : "";
        double y = points.get(point).y();
        return from + to + ": " + curve.up().text(curve.up().unit().toInside(y));
    }

    private String across(double shown) {
        return curve.across().text(curve.across().unit().toInside(shown));
    }

    private boolean isEmpty() {
        return points.stream().allMatch(p -> Double.isNaN(p.y()));
    }

    @Override
    public void paint(Graphics2D surface) {
        frame.paint(surface, brush -> {
            if (isEmpty()) {
                String none = Messages.text(PictureCode.NO_VALUES);
                brush.write(new Words(none, 0, 40, 14, Anchor.START, Ink.TEXT, Weight.PLAIN, WIDE));
                return;
            }
            AffineTransform here = surface.getTransform();
            surface.translate(0, band);
            XYChart chart = new ChartMaker(curve, points, guides, palette).chart(WIDE, HIGH);
            AffineTransform there = surface.getTransform();
            chart.paint(surface, WIDE, HIGH);
            surface.setClip(null);
            surface.setTransform(there);
            guides(new Brush(surface, palette), chart);
            surface.setTransform(here);
        });
    }

    /**
     * Labels of upright guides stand above the chart, the leftmost uppermost: a label then lies over no other guide,
     * since those to its right end below it.
     */
    private void guides(Brush brush, XYChart chart) {
        double left = chart.getScreenXFromChart(chart.getStyler().getXAxisMin());
        double right = chart.getScreenXFromChart(chart.getStyler().getXAxisMax());
        double bottom = chart.getScreenYFromChart(chart.getStyler().getYAxisMin());
        words(brush, chart, left);
        double row = -band + LABEL;
        for (Guide guide : guides) {
            if (guide.way() == Guide.Way.LEVEL) {
                double y = chart.getScreenYFromChart(curve.up().unit().fromInside(guide.at()));
                brush.line(List.of(new Point(left, y), new Point(right, y)), Ink.BAD, 1.6, List.of(9.0, 5.0));
                boolean first = isFree(guide);
                double at = first ? left + 6 : right - 6;
                Words words = label(guide, at, y - 6, first ? Anchor.START : Anchor.END, right - left - 12);
                double wide = Fit.width(words.text(), LABEL, Weight.BOLD);
                double from = first ? at - 2 : at - wide - 2;
                brush.fill(new Box(from, y - 6 - LABEL, wide + 4, LABEL * 1.3), Ink.CARD);
                brush.write(words);
            } else {
                double x = chart.getScreenXFromChart(curve.across().unit().fromInside(guide.at()));
                double wide = Fit.width(Fit.plain(guide.label()), LABEL, Weight.BOLD);
                double start = Math.max(0, Math.min(x + 6, WIDE - wide));
                double top = start < x + 6 ? row + 4 : row - LABEL;
                brush.line(List.of(new Point(x, top), new Point(x, bottom)), Ink.TEXT, 1.6, List.of(4.0, 3.0));
                brush.write(label(guide, start, row, Anchor.START, WIDE - start));
                row += LABEL_LINE;
            }
        }
    }

    /** What the whole numbers of the upright axis stand for, over their levels: the library would space them by size. */
    private void words(Brush brush, XYChart chart, double left) {
        List<String> words = curve.up().words();
        for (int i = 0; i < words.size(); i++) {
            double y = chart.getScreenYFromChart(i) - 8;
            String text = Fit.plain(words.get(i));
            brush.write(new Words(text, left + 6, y, LABEL, Anchor.START, Ink.TEXT, Weight.BOLD, WIDE - left));
        }
    }

    /** True where the curve begins farther from a level guide than it ends. */
    private boolean isFree(Guide guide) {
        double at = curve.up().unit().fromInside(guide.at());
        double begins = Math.abs(points.get(0).y() - at);
        double ends = Math.abs(points.get(points.size() - 1).y() - at);
        return begins > ends;
    }

    private static Words label(Guide guide, double x, double y, Anchor anchor, double room) {
        String text = Fit.trim(Fit.plain(guide.label()), LABEL, Weight.BOLD, room);
        return new Words(text, x, y, LABEL, anchor, Ink.TEXT, Weight.BOLD, room);
    }
}
