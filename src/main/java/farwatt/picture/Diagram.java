package farwatt.picture;

import farwatt.engine.Still;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.review.Review;
import java.util.List;
import java.util.Optional;

/**
 * The single-line diagram as laid out: sources at the left, what they feed to the right, nothing over anything else.
 * Lengths are in points of the unscaled picture. Immutable; windows, workbooks and files draw the same one.
 *
 * @param width of everything
 * @param height of everything
 * @param cards one a source, switch and device
 * @param wires one a run whose two ends are there
 */
public record Diagram(double width, double height, List<Card> cards, List<Wire> wires) {
    public Diagram {
        cards = List.copyOf(cards);
        wires = List.copyOf(wires);
    }

    /** What stands on a card, and which outline it has. */
    public enum Shape {
        SOURCE,
        SWITCH,
        DEVICE
    }

    /** How much of its volts a run loses, told by the pattern of its line. */
    public enum Loss {
        /** Up to 3 %. */
        SMALL,
        /** Up to 8 %. */
        SOME,
        /** More than that. */
        LARGE,
        /** Nobody knows: there is no value. */
        UNKNOWN
    }

    /**
     * A node.
     *
     * @param x left edge
     * @param y upper edge
     * @param title its id, cut where it is too long
     * @param figures volts and watts, or why there are none
     * @param reserve share left, NaN where the word means nothing or there is no value
     * @param level the worst finding on it or on its run; empty where there is none
     */
    public record Card(
            Table table,
            String id,
            Shape shape,
            double x,
            double y,
            double width,
            double height,
            String title,
            String figures,
            double reserve,
            Optional<Level> level) {
        /** True where a point is on the card. */
        public boolean holds(double px, double py) {
            return px >= x && px <= x + width && py >= y && py <= y + height;
        }
    }

    /**
     * A run: from a card's right edge to another's left one, in right angles.
     *
     * @param startX right edge of the card it leaves
     * @param startY middle of that card
     * @param partX where it turns
     * @param endX left edge of the card it feeds
     * @param endY middle of that card
     * @param label length and gauge
     * @param thick width of the line, by amps
     */
    public record Wire(
            String id,
            double startX,
            double startY,
            double partX,
            double endX,
            double endY,
            String label,
            double thick,
            Loss loss,
            Optional<Level> level) {
        /** Places across of its four corners. */
        public double[] xs() {
            return new double[] {startX, partX, partX, endX};
        }

        /** Places down of its four corners. */
        public double[] ys() {
            return new double[] {startY, startY, endY, endY};
        }

        /** True where a point is on the stretch that no other run shares, or nearly so. */
        public boolean near(double px, double py, double within) {
            return px >= partX - within && px <= endX + within && Math.abs(py - endY) <= within;
        }
    }

    /** Lays out a plan by the values of one moment. */
    public static Diagram of(Still still, Optional<Review> review) {
        return new Arrangement(still, review).diagram();
    }

    /** The card at a point. */
    public Optional<Card> cardAt(double x, double y) {
        return cards.stream().filter(card -> card.holds(x, y)).findFirst();
    }

    /** The run at a point. */
    public Optional<Wire> wireAt(double x, double y, double within) {
        return wires.stream().filter(wire -> wire.near(x, y, within)).findFirst();
    }
}
