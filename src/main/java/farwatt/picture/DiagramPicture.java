package farwatt.picture;

import farwatt.report.Messages;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;

/** The single-line diagram as a picture of its own, with a heading above and a key below. */
public final class DiagramPicture implements Picture {
    private static final double MARGIN = 32;
    private static final double NARROWEST = 860;
    private static final double GAP = 26;

    private final Diagram diagram;
    private final Palette palette;
    private final Sheet heading;
    private final Sheet key;
    private final double width;
    private final String title;
    private final String description;

    /**
     * @param diagram what to draw
     * @param heading what stands above it
     * @param palette its colours
     */
    public DiagramPicture(Diagram diagram, Heading heading, Palette palette) {
        this.diagram = diagram;
        this.palette = palette;
        title = heading.title();
        width = Math.ceil(Math.max(NARROWEST, diagram.width() + 2 * MARGIN));
        this.heading = heading.sheet(width - 2 * MARGIN);
        key = Key.sheet(diagram, width - 2 * MARGIN);
        description = describe(heading);
    }

    private String describe(Heading heading) {
        List<String> parts = new ArrayList<>(List.of(heading.verdict(), heading.figures()));
        if (diagram.cards().isEmpty()) {
            parts.add(Messages.text(PictureCode.NOTHING));
        }
        diagram.cards().forEach(card -> parts.add(card.said()));
        diagram.wires().forEach(wire -> parts.add(wire.said()));
        parts.add(Messages.text(PictureCode.CAUTION));
        parts.removeIf(String::isEmpty);
        return String.join("\n", parts);
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return Math.ceil(top() + diagram.height() + GAP + key.height() + MARGIN);
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public String description() {
        return description;
    }

    private double top() {
        return MARGIN + heading.height() + GAP;
    }

    @Override
    public List<Tip> tips() {
        List<Tip> tips = new ArrayList<>();
        for (Wire wire : diagram.wires()) {
            for (int i = 1; i < wire.points().size(); i++) {
                tips.add(new Tip(moved(Box.around(wire.points().subList(i - 1, i + 1), 3)), wire.said()));
            }
        }
        diagram.cards().forEach(card -> tips.add(new Tip(moved(card.box()), card.said())));
        return tips;
    }

    private Box moved(Box box) {
        return new Box(box.x() + MARGIN, box.y() + top(), box.width(), box.height());
    }

    @Override
    public void paint(Graphics2D surface) {
        AffineTransform before = surface.getTransform();
        Brush brush = new Brush(surface, palette);
        brush.fill(new Box(0, 0, width, height()), Ink.PAPER);
        surface.translate(MARGIN, MARGIN);
        heading.paint(brush);
        surface.translate(0, heading.height() + GAP);
        DiagramPainter.paint(brush, diagram);
        surface.translate(0, diagram.height() + GAP);
        key.paint(brush);
        surface.setTransform(before);
    }
}
