package farwatt.picture;

import java.awt.Graphics2D;
import java.util.List;
import java.util.function.Predicate;

/** Draws a diagram's layout: lines first, so that cards lie upon them. */
public final class DiagramPainter {
    private static final double AROUND = 5;
    /** Scale from which the words of a card can be read. */
    private static final double NEAR = 0.7;
    /** Size in pixels of letters that can be read. */
    private static final double READABLE = 11;

    private DiagramPainter() {}

    /**
     * Draws the part of a diagram that can be seen, on its paper.
     *
     * @param surface in units of the diagram
     * @param scale pixels that a unit takes; where they are few, cards say only who they are and how they stand
     * @param seen the part
     * @param chosen ids of rows that get a frame
     */
    public static void paint(
            Graphics2D surface, double scale, Palette palette, Diagram diagram, Box seen, Predicate<String> chosen) {
        Brush brush = new Brush(surface, palette);
        brush.fill(seen, Ink.PAPER);
        List<Card> cards =
                diagram.cards().stream().filter(c -> c.box().overlaps(seen)).toList();
        List<Wire> wires = diagram.wires().stream().filter(w -> w.isIn(seen)).toList();
        List<Rail> rails =
                diagram.rails().stream().filter(r -> r.reach().overlaps(seen)).toList();
        lines(brush, wires, rails);
        if (scale < NEAR) {
            cards.forEach(card -> afar(brush, card, scale));
        } else {
            words(brush, wires, cards);
        }
        cards.stream()
                .filter(card -> chosen.test(card.id()))
                .forEach(card -> brush.edge(grown(card.box()), Ink.RUN, 2.5));
        wires.stream()
                .filter(wire -> chosen.test(wire.run()))
                .forEach(wire -> brush.edge(grown(wire.reach()), Ink.RUN, 2.5));
    }

    private static Box grown(Box box) {
        return new Box(box.x() - AROUND, box.y() - AROUND, box.width() + 2 * AROUND, box.height() + 2 * AROUND);
    }

    static void paint(Brush brush, Diagram diagram) {
        lines(brush, diagram.wires(), diagram.rails());
        words(brush, diagram.wires(), diagram.cards());
    }

    private static void lines(Brush brush, List<Wire> wires, List<Rail> rails) {
        for (Wire wire : wires) {
            brush.line(wire.points(), Ink.RUN, wire.width(), wire.pattern().dashes());
        }
        for (Rail rail : rails) {
            brush.line(rail.stub(), Ink.BAND, Rail.WIDTH, List.of());
            brush.line(rail.bar(), Ink.BAND, Rail.WIDTH, List.of());
        }
    }

    private static void words(Brush brush, List<Wire> wires, List<Card> cards) {
        wires.forEach(wire -> wire.words().forEach(brush::write));
        cards.forEach(card -> paint(brush, card));
    }

    private static void ground(Brush brush, Card card) {
        Box box = card.box();
        brush.fill(box, Ink.CARD);
        brush.fill(new Box(box.x(), box.y(), card.role().band(), box.height()), Ink.BAND);
        brush.edge(box, Ink.EDGE, 1);
    }

    /** A card too small for its words: its mark and its id, as large as it allows. */
    private static void afar(Brush brush, Card card, double scale) {
        ground(brush, card);
        Box box = card.box();
        double size = Math.min(READABLE / scale, box.height() * 0.62);
        double left = box.x() + card.role().band() + AROUND;
        brush.mark(card.mark(), new Box(left, box.y() + (box.height() - size) / 2, size, size), Ink.CARD);
        double start = left + size + 2 * AROUND;
        double room = box.right() - AROUND - start;
        String id = Fit.trim(Fit.plain(card.id()), size, Weight.PLAIN, room);
        double base = box.y() + box.height() / 2 + size * 0.36;
        brush.write(new Words(id, start, base, size, Anchor.START, Ink.TEXT, Weight.PLAIN, room));
    }

    private static void paint(Brush brush, Card card) {
        ground(brush, card);
        brush.mark(card.mark(), card.markBox(), Ink.CARD);
        card.bar().ifPresent(bar -> paint(brush, bar));
        card.words().forEach(brush::write);
    }

    private static void paint(Brush brush, Bar bar) {
        Box track = bar.track();
        brush.fill(track, Ink.TRACK);
        brush.fill(new Box(track.x(), track.y(), track.width() * bar.filled(), track.height()), bar.ink());
        brush.edge(track, Ink.EDGE, 0.75);
    }
}
