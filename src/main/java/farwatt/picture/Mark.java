package farwatt.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * What is said of a node at a glance: a shape and a word, so that the colour only repeats what can be read. Shapes
 * stand in a square of side 1.
 */
public enum Mark {
    /** Judged, and nothing to say. */
    HOLDS("holds", Ink.GOOD, round(), List.of(line(0.28, 0.53, 0.44, 0.69, 0.73, 0.34))),
    /** Not judged; it has power. */
    ON("has power", Ink.GOOD, round(), List.of(line(0.5, 0.28, 0.5, 0.72))),
    /** Holds, but someone should look. */
    LOOK(
            "look",
            Ink.LOOK,
            line(0.5, 0.02, 1, 0.95, 0, 0.95),
            List.of(line(0.5, 0.36, 0.5, 0.64), line(0.5, 0.75, 0.5, 0.83))),
    /** Something fails. */
    FAILS(
            "fails",
            Ink.BAD,
            line(0.5, -0.04, 1.04, 0.5, 0.5, 1.04, -0.04, 0.5),
            List.of(line(0.34, 0.34, 0.66, 0.66), line(0.66, 0.34, 0.34, 0.66))),
    /** Its port gives it no power. */
    DARK("dark", Ink.DARK, line(0.05, 0.05, 0.95, 0.05, 0.95, 0.95, 0.05, 0.95), List.of(line(0.25, 0.5, 0.75, 0.5))),
    /** There are no figures to judge. */
    UNKNOWN(
            "no figures",
            Ink.QUIET,
            line(0.25, 0.02, 0.75, 0.02, 1, 0.5, 0.75, 0.98, 0.25, 0.98, 0, 0.5),
            List.of(line(0.36, 0.36, 0.5, 0.24, 0.64, 0.36, 0.5, 0.52, 0.5, 0.6), line(0.5, 0.72, 0.5, 0.8)));

    private final String word;
    private final Ink ink;

    @SuppressWarnings("ImmutableEnumChecker") // made once, never changed
    private final List<Point> outline;

    @SuppressWarnings("ImmutableEnumChecker") // made once, never changed
    private final List<List<Point>> sign;

    Mark(String word, Ink ink, List<Point> outline, List<List<Point>> sign) {
        this.word = word;
        this.ink = ink;
        this.outline = outline;
        this.sign = sign;
    }

    public String word() {
        return word;
    }

    public Ink ink() {
        return ink;
    }

    /** The filled shape, closed. */
    public List<Point> outline() {
        return outline;
    }

    /** Strokes upon the shape, in the card's colour. */
    public List<List<Point>> sign() {
        return sign;
    }

    private static List<Point> line(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return List.copyOf(points);
    }

    private static List<Point> round() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double angle = 2 * Math.PI * i / 24;
            points.add(new Point(0.5 + 0.5 * Math.cos(angle), 0.5 + 0.5 * Math.sin(angle)));
        }
        return List.copyOf(points);
    }
}
