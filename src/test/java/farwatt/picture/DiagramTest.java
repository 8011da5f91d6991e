package farwatt.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.engine.Calculation;
import farwatt.plan.Table;
import farwatt.review.Reviewer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DiagramTest {
    private static Diagram of(Sites site) {
        return Diagram.of(site.calc().still(), Optional.empty());
    }

    @Test
    void treesOfAnyShapeHaveNoCardUponAnotherAndNoLineAcrossAnything() {
        long seed = new Random(20).nextLong();
        Random random = new Random(seed);
        for (int round = 0; round < 60; round++) {
            int nodes = round < 5 ? round + 1 : 1 + random.nextInt(500);
            Diagram diagram = of(Sites.random(random, nodes));
            String which = "seed " + seed + " round " + round + " nodes " + nodes;
            assertEquals(nodes, diagram.cards().size(), which);
            check(diagram, which);
        }
    }

    @Test
    void starsAndChainsStayWithinReason() {
        check(of(Sites.star(1)), "one device");
        Diagram star = of(Sites.star(48));
        check(star, "48 devices");
        assertTrue(star.height() < 1.2 * star.width(), star.height() + " high, " + star.width() + " wide");
        Diagram wide = of(Sites.star(500));
        check(wide, "500 devices");
        assertTrue(wide.height() < 2.5 * wide.width(), wide.height() + " high, " + wide.width() + " wide");
        Diagram chain = of(Sites.chain(30, 3));
        check(chain, "30 switches");
        double level = chain.cards().get(0).box().y();
        chain.cards().stream()
                .filter(card -> card.role() == Role.SWITCH)
                .forEach(card -> assertEquals(level, card.box().y(), 1e-9, card.id()));
    }

    @Test
    void anEmptyPlanIsAnEmptyLayout() {
        Diagram none = of(new Sites());
        assertTrue(none.cards().isEmpty() && none.wires().isEmpty());
        assertEquals(0, none.height());
    }

    @Test
    void devicesWithoutRunsStandTogetherAndFormASquareRatherThanARow() {
        Sites site = new Sites();
        for (int i = 0; i < 300; i++) {
            site.device("cam " + i, "", "", "5 W");
        }
        Diagram diagram = of(site);
        check(diagram, "300 devices that nothing feeds");
        assertTrue(diagram.height() < 2 * diagram.width() && diagram.width() < 2 * diagram.height());
        assertTrue(diagram.cards().stream().allMatch(card -> card.mark() == Mark.UNKNOWN));
    }

    @Test
    void theOrderOfRowsDoesNotMatter() {
        Sites one =
                new Sites().source("feed").device("cam 2", "feed", "9 m", "5 W").device("cam 10", "feed", "9 m", "4 W");
        Sites other = new Sites()
                .device("cam 10", "feed", "9 m", "4 W")
                .device("cam 2", "feed", "9 m", "5 W")
                .source("feed");
        assertEquals(of(one), of(other));
        assertEquals(
                List.of("feed", "cam 2", "cam 10"),
                of(one).cards().stream().map(Card::id).toList());
    }

    @Test
    void rowsOutOfUseAreLeftOutAndRunsToNowhereAreNamed() {
        Sites site = new Sites()
                .source("feed")
                .device("cam", "feed", "9 m", "5 W")
                .run("loose", "feed", "nothing there", "5 m")
                .run("second", "feed", "cam", "5 m");
        Diagram diagram = of(site);
        assertEquals(
                List.of("loose", "run cam", "second"),
                diagram.undrawn().stream().sorted().toList());
        var plan = site.plan();
        var devices = plan.rows(Table.DEVICES);
        var without = plan.with(Table.DEVICES, devices.with(0, devices.at(0).with("in_use", farwatt.plan.Cell.NO)));
        Diagram left = Diagram.of(Calculation.of(without).still(), Optional.empty());
        assertEquals(List.of("feed"), left.cards().stream().map(Card::id).toList());
    }

    @Test
    void marksFollowTheReviewAndPowerWithoutOne() {
        Calculation good =
                new Sites().source("feed").device("cam", "feed", "9 m", "5 W").calc();
        assertEquals(
                Mark.ON,
                Diagram.of(good.still(), Optional.empty()).cards().get(1).mark());
        Calculation broken = new Sites()
                .source("feed")
                .device("lamp", "feed", "400 m", "100 W")
                .calc();
        Diagram diagram = Diagram.of(broken.still(), Optional.of(Reviewer.review(broken)));
        assertEquals(Mark.FAILS, diagram.cards().get(1).mark());
        assertTrue(
                diagram.cards().get(1).said().contains("no operating point"),
                diagram.cards().get(1).said());
        assertEquals(Pattern.UNKNOWN, diagram.wires().get(0).pattern());
    }

    @Test
    void aNodeThatIsShortNeverHolds() {
        Sites site = new Sites().source("feed").edge("gate", "feed", "90 m");
        for (int i = 1; i <= 6; i++) {
            site.device("cam " + i, "gate", "9 m", "12 W");
        }
        Calculation calc = site.calc();
        Diagram diagram = Diagram.of(calc.still(), Optional.of(Reviewer.review(calc)));
        Card gate = diagram.cards().get(1);
        assertTrue(gate.said().contains("short"), gate.said());
        assertEquals(Mark.FAILS, gate.mark());
        assertEquals(0, gate.bar().orElseThrow().filled());
        assertEquals(
                Mark.FAILS,
                Diagram.of(calc.still(), Optional.empty()).cards().get(1).mark());
        assertTrue(diagram.cards().stream().anyMatch(card -> card.mark() == Mark.DARK));
    }

    @Test
    void whatIsUnderAPointIsFound() {
        Diagram diagram = of(Sites.star(3));
        Card gate = diagram.cards().get(1);
        assertEquals(
                "gate",
                diagram.cardAt(gate.box().x() + 3, gate.box().y() + 3)
                        .orElseThrow()
                        .id());
        assertEquals(Table.SWITCHES, gate.table());
        Wire wire = diagram.wires().get(2);
        Point end = wire.points().get(wire.points().size() - 1);
        assertEquals(wire, diagram.wireAt(end.x() - 5, end.y() + 4, 6).orElseThrow());
        assertTrue(diagram.wireAt(end.x() - 5, end.y() + 20, 6).isEmpty());
        assertTrue(diagram.cardAt(-5, -5).isEmpty());
    }

    @Test
    void lineWidthFollowsAmpsAndThePatternVoltsLost() {
        assertTrue(Wire.width(0.1) < Wire.width(0.5) && Wire.width(0.5) < Wire.width(1.5));
        assertEquals(Wire.width(0), Wire.width(Double.NaN));
        assertEquals(
                List.of(Pattern.SOLID, Pattern.LONG_DASH, Pattern.DASH, Pattern.DOT, Pattern.UNKNOWN),
                Stream.of(0.01, 0.03, 0.07, 0.2, Double.NaN).map(Pattern::of).toList());
    }

    @Test
    void textsKeepToTheirRoomWhateverTheIdsAre() {
        String longest = "x".repeat(76) + " 12";
        String hostile = "<b>&\"'\u0000\u202E]]>\uD800\uFFFF\n";
        Sites site = new Sites().source(longest).device(hostile, longest, "9 m", "5 W");
        Diagram diagram = of(site);
        check(diagram, "long ids");
        Card first = diagram.cards().get(0);
        assertTrue(
                first.words().get(0).text().endsWith(" 12"),
                first.words().get(0).text());
        assertTrue(first.said().contains(longest));
        for (Card card : diagram.cards()) {
            for (Words words : card.words()) {
                assertTrue(Fit.width(words.text(), words.size(), words.weight()) <= words.room() + 1e-6, words.text());
                assertFalse(words.text().chars().anyMatch(c -> c < ' ' || c == 0x202E || c == 0xFFFF), words.text());
            }
        }
    }

    /** What must hold of every layout. */
    private static void check(Diagram diagram, String which) {
        Box all = new Box(-1e-6, -1e-6, diagram.width() + 2e-6, diagram.height() + 2e-6);
        List<Card> cards = diagram.cards();
        for (int i = 0; i < cards.size(); i++) {
            Box box = cards.get(i).box();
            assertTrue(all.contains(box.x(), box.y()) && all.contains(box.right(), box.bottom()), which);
            for (int k = 0; k < i; k++) {
                assertFalse(
                        box.overlaps(cards.get(k).box()),
                        which + ": " + cards.get(i).id() + " on " + cards.get(k).id());
            }
        }
        Set<String> fed = new HashSet<>();
        for (Wire wire : diagram.wires()) {
            assertTrue(fed.add(wire.to()), which + ": " + wire.to() + " is fed twice");
            strokes(wire.points(), wire.width()).forEach(part -> free(part, cards, which + ": " + wire.run()));
            wire.words().forEach(words -> free(around(words), cards, which + ": " + words.text()));
        }
        for (Rail rail : diagram.rails()) {
            strokes(rail.bar(), Rail.WIDTH).forEach(part -> free(part, cards, which + ": rail of " + rail.id()));
        }
        crossings(diagram, which);
    }

    private static Box around(Words words) {
        double wide = Fit.width(words.text(), words.size(), words.weight());
        return new Box(words.x(), words.y() - words.size() * 0.75, wide, words.size() * 0.9);
    }

    private static void free(Box part, List<Card> cards, String which) {
        for (Card card : cards) {
            assertFalse(part.overlaps(card.box()), which + " over " + card.id());
        }
    }

    /** Lines of different runs share no place; a run touches no rail but its own. */
    private static void crossings(Diagram diagram, String which) {
        List<Box> parts = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Wire wire : diagram.wires()) {
            for (Box part : strokes(wire.points(), wire.width())) {
                parts.add(part);
                names.add(wire.run());
            }
            for (Words words : wire.words()) {
                parts.add(around(words));
                names.add(wire.run());
            }
        }
        for (Rail rail : diagram.rails()) {
            strokes(rail.bar(), Rail.WIDTH).forEach(part -> {
                parts.add(part);
                names.add("rail of " + rail.id());
            });
        }
        for (int i = 0; i < parts.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (!names.get(i).equals(names.get(k))) {
                    assertFalse(
                            parts.get(i).overlaps(parts.get(k)), which + ": " + names.get(i) + " over " + names.get(k));
                }
            }
        }
    }

    private static List<Box> strokes(List<Point> points, double width) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            boolean level = a.y() == b.y();
            double across = width / 2;
            double x = Math.min(a.x(), b.x()) - (level ? 0 : across);
            double y = Math.min(a.y(), b.y()) - (level ? across : 0);
            boxes.add(new Box(
                    x,
                    y,
                    Math.abs(a.x() - b.x()) + (level ? 0 : width),
                    Math.abs(a.y() - b.y()) + (level ? width : 0)));
        }
        return boxes;
    }
}
