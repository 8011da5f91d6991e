package farwatt.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws the parts of a layout on a surface in the colours of a palette. */
final class Brush {
    private static final FontRenderContext CONTEXT = new FontRenderContext(new AffineTransform(), true, true);

    private final Graphics2D surface;
    private final Palette palette;

    Brush(Graphics2D surface, Palette palette) {
        this.surface = surface;
        this.palette = palette;
        surface.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        surface.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        surface.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        surface.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    static Font font(double size, Weight weight) {
        return new Font(Font.SANS_SERIF, weight == Weight.BOLD ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) size);
    }

    Color colour(Ink ink) {
        return new Color(palette.rgb(ink));
    }

    void fill(Box box, Ink ink) {
        fill(box, colour(ink));
    }

    void fill(Box box, Color colour) {
        surface.setColor(colour);
        surface.fill(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
    }

    void edge(Box box, Ink ink, double width) {
        surface.setColor(colour(ink));
        surface.setStroke(new BasicStroke((float) width));
        surface.draw(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
    }

    void line(List<Point> points, Ink ink, double width, List<Double> dashes) {
        surface.setColor(colour(ink));
        surface.setStroke(stroke(width, dashes));
        surface.draw(path(points));
    }

    void line(List<Point> points, Color colour, double width) {
        surface.setColor(colour);
        surface.setStroke(stroke(width, List.of()));
        surface.draw(path(points));
    }

    private static BasicStroke stroke(double width, List<Double> dashes) {
        if (dashes.isEmpty()) {
            return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
        }
        float[] lengths = new float[dashes.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = dashes.get(i).floatValue();
        }
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, lengths, 0);
    }

    private static Path2D path(List<Point> points) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < points.size(); i++) {
            if (i == 0) {
                path.moveTo(points.get(i).x(), points.get(i).y());
            } else {
                path.lineTo(points.get(i).x(), points.get(i).y());
            }
        }
        return path;
    }

    /** A mark's shape with its sign, in a box. */
    void mark(Mark mark, Box box, Ink ground) {
        Path2D outline = path(placed(mark.outline(), box));
        outline.closePath();
        surface.setColor(colour(mark.ink()));
        surface.fill(outline);
        for (List<Point> stroke : mark.sign()) {
            line(placed(stroke, box), ground, box.width() * 0.13, List.of());
        }
    }

    private static List<Point> placed(List<Point> points, Box box) {
        return points.stream()
                .map(p -> new Point(box.x() + p.x() * box.width(), box.y() + p.y() * box.height()))
                .toList();
    }

    void write(Words words) {
        write(words, colour(words.ink()));
    }

    /** Writes a line of text; one that is wider than its room is set narrower. */
    void write(Words words, Color colour) {
        if (words.text().isBlank()) {
            return;
        }
        Font font = font(words.size(), words.weight());
        double width = width(words.text(), font);
        double squeeze = width > words.room() ? words.room() / width : 1;
        double shift = switch (words.anchor()) {
            case START -> 0;
            case MIDDLE -> -width * squeeze / 2;
            case END -> -width * squeeze;
        };
        surface.setColor(colour);
        surface.setFont(squeeze < 1 ? font.deriveFont(AffineTransform.getScaleInstance(squeeze, 1)) : font);
        surface.drawString(words.text(), (float) (words.x() + shift), (float) words.y());
    }

    static double width(String text, Font font) {
        return font.getStringBounds(text, CONTEXT).getWidth();
    }
}
