package farwatt.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** Draws a heat map. */
final class HeatPicture implements Picture {
    private static final double WIDE = 900;
    private static final double HIGH = 560;
    private static final double SIZE = 11.5;
    private static final double TICK = 17;
    private static final double KEY = 110;
    private static final double KEY_BAR = 16;
    private static final double MOST_LABEL = 150;
    private static final double LEAST_WIDTH = 420;
    private static final double LEAST_HEIGHT = 90;
    private static final double LARGEST_ON_SCREEN = 2;

    private final HeatMap map;
    private final double margin;
    private final double cellWidth;
    private final double cellHeight;
    private final double labels;
    private final boolean numbers;
    private final double least;
    private final double most;
    private final Frame frame;

    HeatPicture(HeatMap map, Palette palette) {
        this(map, palette, WIDE, HIGH, Frame.MARGIN);
    }

    HeatPicture(HeatMap map, Palette palette, Extent extent) {
        this(
                map,
                palette,
                extent.width() - 2 * Frame.NARROW - labels(map) - KEY,
                extent.height() - Frame.around(map.caption(), extent.width(), Frame.NARROW) - TICK - 9 - 2 * TICK - 10,
                Frame.NARROW);
    }

    private HeatPicture(HeatMap map, Palette palette, double wide, double high, double margin) {
        this.map = map;
        this.margin = margin;
        double largest = margin < Frame.MARGIN ? LARGEST_ON_SCREEN : 1;
        double smallest = margin < Frame.MARGIN ? 2 : 4;
        // whole units, so that neighbours meet without a seam
        cellWidth = Math.max(smallest, Math.min(84 * largest, Math.floor(wide / Math.max(1, map.columns()))));
        cellHeight = Math.max(smallest, Math.min(34 * largest, Math.floor(high / Math.max(1, map.rows()))));
        labels = labels(map);
        numbers = cellHeight > SIZE + 2 && widestNumber() < cellWidth - 4;
        least = map.least();
        most = map.most();
        double inner = labels + Math.max(plotWidth(), Fit.width(map.across().name(), SIZE, Weight.BOLD)) + KEY;
        double body = top() + plotHeight() + 2 * TICK + 10;
        frame = new Frame(map.caption(), Math.max(LEAST_WIDTH, inner), body, margin, palette);
    }

    private static double labels(HeatMap map) {
        return Math.ceil(Math.min(MOST_LABEL, widest(map.down().steps())) + 12);
    }

    private double top() {
        return TICK + 9;
    }

    private double plotWidth() {
        return cellWidth * map.columns();
    }

    private double plotHeight() {
        return Math.max(LEAST_HEIGHT, cellHeight * map.rows());
    }

    private static double widest(List<String> texts) {
        return texts.stream()
                .mapToDouble(t -> Fit.width(Fit.plain(t), SIZE, Weight.PLAIN))
                .max()
                .orElse(0);
    }

    private double widestNumber() {
        double widest = 0;
        for (int row = 0; row < map.rows(); row++) {
            for (int column = 0; column < map.columns(); column++) {
                widest = Math.max(widest, Fit.width(map.of().number(map.value(column, row)), SIZE, Weight.PLAIN));
            }
        }
        return widest;
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
        return map.caption().title();
    }

    @Override
    public String description() {
        return Frame.described(List.of(
                map.of().label() + " over " + map.across().name() + " and "
                        + map.down().name() + ".",
                "From " + map.of().text(least) + " to " + map.of().text(most) + ".",
                map.target().isPresent()
                        ? "A line parts the cells that reach "
                                + map.of().text(map.target().getAsDouble()) + " from those that do not."
                        : ""));
    }

    @Override
    public List<Tip> tips() {
        List<Tip> tips = new ArrayList<>();
        for (int row = 0; row < map.rows(); row++) {
            for (int column = 0; column < map.columns(); column++) {
                String text = Fit.plain(map.across().steps().get(column)) + ", "
                        + Fit.plain(map.down().steps().get(row)) + ": "
                        + map.of().text(map.value(column, row));
                tips.add(new Tip(frame.moved(cell(column, row)), text));
            }
        }
        return tips;
    }

    private Box cell(int column, int row) {
        return new Box(labels + column * cellWidth, top() + row * cellHeight, cellWidth, cellHeight);
    }

    @Override
    public void paint(Graphics2D surface) {
        frame.paint(surface, brush -> {
            for (int row = 0; row < map.rows(); row++) {
                for (int column = 0; column < map.columns(); column++) {
                    cell(brush, cell(column, row), map.value(column, row));
                }
            }
            contour().forEach(edge -> edge(brush, edge.get(0), edge.get(1)));
            ticks(brush);
            key(brush);
        });
    }

    private double share(double value) {
        return most > least ? (value - least) / (most - least) : 0.5;
    }

    private void cell(Brush brush, Box box, double value) {
        if (Double.isNaN(value)) {
            brush.line(
                    List.of(new Point(box.x(), box.bottom()), new Point(box.right(), box.y())),
                    Ink.QUIET,
                    1,
                    List.of());
            return;
        }
        int ground = Ramp.rgb(share(value));
        brush.fill(box, new Color(ground));
        if (numbers) {
            Words words = new Words(
                    map.of().number(value),
                    box.x() + box.width() / 2,
                    box.y() + box.height() / 2 + SIZE * 0.36,
                    SIZE,
                    Anchor.MIDDLE,
                    Ink.TEXT,
                    Weight.PLAIN,
                    box.width() - 4);
            brush.write(words, new Color(Ramp.text(ground)));
        }
    }

    /** The edges between cells that reach the target and neighbours that do not. */
    List<List<Point>> contour() {
        List<List<Point>> edges = new ArrayList<>();
        for (int row = 0; row < map.rows(); row++) {
            for (int column = 0; column < map.columns(); column++) {
                boolean here = map.reaches(column, row);
                Box box = cell(column, row);
                Point corner = new Point(box.right(), box.bottom());
                if (column + 1 < map.columns() && here != map.reaches(column + 1, row)) {
                    edges.add(List.of(new Point(box.right(), box.y()), corner));
                }
                if (row + 1 < map.rows() && here != map.reaches(column, row + 1)) {
                    edges.add(List.of(new Point(box.x(), box.bottom()), corner));
                }
            }
        }
        return edges;
    }

    /** Light upon dark, so that it shows on every colour. */
    private static void edge(Brush brush, Point from, Point to) {
        double reach = from.x() == to.x() ? 0 : 1.25;
        double drop = from.x() == to.x() ? 1.25 : 0;
        List<Point> line =
                List.of(new Point(from.x() - reach, from.y() - drop), new Point(to.x() + reach, to.y() + drop));
        brush.line(line, new Color(0x000000), 5);
        brush.line(line, new Color(0xFFFFFF), 2.2);
    }

    private void ticks(Brush brush) {
        brush.write(new Words(
                Fit.plain(map.down().name()),
                0,
                top() - 13,
                SIZE,
                Anchor.START,
                Ink.TEXT,
                Weight.BOLD,
                frame.width() / 2));
        double bottom = top() + plotHeight();
        int every = step(cellWidth, widest(map.across().steps()) + 10);
        for (int i = 0; i < map.columns(); i += every) {
            double x = labels + (i + 0.5) * cellWidth;
            double room = Math.max(cellWidth * every, 20) - 4;
            brush.write(tick(map.across().steps().get(i), x, bottom + TICK, Anchor.MIDDLE, room));
        }
        every = step(cellHeight, SIZE + 3);
        for (int i = 0; i < map.rows(); i += every) {
            double y = top() + (i + 0.5) * cellHeight + SIZE * 0.36;
            brush.write(tick(map.down().steps().get(i), labels - 8, y, Anchor.END, MOST_LABEL));
        }
        brush.write(new Words(
                Fit.plain(map.across().name()) + (map.isWhole() ? "" : "   (a slanting stroke: no value)"),
                labels,
                bottom + 2 * TICK + 4,
                SIZE,
                Anchor.START,
                Ink.TEXT,
                Weight.BOLD,
                frame.width() - labels - 2 * margin));
    }

    private static Words tick(String text, double x, double y, Anchor anchor, double room) {
        String shown = Fit.trim(Fit.plain(text), SIZE, Weight.PLAIN, room);
        return new Words(shown, x, y, SIZE, anchor, Ink.TEXT, Weight.PLAIN, room);
    }

    private static int step(double cell, double needed) {
        return Math.max(1, (int) Math.ceil(needed / cell));
    }

    private void key(Brush brush) {
        double x = labels + plotWidth() + 22;
        double high = plotHeight();
        brush.write(new Words(
                map.of().label(), x + KEY - 26, top() - 13, SIZE, Anchor.END, Ink.TEXT, Weight.BOLD, x + KEY - labels));
        int steps = 60;
        for (int i = 0; i < steps; i++) {
            double y = top() + high * i / steps;
            brush.fill(new Box(x, y, KEY_BAR, high / steps + 0.5), new Color(Ramp.rgb(1 - (i + 0.5) / steps)));
        }
        brush.edge(new Box(x, top(), KEY_BAR, high), Ink.EDGE, 0.75);
        keyTick(brush, x, most, false);
        if (most > least) {
            keyTick(brush, x, least, false);
        }
        map.target().ifPresent(target -> {
            if (target > least && target < most) {
                double y = top() + high * (1 - share(target));
                edge(brush, new Point(x - 3, y), new Point(x + KEY_BAR + 3, y));
                keyTick(brush, x, target, true);
            }
        });
    }

    private void keyTick(Brush brush, double x, double value, boolean isTarget) {
        double y = top() + plotHeight() * (1 - share(value)) + SIZE * 0.36;
        String text = isTarget ? map.of().number(value) + " target" : map.of().number(value);
        brush.write(new Words(
                text,
                x + KEY_BAR + 6,
                y,
                SIZE,
                Anchor.START,
                Ink.TEXT,
                isTarget ? Weight.BOLD : Weight.PLAIN,
                KEY - KEY_BAR - 28));
    }
}
