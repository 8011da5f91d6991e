package farwatt.picture;

import farwatt.report.Messages;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.function.Consumer;

/** The margins, caption and closing line around the picture of a study. */
final class Frame {
    static final double MARGIN = 28;
    /** Where there is little room. */
    static final double NARROW = 10;

    private static final double GAP = 18;
    private static final double SMALL = 11;

    private final double inner;
    private final double body;
    private final double margin;
    private final double gap;
    private final Sheet caption;
    private final Palette palette;

    /**
     * @param inner width of what is framed
     * @param body its height
     */
    Frame(Caption caption, double inner, double body, Palette palette) {
        this(caption, inner, body, MARGIN, palette);
    }

    /** @param margin of paper on every side; {@link #NARROW} where there is little room */
    Frame(Caption caption, double inner, double body, double margin, Palette palette) {
        this.inner = inner;
        this.body = body;
        this.margin = margin;
        this.gap = Math.min(GAP, margin);
        this.palette = palette;
        this.caption = (margin < MARGIN ? caption.untitled() : caption).sheet(inner);
    }

    double width() {
        return Math.ceil(inner + 2 * margin);
    }

    double height() {
        return Math.ceil(top() + body + gap + SMALL + margin);
    }

    private double top() {
        return Math.ceil(margin + (caption.height() > 0 ? caption.height() + gap : 0));
    }

    /** Height of all but the body. */
    static double around(Caption caption, double width, double margin) {
        Frame empty = new Frame(caption, width - 2 * margin, 0, margin, Palette.LIGHT);
        return empty.height();
    }

    Box moved(Box box) {
        return new Box(box.x() + margin, box.y() + top(), box.width(), box.height());
    }

    void paint(Graphics2D surface, Consumer<Brush> picture) {
        AffineTransform before = surface.getTransform();
        Brush brush = new Brush(surface, palette);
        brush.fill(new Box(0, 0, width(), height()), Ink.PAPER);
        surface.translate(margin, margin);
        caption.paint(brush);
        surface.translate(0, top() - margin);
        picture.accept(brush);
        brush.write(new Words(
                Messages.text(PictureCode.CAUTION),
                0,
                body + gap + SMALL * 0.8,
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
