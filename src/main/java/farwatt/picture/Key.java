package farwatt.picture;

import farwatt.quantity.Show;
import farwatt.report.Messages;
import java.util.List;
import java.util.stream.Collectors;

/** What the lines and shapes of a diagram mean, and what always has to be said. */
final class Key {
    private static final double SIZE = 11;
    private static final double LINE = 20;
    private static final double SAMPLE = 44;
    private static final double APART = 18;
    private static final double SHAPE = 12;
    private static final double HEAD = 118;
    private static final double[] AMPS = {0.1, 0.5, 1, 2};

    private final Sheet sheet = new Sheet();
    private final double width;
    private double x;
    private double y = SIZE + 8;

    private Key(double width) {
        this.width = width;
    }

    static Sheet sheet(Diagram diagram, double width) {
        Key key = new Key(width);
        key.sheet.line(List.of(new Point(0, 0), new Point(width, 0)), Ink.TRACK, 1, List.of());
        if (diagram.cards().isEmpty()) {
            key.sentence(Messages.text(PictureCode.NOTHING));
        } else {
            key.amps();
            key.losses();
            key.marks(diagram);
        }
        if (!diagram.undrawn().isEmpty()) {
            String ids = diagram.undrawn().stream().map(Fit::plain).collect(Collectors.joining(", "));
            key.sentence(Messages.text(PictureCode.UNDRAWN, ids));
        }
        key.sentence(Messages.text(PictureCode.CAUTION));
        return key.sheet;
    }

    private void head(String text) {
        x = HEAD;
        sheet.add(new Words(text, 0, y, SIZE, Anchor.START, Ink.QUIET, Weight.PLAIN, HEAD - 8));
    }

    private void text(String text) {
        double wide = Fit.width(text, SIZE, Weight.PLAIN);
        sheet.add(new Words(text, x, y, SIZE, Anchor.START, Ink.TEXT, Weight.PLAIN, wide));
        x += wide + APART;
    }

    private void sample(double thick, Pattern pattern) {
        double middle = y - SIZE * 0.35;
        sheet.line(List.of(new Point(x, middle), new Point(x + SAMPLE, middle)), Ink.RUN, thick, pattern.dashes());
        x += SAMPLE + 6;
    }

    private void amps() {
        head("Width, amps");
        for (double amps : AMPS) {
            sample(Wire.width(amps), Pattern.SOLID);
            text(Show.number(amps, 2) + " A");
        }
        y += LINE;
    }

    private void losses() {
        head("Gaps, volts lost");
        for (Pattern pattern : Pattern.values()) {
            sample(2.4, pattern);
            text(pattern.words());
        }
        y += LINE;
    }

    private void marks(Diagram diagram) {
        head("Marks");
        for (Mark mark : Mark.values()) {
            if (diagram.cards().stream().anyMatch(card -> card.mark() == mark)) {
                sheet.mark(mark, new Box(x, y - SHAPE + 2, SHAPE, SHAPE));
                x += SHAPE + 6;
                text(mark.word());
            }
        }
        text("The bar is what is left of a node's watts, or of a device's volts above its floor.");
        y += LINE;
    }

    private void sentence(String text) {
        for (String line : Fit.wrap(text, SIZE, Weight.PLAIN, width)) {
            sheet.add(new Words(line, 0, y, SIZE, Anchor.START, Ink.QUIET, Weight.PLAIN, width));
            y += SIZE * 1.4;
        }
        y += 4;
    }
}
