package farwatt.picture;

import farwatt.report.Messages;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Draws the bars of a sensitivity study: hollow for the step down, filled for the step up. */
final class SensitivityPicture implements Picture {
    private static final double NAMES = 210;
    private static final double SIDE = 130;
    private static final double PLOT = 480;
    private static final double ROW = 40;
    private static final double BAR = 13;
    private static final double SIZE = 11.5;
    private static final double TOP = 44;

    private static final double LEAST_PLOT = 120;

    private final double names;
    private final double plot;
    private final Sensitivity study;
    private final List<Sensitivity.Input> inputs;
    private final double least;
    private final double most;
    private final Frame frame;

    SensitivityPicture(Sensitivity study, Palette palette) {
        this(study, palette, NAMES, PLOT, Frame.MARGIN);
    }

    SensitivityPicture(Sensitivity study, Palette palette, Extent extent) {
        this(
                study,
                palette,
                NAMES * 0.8,
                Math.max(LEAST_PLOT, extent.width() - 2 * Frame.NARROW - NAMES * 0.8 - 2 * SIDE),
                Frame.NARROW);
    }

    private SensitivityPicture(Sensitivity study, Palette palette, double names, double plot, double margin) {
        this.study = study;
        this.names = names;
        this.plot = plot;
        inputs = study.ordered();
        double[] all = inputs.stream()
                .flatMapToDouble(i -> DoubleStream.of(i.below(), i.above()))
                .filter(Double::isFinite)
                .toArray();
        double base = study.base();
        least = DoubleStream.concat(DoubleStream.of(base), DoubleStream.of(all))
                .min()
                .orElse(base);
        most = DoubleStream.concat(DoubleStream.of(base), DoubleStream.of(all))
                .max()
                .orElse(base);
        double body = TOP + Math.max(1, inputs.size()) * ROW;
        frame = new Frame(study.caption(), names + plot + 2 * SIDE, body, margin, palette);
    }

    @Override
    public double width() {
        return frame.width();
    }

    @Override
    public double height() {
        return frame.height();
    }

    @Override
    public String title() {
        return study.caption().title();
    }

    @Override
    public String description() {
        List<String> lines = new ArrayList<>();
        lines.add(study.of().label() + " as it is: " + study.of().text(study.base()) + ".");
        inputs.forEach(input -> lines.add(said(input) + "."));
        return Frame.described(lines);
    }

    private String said(Sensitivity.Input input) {
        return Fit.plain(input.name()) + ": " + Fit.plain(input.lower()) + " gives "
                + study.of().text(input.below()) + ", " + Fit.plain(input.upper()) + " gives "
                + study.of().text(input.above());
    }

    /** Two for each input: its step down, its step up. */
    @Override
    public List<Tip> tips() {
        List<Tip> tips = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            double wide = names + 2 * SIDE + plot;
            Box down = new Box(0, TOP + i * ROW, wide, ROW / 2);
            Box up = new Box(0, TOP + (i + 0.5) * ROW, wide, ROW / 2);
            tips.add(new Tip(frame.moved(down), said(inputs.get(i))));
            tips.add(new Tip(frame.moved(up), said(inputs.get(i))));
        }
        return tips;
    }

    private double x(double value) {
        double share = most > least ? (value - least) / (most - least) : 0.5;
        return names + SIDE + share * plot;
    }

    @Override
    public void paint(Graphics2D surface) {
        frame.paint(surface, brush -> {
            if (!Double.isFinite(study.base()) || inputs.isEmpty()) {
                String none = Messages.text(PictureCode.NO_VALUES);
                brush.write(new Words(none, 0, 30, 14, Anchor.START, Ink.TEXT, Weight.PLAIN, plot));
                return;
            }
            head(brush);
            for (int i = 0; i < inputs.size(); i++) {
                input(brush, inputs.get(i), TOP + i * ROW);
            }
        });
    }

    private void head(Brush brush) {
        double x = x(study.base());
        double bottom = TOP + inputs.size() * ROW;
        brush.line(List.of(new Point(x, TOP - 8), new Point(x, bottom)), Ink.TEXT, 1.4, List.of());
        brush.write(new Words(
                study.of().label() + ", as it is: " + study.of().text(study.base()),
                x,
                TOP - 14,
                SIZE,
                Anchor.MIDDLE,
                Ink.TEXT,
                Weight.BOLD,
                plot + 2 * SIDE));
        double key = SIZE;
        bar(brush, new Box(0, key - BAR + 2, 26, BAR - 2), Step.DOWN);
        text(brush, "a step down", 32, key, Anchor.START, 80);
        bar(brush, new Box(118, key - BAR + 2, 26, BAR - 2), Step.UP);
        text(brush, "a step up", 150, key, Anchor.START, 80);
    }

    private enum Step {
        DOWN,
        UP
    }

    private static void bar(Brush brush, Box box, Step step) {
        brush.fill(box, step == Step.UP ? Ink.RUN : Ink.CARD);
        brush.edge(box, Ink.RUN, 1.4);
    }

    private void input(Brush brush, Sensitivity.Input input, double top) {
        double right = names + 2 * SIDE + plot;
        brush.line(List.of(new Point(0, top), new Point(right, top)), Ink.TRACK, 1, List.of());
        String name = Fit.trim(Fit.plain(input.name()), SIZE + 1, Weight.BOLD, names - 8);
        double middle = top + ROW / 2;
        brush.write(new Words(name, 0, middle + 4, SIZE + 1, Anchor.START, Ink.TEXT, Weight.BOLD, names - 8));
        bar(brush, input.lower(), input.below(), middle - BAR - 1, Step.DOWN);
        bar(brush, input.upper(), input.above(), middle + 1, Step.UP);
    }

    /** One bar, and beside its end what was put in and what came of it. */
    private void bar(Brush brush, String put, double value, double top, Step step) {
        double from = x(study.base());
        String said = Fit.plain(put) + " → " + study.of().text(value);
        double base = top + BAR - 3;
        if (!Double.isFinite(value)) {
            text(brush, Fit.plain(put) + " → no value", from + 6, base, Anchor.START, SIDE);
            return;
        }
        double to = x(value);
        bar(brush, new Box(Math.min(from, to), top, Math.abs(to - from), BAR), step);
        boolean left = to < from;
        text(brush, said, left ? to - 6 : to + 6, base, left ? Anchor.END : Anchor.START, SIDE - 8);
    }

    private static void text(Brush brush, String text, double x, double y, Anchor anchor, double room) {
        String shown = Fit.trimEnd(text, SIZE, Weight.PLAIN, room);
        brush.write(new Words(shown, x, y, SIZE, anchor, Ink.TEXT, Weight.PLAIN, room));
    }
}
