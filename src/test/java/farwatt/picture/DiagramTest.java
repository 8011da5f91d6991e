package farwatt.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;

class DiagramTest {
    /** A source, some switches in a row or in a bush, and devices anywhere below. */
    private static Plan tree(int nodes, Random random) {
        Plan plan = Plan.EMPTY.and(Table.SOURCES, Row.of("feed"));
        int switches = 0;
        for (int i = 1; i < nodes; i++) {
            boolean edge = random.nextInt(4) == 0;
            String from = switches == 0 || random.nextInt(3) == 0 ? "feed" : "edge " + (1 + random.nextInt(switches));
            String id = edge ? "edge " + ++switches : "cam <" + i + "> & \"more\"";
            from = from.equals(id) ? "feed" : from;
            plan = plan.and(edge ? Table.SWITCHES : Table.DEVICES, Row.of(id));
            plan = plan.and(
                    Table.RUNS,
                    Row.of("run " + i).with("from", from).with("to", id).with("length", "12 m"));
        }
        return plan;
    }

    private static Diagram of(Plan plan) {
        return Diagram.of(Calculation.of(plan).still(), Optional.empty());
    }

    @Test
    void noCardLiesOnAnotherAndNoLineCrossesOne() {
        long seed = 5L;
        Random random = new Random(seed);
        for (int nodes : new int[] {1, 2, 3, 24, 60, 500}) {
            Diagram diagram = of(tree(nodes, random));
            String what = "seed " + seed + ", " + nodes + " nodes";
            assertEquals(nodes, diagram.cards().size(), what);
            assertEquals(nodes - 1, diagram.wires().size(), what);
            List<Diagram.Card> cards = diagram.cards();
            for (Diagram.Card a : cards) {
                assertTrue(a.x() + a.width() <= diagram.width() && a.y() + a.height() <= diagram.height(), what);
                for (Diagram.Card b : cards) {
                    boolean apart = a.id().equals(b.id())
                            || a.x() + a.width() < b.x()
                            || b.x() + b.width() < a.x()
                            || a.y() + a.height() < b.y()
                            || b.y() + b.height() < a.y();
                    assertTrue(apart, what + ": " + a + " and " + b);
                }
                for (Diagram.Wire wire : diagram.wires()) {
                    double low = Math.min(wire.startY(), wire.endY());
                    double high = Math.max(wire.startY(), wire.endY());
                    boolean upright = wire.partX() > a.x()
                            && wire.partX() < a.x() + a.width()
                            && high > a.y()
                            && low < a.y() + a.height();
                    assertFalse(upright, what + ": " + wire.id() + " through " + a.id());
                }
            }
        }
    }

    @Test
    void aRingAndAPlanWithNothingInItAreDrawnToo() {
        assertEquals(0, of(Plan.EMPTY).cards().size());
        Plan ring = Plan.EMPTY
                .and(Table.SWITCHES, Row.of("a"))
                .and(Table.SWITCHES, Row.of("b"))
                .and(Table.RUNS, Row.of("one").with("from", "a").with("to", "b"))
                .and(Table.RUNS, Row.of("two").with("from", "b").with("to", "a"));
        assertEquals(2, of(ring).cards().size());
    }

    @Test
    void filesAreWellFormedAndNotBlank() throws Exception {
        Picture picture = Picture.of(of(tree(24, new Random(6))), "Landing <1> & \u0001 more");
        byte[] svg = picture.svg(Palette.LIGHT);
        String text = new String(svg, StandardCharsets.UTF_8);
        var builder = DocumentBuilderFactory.newDefaultInstance();
        builder.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        builder.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        assertTrue(text.contains("feed"), text);
        var image = ImageIO.read(new ByteArrayInputStream(picture.png(Palette.DARK)));
        int paper = 0xff000000 | Palette.DARK.rgb(Pen.Ink.PAPER);
        int inked = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            inked += image.getRGB(x, image.getHeight() / 2) == paper ? 0 : 1;
        }
        assertTrue(inked > 20, "blank");
    }

    @Test
    void anotherEndingIsRefusedInOneSentence() {
        Picture picture = Picture.of(of(Plan.EMPTY.and(Table.SOURCES, Row.of("feed"))), "one");
        Refusal refusal = assertThrows(Refusal.class, () -> picture.write(Path.of("one.jpeg"), Palette.LIGHT));
        assertEquals("picture.ending", refusal.notice().code());
    }

    @Test
    void everyInkCanBeReadOnPaperAndCards() {
        for (Palette palette : Palette.values()) {
            for (Pen.Ink ink : List.of(Pen.Ink.INK, Pen.Ink.QUIET, Pen.Ink.FAIL, Pen.Ink.WARN, Pen.Ink.GOOD)) {
                for (Pen.Ink under : List.of(Pen.Ink.PAPER, Pen.Ink.CARD)) {
                    double contrast = contrast(palette.rgb(ink), palette.rgb(under));
                    assertTrue(contrast >= 4.5, palette + " " + ink + " on " + under + ": " + contrast);
                }
            }
        }
    }

    /** Ratio of relative luminances as WCAG 2 has it. */
    private static double contrast(int a, int b) {
        double one = light(a) + 0.05;
        double other = light(b) + 0.05;
        return Math.max(one, other) / Math.min(one, other);
    }

    private static double light(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xff) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
