package farwatt.picture;

import java.awt.Graphics2D;
import java.util.List;
import java.util.function.Predicate;

/** Draws a diagram's layout: lines first, so that cards lie upon them. */
public final class DiagramPainter {
    private static final double AROUND = 5;

    private DiagramPainter() {}

    /**
     * Draws the part of a diagram that can be seen, on its paper.
     *
     * @param surface in units of the diagram
     * @param seen the part
     * @param chosen ids of rows that get a frame
     */
    public static void paint(Graphics2D surface, Palette palette, Diagram diagram, Box seen, Predicate<String> chosen) {
        Brush brush = new Brush(surface, palette);
        brush.fill(seen, Ink.PAPER);
        List<Card> cards =
                diagram.cards().stream().filter(c -> c.box().overlaps(seen)).toList();
        List<Wire> wires =
                diagram.wires().stream().filter(w -> w.reach().overlaps(seen)).toList();
        List<Rail> rails =
                diagram.rails().stream().filter(r -> r.reach().overlaps(seen)).toList();
        paint(brush, new Diagram(diagram.width(), diagram.height(), cards, rails, wires, List.of()));
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
        for (Wire wire : diagram.wires()) {
            brush.line(wire.points(), Ink.RUN, wire.width(), wire.pattern().dashes());
        }
        for (Rail rail : diagram.rails()) {
            brush.line(rail.stub(), Ink.BAND, Rail.WIDTH, List.of());
            brush.line(rail.bar(), Ink.BAND, Rail.WIDTH, List.of());
        }
        for (Wire wire : diagram.wires()) {
            wire.words().forEach(brush::write);
        }
        diagram.cards().forEach(card -> paint(brush, card));
    }

    private static void paint(Brush brush, Card card) {
        Box box = card.box();
        brush.fill(box, Ink.CARD);
        brush.fill(new Box(box.x(), box.y(), card.role().band(), box.height()), Ink.BAND);
        brush.edge(box, Ink.EDGE, 1);
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
