package farwatt.window.diagram;

import farwatt.picture.Palette;
import farwatt.picture.Pen;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/** Draws on the window's canvas. */
final class CanvasPen implements Pen {
    private final GraphicsContext canvas;
    private final Palette palette;

    CanvasPen(GraphicsContext canvas, Palette palette) {
        this.canvas = canvas;
        this.palette = palette;
        canvas.setLineCap(StrokeLineCap.BUTT);
        canvas.setLineJoin(StrokeLineJoin.MITER);
    }

    private Color color(Ink ink) {
        int rgb = palette.rgb(ink);
        return Color.rgb(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }

    @Override
    public void line(double[] xs, double[] ys, double thick, double[] dashes, Ink ink) {
        canvas.setStroke(color(ink));
        canvas.setLineWidth(thick);
        canvas.setLineDashes(dashes);
        canvas.strokePolyline(xs, ys, xs.length);
    }

    @Override
    public void area(double[] xs, double[] ys, Ink ink) {
        canvas.setFill(color(ink));
        canvas.fillPolygon(xs, ys, xs.length);
    }

    @Override
    public void text(String text, double x, double y, double size, Weight weight, Ink ink) {
        FontWeight heavy = weight == Weight.BOLD ? FontWeight.BOLD : FontWeight.NORMAL;
        canvas.setFont(Font.font("System", heavy, size));
        canvas.setFill(color(ink));
        canvas.fillText(text, x, y);
    }
}
