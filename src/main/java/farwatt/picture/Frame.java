package farwatt.picture;

import farwatt.report.Messages;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.function.Consumer;

/** The margins, caption and closing line around the picture of a study. */
final class Frame {
    static final double MARGIN = 28;
    private static final double GAP = 18;
    private static final double SMALL = 11;

    private final double inner;
    private final double body;
    private final Sheet caption;
    private final Palette palette;

    /**
     * @param inner width of what is framed
     * @param body its height
     */
    Frame(Caption caption, double inner, double body, Palette palette) {
        this.inner = inner;
        this.body = body;
        this.palette = palette;
        this.caption = caption.sheet(inner);
    }

    double width() {
        return Math.ceil(inner + 2 * MARGIN);
    }

    double height() {
        return Math.ceil(top() + body + GAP + SMALL + MARGIN);
    }

    private double top() {
        return Math.ceil(MARGIN + caption.height() + GAP);
    }

    Box moved(Box box) {
        return new Box(box.x() + MARGIN, box.y() + top(), box.width(), box.height());
    }

    void paint(Graphics2D surface, Consumer<Brush> picture) {
        AffineTransform before = surface.getTransform();
        Brush brush = new Brush(surface, palette);
        brush.fill(new Box(0, 0, width(), height()), Ink.PAPER);
        surface.translate(MARGIN, MARGIN);
        caption.paint(brush);
        surface.translate(0, top() - MARGIN);
        picture.accept(brush);
        brush.write(new Words(
                Messages.text(PictureCode.CAUTION),
                0,
                body + GAP + SMALL * 0.8,
                SMALL,
                Anchor.START,
                Ink.QUIET,
                Weight.PLAIN,
                inner));
        surface.setTransform(before);
    }

    static String described(List<String> lines) {
        return String.join("\n", lines.stream().filter(line -> !line.isBlank()).toList());
    }
}
