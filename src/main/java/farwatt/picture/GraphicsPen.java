package farwatt.picture;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;

/** Draws on what Java draws on. */
final class GraphicsPen implements Pen {
    private final Graphics2D graphics;
    private final Palette palette;

    GraphicsPen(Graphics2D graphics, Palette palette) {
        this.graphics = graphics;
        this.palette = palette;
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    @Override
    public void line(double[] xs, double[] ys, double thick, double[] dashes, Ink ink) {
        float[] pattern = new float[dashes.length];
        for (int i = 0; i < dashes.length; i++) {
            pattern[i] = (float) dashes[i];
        }
        graphics.setStroke(new BasicStroke(
                (float) thick,
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                pattern.length == 0 ? null : pattern,
                0));
        graphics.setColor(palette.color(ink));
        graphics.draw(path(xs, ys));
    }

    @Override
    public void area(double[] xs, double[] ys, Ink ink) {
        Path2D path = path(xs, ys);
        path.closePath();
        graphics.setColor(palette.color(ink));
        graphics.fill(path);
    }

    private static Path2D path(double[] xs, double[] ys) {
        Path2D path = new Path2D.Double();
        path.moveTo(xs[0], ys[0]);
        for (int i = 1; i < xs.length; i++) {
            path.lineTo(xs[i], ys[i]);
        }
        return path;
    }

    @Override
    public void text(String text, double x, double y, double size, Weight weight, Ink ink) {
        Font font = new Font(Font.SANS_SERIF, weight == Weight.BOLD ? Font.BOLD : Font.PLAIN, 1);
        graphics.setFont(font.deriveFont((float) size));
        graphics.setColor(palette.color(ink));
        graphics.drawString(text, (float) x, (float) y);
    }
}
