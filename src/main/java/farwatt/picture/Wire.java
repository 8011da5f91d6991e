package farwatt.picture;

import java.util.List;

/**
 * One run of the diagram.
 *
 * @param run its id
 * @param from id of the node that feeds it
 * @param to id of the node it feeds
 * @param points from the rail to the card, each part level or upright
 * @param width by its amps
 * @param pattern by its share of volts lost
 * @param words length and gauge, amps and share lost
 * @param said all of it in one sentence, for screen readers
 */
public record Wire(
        String run,
        String from,
        String to,
        List<Point> points,
        double width,
        Pattern pattern,
        List<Words> words,
        String said) {
    private static final double THINNEST = 1;
    private static final double PER_AMP = 2.6;
    private static final double WIDEST = 7;
    private static final double WORDS = 14;

    public Wire {
        points = List.copyOf(points);
        words = List.copyOf(words);
    }

    /** The width for a current in amps; the thinnest where it is not known. */
    public static double width(double amps) {
        return Double.isNaN(amps) ? THINNEST : Math.min(WIDEST, THINNEST + PER_AMP * Math.max(0, amps));
    }

    /** Where it is, its words included. */
    Box reach() {
        return Box.around(points, width + WORDS);
    }

    /** True if any of it may be in a part of the drawing. */
    boolean isIn(Box part) {
        double air = width + WORDS;
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            left = Math.min(left, point.x());
            right = Math.max(right, point.x());
            top = Math.min(top, point.y());
            bottom = Math.max(bottom, point.y());
        }
        return left - air < part.right()
                && right + air > part.x()
                && top - air < part.bottom()
                && bottom + air > part.y();
    }

    /** Distance of a point from the line. */
    double distance(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double nearX = Math.max(Math.min(a.x(), b.x()), Math.min(x, Math.max(a.x(), b.x())));
            double nearY = Math.max(Math.min(a.y(), b.y()), Math.min(y, Math.max(a.y(), b.y())));
            least = Math.min(least, Math.hypot(x - nearX, y - nearY));
        }
        return least;
    }
}
