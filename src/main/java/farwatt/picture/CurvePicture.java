package farwatt.picture;

import farwatt.report.Messages;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
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

    CurvePicture(Curve curve, Palette palette) {
        this.curve = curve;
        this.palette = palette;
        points = curve.points().stream()
                .filter(p -> Double.isFinite(p.x()))
                .map(p -> new Point(
                        curve.across().unit().fromInside(p.x()),
                        Double.isFinite(p.y()) ? curve.up().unit().fromInside(p.y()) : Double.NaN))
                .toList();
        frame = new Frame(curve.caption(), WIDE, HIGH, palette);
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
            List<Guide> guides = guides();
            XYChart chart = new ChartMaker(curve, points, guides, palette).chart(WIDE, HIGH);
            AffineTransform here = surface.getTransform();
            chart.paint(surface, WIDE, HIGH);
            surface.setClip(null);
            surface.setTransform(here);
            guides(new Brush(surface, palette), chart, guides);
        });
    }

    private List<Guide> guides() {
        return curve.guides().stream().filter(g -> Double.isFinite(g.at())).toList();
    }

    /** Labels of upright guides stand below each other, so that guides close together can be told apart. */
    private void guides(Brush brush, XYChart chart, List<Guide> guides) {
        double left = chart.getScreenXFromChart(chart.getStyler().getXAxisMin());
        double right = chart.getScreenXFromChart(chart.getStyler().getXAxisMax());
        double bottom = chart.getScreenYFromChart(chart.getStyler().getYAxisMin());
        double top = chart.getScreenYFromChart(chart.getStyler().getYAxisMax());
        double row = top + LABEL + 4;
        for (Guide guide : guides) {
            if (guide.way() == Guide.Way.LEVEL) {
                double y = chart.getScreenYFromChart(curve.up().unit().fromInside(guide.at()));
                brush.line(List.of(new Point(left, y), new Point(right, y)), Ink.BAD, 1.6, List.of(9.0, 5.0));
                label(brush, guide, right - 6, y - 6, Anchor.END, right - left);
            } else {
                double x = chart.getScreenXFromChart(curve.across().unit().fromInside(guide.at()));
                brush.line(List.of(new Point(x, top), new Point(x, bottom)), Ink.TEXT, 1.6, List.of(4.0, 3.0));
                boolean before = x > (left + right) / 2;
                double room = (before ? x - left : right - x) - 12;
                label(brush, guide, before ? x - 6 : x + 6, row, before ? Anchor.END : Anchor.START, room);
                row += LABEL_LINE;
            }
        }
    }

    private static void label(Brush brush, Guide guide, double x, double y, Anchor anchor, double room) {
        String text = Fit.trim(Fit.plain(guide.label()), LABEL, Weight.BOLD, room);
        double wide = Math.min(room, Fit.width(text, LABEL, Weight.BOLD));
        double left = anchor == Anchor.END ? x - wide : x;
        brush.fill(new Box(left - 2, y - LABEL, wide + 4, LABEL * 1.3), Ink.CARD);
        brush.write(new Words(text, x, y, LABEL, anchor, Ink.TEXT, Weight.BOLD, room));
    }
}
