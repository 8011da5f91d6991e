package farwatt.picture;

import farwatt.engine.Fault;
import farwatt.engine.Still;
import farwatt.engine.Value;
import farwatt.quantity.Show;
import farwatt.review.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the nodes of laid out trees. */
final class CardMaker {
    private static final double ID_SIZE = 13;
    private static final double SIZE = 11;
    private static final double MARK = 13;
    private static final double AIR = 8;
    private static final double BAR_WIDTH = 84;
    private static final double BAR_HEIGHT = 7;
    private static final double FIRST = 17;
    private static final double SECOND = 32;
    private static final double THIRD = 47;
    private static final int DIGITS = 3;

    private final Still still;
    private final Marks marks;

    CardMaker(Still still, Optional<Review> review) {
        this.still = still;
        marks = new Marks(still, review);
    }

    Card card(Branch branch) {
        Role role = Role.of(branch.table);
        Box box = new Box(
                WireMaker.left(branch), branch.y - TidyTree.CARD_HEIGHT / 2, TidyTree.CARD_WIDTH, TidyTree.CARD_HEIGHT);
        Mark mark = marks.of(branch);
        String id = Fit.plain(branch.id);
        String kind = kind(branch, role);
        String figures = figures(branch, role);
        Optional<Bar> bar = bar(branch, role, box, mark);
        String reserve = reserve(branch, role);
        double left = box.x() + role.band() + AIR;
        double right = box.right() - AIR;
        double markWidth = MARK + 4 + Fit.width(mark.word(), SIZE, Weight.BOLD);
        List<Words> words = new ArrayList<>();
        words.add(start(id, left, box.y() + FIRST, ID_SIZE, Weight.BOLD, Ink.TEXT, right - markWidth - AIR - left));
        words.add(end(mark.word(), right, box.y() + FIRST, Weight.BOLD, mark.ink(), markWidth - MARK));
        double figuresWidth = Math.min(Fit.width(figures, SIZE, Weight.PLAIN), right - left);
        double kindRoom = Math.max(0, right - figuresWidth - AIR - left);
        String kindShown = Fit.trimEnd(kind, SIZE, Weight.PLAIN, kindRoom);
        words.add(start(kindShown, left, box.y() + SECOND, SIZE, Weight.PLAIN, Ink.QUIET, kindRoom));
        words.add(end(figures, right, box.y() + SECOND, Weight.PLAIN, Ink.TEXT, figuresWidth + 4));
        words.add(end(reserve, right, box.y() + THIRD, Weight.PLAIN, Ink.QUIET, right - left - BAR_WIDTH - 6));
        words.removeIf(w -> w.text().isEmpty());
        Box shape = new Box(right - markWidth, box.y() + FIRST - MARK + 2, MARK, MARK);
        String said = WireMaker.join(id, kind, mark.word(), figures, reserve);
        return new Card(branch.table, branch.id, role, box, mark, shape, bar, words, said);
    }

    private static Words start(String text, double x, double y, double size, Weight weight, Ink ink, double room) {
        double atLeast = Math.max(0, room);
        return new Words(Fit.trim(text, size, weight, atLeast), x, y, size, Anchor.START, ink, weight, atLeast);
    }

    private static Words end(String text, double x, double y, Weight weight, Ink ink, double room) {
        return new Words(Fit.trim(text, SIZE, weight, room), x, y, SIZE, Anchor.END, ink, weight, room);
    }

    private String kind(Branch branch, Role role) {
        String typed = role == Role.DEVICE ? text(branch, "kind") : "";
        if (role == Role.SWITCH && text(branch, "mode").equals("direct")) {
            return "direct switch";
        }
        return typed.isEmpty() ? role.word() : Fit.plain(typed);
    }

    private String text(Branch branch, String name) {
        Value value = still.need(branch.table, branch.place, name);
        return value.isPresent() ? value.words() : "";
    }

    private String shown(Branch branch, String name) {
        Value value = still.need(branch.table, branch.place, name);
        return value.isPresent() ? Show.text(value.inside(), value.unit(), DIGITS) : "";
    }

    /** Volts and watts; where there are none, why. */
    private String figures(Branch branch, Role role) {
        String watts = switch (role) {
            case SOURCE -> "sent";
            case SWITCH -> "received";
            case DEVICE -> "watts";
        };
        String volts = role == Role.SWITCH ? "volts_in" : "volts";
        Value asked = still.need(branch.table, branch.place, role == Role.DEVICE ? volts : watts);
        if (asked.fault().isPresent()) {
            return why(asked.fault().get().kind());
        }
        return WireMaker.join(shown(branch, volts), shown(branch, watts));
    }

    private static String why(Fault.Kind kind) {
        return switch (kind) {
            case NO_OPERATING_POINT -> "no operating point";
            case RUNAWAY -> "wire overheats";
            case NOT_FED -> "not fed";
            case OUT_OF_USE -> "out of use";
            case EMPTY, UNREADABLE, LOOP, ARITHMETIC, NOT_APPLICABLE -> "cells have no value";
        };
    }

    private Optional<Bar> bar(Branch branch, Role role, Box box, Mark mark) {
        double share = share(branch, role);
        if (Double.isNaN(share)) {
            return Optional.empty();
        }
        Box track = new Box(box.x() + role.band() + AIR, box.y() + THIRD - BAR_HEIGHT, BAR_WIDTH, BAR_HEIGHT);
        return Optional.of(new Bar(track, Math.max(0, Math.min(1, share)), ink(mark, share)));
    }

    private static Ink ink(Mark mark, double share) {
        return share < 0 ? Ink.BAD : mark.ink();
    }

    private double share(Branch branch, Role role) {
        if (role != Role.DEVICE) {
            return figure(branch, "reserve_share");
        }
        double volts = figure(branch, "volts");
        return volts > 0 ? figure(branch, "headroom") / volts : Double.NaN;
    }

    private double figure(Branch branch, String name) {
        return still.need(branch.table, branch.place, name).inside();
    }

    private String reserve(Branch branch, Role role) {
        String name = role == Role.DEVICE ? "headroom" : "reserve_share";
        Value value = still.need(branch.table, branch.place, name);
        if (!value.isPresent()) {
            return "";
        }
        String amount = Show.text(Math.abs(value.inside()), value.unit(), DIGITS);
        boolean under = value.inside() < 0;
        if (role == Role.DEVICE) {
            return amount + (under ? " under floor" : " over floor");
        }
        return amount + (under ? " short" : " left");
    }
}
