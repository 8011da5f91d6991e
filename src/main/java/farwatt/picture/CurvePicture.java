package farwatt.picture;

import farwatt.report.Messages;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
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

    @Override
    public List<Tip> tips() {
        return List.of();
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
        double row = -band + LABEL;
        for (Guide guide : guides) {
            if (guide.way() == Guide.Way.LEVEL) {
                double y = chart.getScreenYFromChart(curve.up().unit().fromInside(guide.at()));
                brush.line(List.of(new Point(left, y), new Point(right, y)), Ink.BAD, 1.6, List.of(9.0, 5.0));
                Words words = label(guide, right - 6, y - 6, Anchor.END, right - left - 12);
                double wide = Fit.width(words.text(), LABEL, Weight.BOLD);
                brush.fill(new Box(words.x() - wide - 2, y - 6 - LABEL, wide + 4, LABEL * 1.3), Ink.CARD);
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

    private static Words label(Guide guide, double x, double y, Anchor anchor, double room) {
        String text = Fit.trim(Fit.plain(guide.label()), LABEL, Weight.BOLD, room);
        return new Words(text, x, y, LABEL, anchor, Ink.TEXT, Weight.BOLD, room);
    }
}
