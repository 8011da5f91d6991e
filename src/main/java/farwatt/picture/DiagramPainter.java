package farwatt.picture;

import java.util.List;

/** Draws a diagram's layout: lines first, so that cards lie upon them. */
final class DiagramPainter {
    private DiagramPainter() {}

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
