package farwatt.picture;

import farwatt.engine.Still;
import farwatt.engine.Value;
import farwatt.plan.Table;
import farwatt.quantity.Show;
import java.util.ArrayList;
import java.util.List;

/** Draws the runs of laid out trees. */
final class WireMaker {
    static final double LABEL_SIZE = 10.5;
    private static final double ABOVE = 4;
    private static final double LANE_WIDEST = 4.5;
    private static final double TURN = 26;
    private static final double AFTER_TURN = 7;
    private static final int DIGITS = 3;

    private final Still still;

    WireMaker(Still still) {
        this.still = still;
    }

    static double left(Branch branch) {
        return branch.left + branch.column * TidyTree.COLUMN;
    }

    private static double railX(Branch branch) {
        return left(branch) + TidyTree.CARD_WIDTH + TidyTree.RAIL;
    }

    static Rail rail(Branch branch) {
        double x = railX(branch);
        double half = Rail.WIDTH / 2;
        return new Rail(
                branch.id,
                List.of(new Point(left(branch) + TidyTree.CARD_WIDTH, branch.y), new Point(x, branch.y)),
                List.of(
                        new Point(x, branch.y + branch.railTop - half),
                        new Point(x, branch.y + branch.railBottom + half)));
    }

    Wire wire(Branch from, Branch to) {
        double start = railX(from) + Rail.WIDTH / 2;
        double end = left(to);
        double width = Wire.width(figure(to.run, "amps"));
        double labelX = start + AFTER_TURN;
        List<Point> points = new ArrayList<>();
        if (to.lane == 0) {
            points.add(new Point(start, to.y));
        } else {
            double lane = from.y + TidyTree.entry(to);
            double turn = end - TidyTree.GUTTER + TURN;
            width = Math.min(width, LANE_WIDEST);
            labelX = turn + AFTER_TURN;
            points.add(new Point(start, lane));
            points.add(new Point(turn, lane));
            points.add(new Point(turn, to.y));
        }
        points.add(new Point(end, to.y));
        Pattern pattern = Pattern.of(figure(to.run, "drop_share"));
        String id = still.id(Table.RUNS, to.run);
        String cable = join(text(to.run, "length"), text(to.run, "gauge"));
        String flow = join(rounded(to.run, "amps", 1000), rounded(to.run, "drop_share", 100));
        double room = end - labelX - AFTER_TURN;
        List<Words> words = new ArrayList<>();
        words.add(label(cable, labelX, to.y - width / 2 - ABOVE, Ink.TEXT, room));
        words.add(label(flow, labelX, to.y + width / 2 + LABEL_SIZE, Ink.QUIET, room));
        words.removeIf(w -> w.text().isEmpty());
        String said = join(Fit.plain(id), Fit.plain(from.id) + " → " + Fit.plain(to.id), cable, flow);
        return new Wire(id, from.id, to.id, points, width, pattern, words, said);
    }

    private static Words label(String text, double x, double y, Ink ink, double room) {
        String fitting = Fit.trim(text, LABEL_SIZE, Weight.PLAIN, room);
        return new Words(fitting, x, y, LABEL_SIZE, Anchor.START, ink, Weight.PLAIN, room);
    }

    private double figure(int run, String name) {
        return still.need(Table.RUNS, run, name).inside();
    }

    private String text(int run, String name) {
        Value value = still.need(Table.RUNS, run, name);
        return value.isPresent() ? Show.text(value.inside(), value.unit(), DIGITS) : "";
    }

    /** In its unit, to a part of it: what is small beside the line's width needs no more digits. */
    private String rounded(int run, String name, double parts) {
        Value value = still.need(Table.RUNS, run, name);
        if (!value.isPresent()) {
            return "";
        }
        double shown = Math.rint(value.unit().fromInside(value.inside()) * parts) / parts;
        return Show.number(shown, DIGITS) + " " + value.unit().symbol();
    }

    static String join(String... parts) {
        StringBuilder out = new StringBuilder();
        for (String part : parts) {
            if (!part.isEmpty()) {
                out.append(out.isEmpty() ? "" : " · ").append(part);
            }
        }
        return out.toString();
    }
}
