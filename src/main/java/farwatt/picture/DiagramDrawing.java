package farwatt.picture;

import farwatt.report.Level;
import java.util.Optional;

/** Draws a diagram with any pen. */
public final class DiagramDrawing {
    private static final double[] UNBROKEN = {};
    private static final double CUT = 10;
    private static final double BAR = 4;
    private static final double TITLE = 12;
    private static final double FIGURES = 10.5;
    private static final double LABEL = 9.5;

    private DiagramDrawing() {}

    /** Draws all of it. */
    public static void draw(Diagram diagram, Pen pen) {
        diagram.wires().forEach(wire -> wire(wire, pen));
        diagram.cards().forEach(card -> card(card, pen));
    }

    /** Draws a run: the more amps the wider, the more volts lost the more broken. */
    public static void wire(Diagram.Wire wire, Pen pen) {
        pen.line(wire.xs(), wire.ys(), wire.thick(), dashes(wire), ink(wire.level(), Pen.Ink.INK));
        String mark = wire.level().map(level -> word(level) + " ").orElse("");
        double y = wire.endY() - wire.thick() / 2 - 3;
        pen.text(mark + wire.label(), wire.partX() + 6, y, LABEL, Pen.Weight.PLAIN, ink(wire.level(), Pen.Ink.QUIET));
    }

    private static double[] dashes(Diagram.Wire wire) {
        double t = wire.thick();
        return switch (wire.loss()) {
            case SMALL -> UNBROKEN;
            case SOME -> new double[] {10 + t, 4 + t};
            case LARGE -> new double[] {5 + t, 4 + t};
            case UNKNOWN -> new double[] {1.5, 4};
        };
    }

    /** Draws a node: sources square, switches with a cut corner, devices with a point to the left. */
    public static void card(Diagram.Card card, Pen pen) {
        double[] xs = outlineX(card);
        double[] ys = outlineY(card);
        pen.area(xs, ys, Pen.Ink.CARD);
        Pen.Ink edge = ink(card.level(), Pen.Ink.INK);
        double thick = card.level().isPresent() ? 2.2 : 1;
        pen.line(closed(xs), closed(ys), thick, UNBROKEN, edge);
        double left = card.x() + CUT + 2;
        pen.text(card.title(), left, card.y() + 14, TITLE, Pen.Weight.BOLD, Pen.Ink.INK);
        String mark = card.level().map(level -> word(level) + ": ").orElse("");
        pen.text(mark + card.figures(), left, card.y() + 28, FIGURES, Pen.Weight.PLAIN, edge);
        if (card.shape() == Diagram.Shape.SOURCE) {
            double x = card.x();
            pen.area(
                    new double[] {x, x + 6, x + 6, x},
                    new double[] {card.y(), card.y(), card.y() + card.height(), card.y() + card.height()},
                    Pen.Ink.MARK);
        }
        if (!Double.isNaN(card.reserve())) {
            reserve(card, pen);
        }
    }

    private static void reserve(Diagram.Card card, Pen pen) {
        double left = card.x() + CUT + 2;
        double width = card.width() - 2 * CUT - 4;
        double top = card.y() + card.height() - BAR - 6;
        double share = Math.max(0, Math.min(1, card.reserve()));
        double end = left + width * share;
        double[] ys = {top, top, top + BAR, top + BAR};
        if (share > 0) {
            pen.area(new double[] {left, end, end, left}, ys, Pen.Ink.MARK);
        }
        double right = left + width;
        pen.line(
                new double[] {left, right, right, left, left},
                new double[] {top, top, top + BAR, top + BAR, top},
                0.7,
                UNBROKEN,
                Pen.Ink.QUIET);
    }

    private static double[] outlineX(Diagram.Card card) {
        double l = card.x();
        double r = l + card.width();
        return switch (card.shape()) {
            case SOURCE -> new double[] {l, r, r, l};
            case SWITCH -> new double[] {l, r - CUT, r, r, l};
            case DEVICE -> new double[] {l, l + CUT * 0.7, r, r, l + CUT * 0.7};
        };
    }

    private static double[] outlineY(Diagram.Card card) {
        double t = card.y();
        double b = t + card.height();
        return switch (card.shape()) {
            case SOURCE -> new double[] {t, t, b, b};
            case SWITCH -> new double[] {t, t, t + CUT, b, b};
            case DEVICE -> new double[] {(t + b) / 2, t, t, b, b};
        };
    }

    private static double[] closed(double[] open) {
        double[] all = java.util.Arrays.copyOf(open, open.length + 1);
        all[open.length] = open[0];
        return all;
    }

    private static Pen.Ink ink(Optional<Level> level, Pen.Ink otherwise) {
        return level.map(l -> l == Level.FAIL ? Pen.Ink.FAIL : Pen.Ink.WARN).orElse(otherwise);
    }

    private static String word(Level level) {
        return level == Level.FAIL ? "✖ fails" : "▲ mind";
    }
}
