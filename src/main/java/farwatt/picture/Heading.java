package farwatt.picture;

import farwatt.engine.Still;
import farwatt.report.Messages;
import farwatt.review.Review;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What stands above a picture of a plan.
 *
 * @param title the plan's name and the scenario
 * @param verdict the review's sentence, "" without one
 * @param mark the sentence's mark
 * @param figures one sentence that says under which circumstances the figures hold
 * @param date printed as it is handed in
 */
public record Heading(String title, String verdict, Optional<Mark> mark, String figures, Optional<LocalDate> date) {
    private static final double TITLE = 22;
    private static final double VERDICT = 13.5;
    private static final double SMALL = 11.5;
    private static final double SHAPE = 15;

    /** The heading of a plan in the corner looked at. */
    public static Heading of(
            Still still, Optional<Review> review, Optional<String> scenario, Optional<LocalDate> date) {
        String name =
                still.plan().name().isEmpty() ? "Plan" : Fit.plain(still.plan().name());
        return new Heading(
                WireMaker.join(name, Fit.plain(scenario.orElse(""))),
                review.map(r -> Fit.plain(r.verdict().text())).orElse(""),
                review.map(r -> r.verdict().holds() ? Mark.HOLDS : Mark.FAILS),
                Messages.text(PictureCode.FIGURES, still.corner().phrase()),
                date);
    }

    Sheet sheet(double width) {
        Sheet sheet = new Sheet();
        double y = TITLE;
        for (String line : Fit.wrap(title, TITLE, Weight.BOLD, width)) {
            sheet.add(new Words(line, 0, y, TITLE, Anchor.START, Ink.TEXT, Weight.BOLD, width));
            y += TITLE * 1.25;
        }
        y += 2;
        double indent = mark.isPresent() ? SHAPE + 8 : 0;
        double first = y;
        mark.ifPresent(m -> sheet.mark(m, new Box(0, first - SHAPE + 3, SHAPE, SHAPE)));
        for (String line : Fit.wrap(verdict, VERDICT, Weight.BOLD, width - indent)) {
            Ink ink = mark.map(Mark::ink).orElse(Ink.TEXT);
            sheet.add(new Words(line, indent, y, VERDICT, Anchor.START, ink, Weight.BOLD, width - indent));
            y += VERDICT * 1.4;
        }
        String small = WireMaker.join(figures, date.map(LocalDate::toString).orElse(""));
        for (String line : Fit.wrap(small, SMALL, Weight.PLAIN, width)) {
            sheet.add(new Words(line, 0, y, SMALL, Anchor.START, Ink.QUIET, Weight.PLAIN, width));
            y += SMALL * 1.4;
        }
        return sheet;
    }
}
