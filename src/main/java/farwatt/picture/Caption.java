package farwatt.picture;

import java.util.List;

/**
 * What stands above the picture of a study.
 *
 * @param title one line
 * @param below what it was asked of: plan, scenario, corner, date; "" for nothing
 */
public record Caption(String title, String below) {
    private static final double TITLE = 19;
    private static final double SMALL = 12;

    /** With a text before what stands below the title already. */
    Caption under(String text) {
        return new Caption(title, StudyCharts.noted(text, List.of(below)));
    }

    Sheet sheet(double width) {
        Sheet sheet = new Sheet();
        double y = TITLE;
        for (String line : Fit.wrap(Fit.plain(title), TITLE, Weight.BOLD, width)) {
            sheet.add(new Words(line, 0, y, TITLE, Anchor.START, Ink.TEXT, Weight.BOLD, width));
            y += TITLE * 1.25;
        }
        for (String line : Fit.wrap(Fit.plain(below), SMALL, Weight.PLAIN, width)) {
            sheet.add(new Words(line, 0, y, SMALL, Anchor.START, Ink.QUIET, Weight.PLAIN, width));
            y += SMALL * 1.4;
        }
        return sheet;
    }
}
