package farwatt.picture;

import java.util.ArrayList;
import java.util.List;

/** Texts, lines and marks laid out beside a drawing: a heading or a key. */
final class Sheet {
    private record Stroke(List<Point> points, Ink ink, double width, List<Double> dashes) {}

    private record Sign(Mark mark, Box box) {}

    private record Patch(Box box, Ink ink) {}

    private final List<Words> words = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Sign> signs = new ArrayList<>();
    private final List<Patch> patches = new ArrayList<>();
    private double height;

    void add(Words line) {
        words.add(line);
        reach(line.y() + line.size() * 0.3);
    }

    void line(List<Point> points, Ink ink, double width, List<Double> dashes) {
        strokes.add(new Stroke(points, ink, width, dashes));
    }

    void mark(Mark mark, Box box) {
        signs.add(new Sign(mark, box));
        reach(box.bottom());
    }

    void fill(Box box, Ink ink) {
        patches.add(new Patch(box, ink));
    }

    void reach(double y) {
        height = Math.max(height, y);
    }

    double height() {
        return height;
    }

    void paint(Brush brush) {
        patches.forEach(p -> brush.fill(p.box(), p.ink()));
        strokes.forEach(s -> brush.line(s.points(), s.ink(), s.width(), s.dashes()));
        signs.forEach(s -> brush.mark(s.mark(), s.box(), Ink.PAPER));
        words.forEach(brush::write);
    }
}
