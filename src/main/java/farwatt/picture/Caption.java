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

    /** Without its title, for where the axes have to say it all. */
    Caption untitled() {
        return new Caption("", below);
    }

    Sheet sheet(double width) {
        Sheet sheet = new Sheet();
        double y = title.isBlank() ? SMALL : TITLE;
        for (String line : lines(title, TITLE, Weight.BOLD, width)) {
            sheet.add(new Words(line, 0, y, TITLE, Anchor.START, Ink.TEXT, Weight.BOLD, width));
            y += TITLE * 1.25;
        }
        for (String line : lines(below, SMALL, Weight.PLAIN, width)) {
            sheet.add(new Words(line, 0, y, SMALL, Anchor.START, Ink.QUIET, Weight.PLAIN, width));
            y += SMALL * 1.4;
        }
        return sheet;
    }

    private static List<String> lines(String text, double size, Weight weight, double width) {
        return text.isBlank() ? List.of() : Fit.wrap(Fit.plain(text), size, weight, width);
    }
}
