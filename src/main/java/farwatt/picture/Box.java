package farwatt.picture;

import java.util.List;

/** A rectangle of a drawing; x and y are its upper left corner. */
public record Box(double x, double y, double width, double height) {
    /** The smallest one around points, with so much air on every side. */
    static Box around(List<Point> points, double air) {
        double left = points.stream().mapToDouble(Point::x).min().orElse(0) - air;
        double top = points.stream().mapToDouble(Point::y).min().orElse(0) - air;
        double right = points.stream().mapToDouble(Point::x).max().orElse(0) + air;
        double bottom = points.stream().mapToDouble(Point::y).max().orElse(0) + air;
        return new Box(left, top, right - left, bottom - top);
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    /** True for a point inside or on the edge. */
    public boolean contains(double px, double py) {
        return px >= x && px <= right() && py >= y && py <= bottom();
    }

    /** True if the two share more than an edge. */
    public boolean overlaps(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }
}
