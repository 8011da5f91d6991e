package farwatt.picture;

import farwatt.engine.Still;
import farwatt.review.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The single-line diagram of a plan as a layout: everything that is to be drawn and hit, at its place, in units of
 * about a pixel, from (0, 0) to (width, height). Nothing in it depends on fonts, screens or the order of rows.
 * Immutable.
 *
 * @param width of all
 * @param height of all
 * @param cards the nodes, trees in order, feeders before what they feed
 * @param rails the ports of nodes that feed something
 * @param wires the runs
 * @param undrawn ids of runs in use that feed nothing in a tree
 */
public record Diagram(
        double width, double height, List<Card> cards, List<Rail> rails, List<Wire> wires, List<String> undrawn) {
    public Diagram {
        cards = List.copyOf(cards);
        rails = List.copyOf(rails);
        wires = List.copyOf(wires);
        undrawn = List.copyOf(undrawn);
    }

    /**
     * Lays out the rows in use, with figures of the corner looked at. For any thread.
     *
     * @param review whose findings give each node its mark; without one a node only has power or not
     */
    public static Diagram of(Still still, Optional<Review> review) {
        Forest forest = Forest.of(still);
        Grove grove = Grove.of(forest.roots());
        CardMaker cards = new CardMaker(still, review);
        WireMaker wires = new WireMaker(still);
        List<Card> nodes = new ArrayList<>();
        List<Rail> rails = new ArrayList<>();
        List<Wire> runs = new ArrayList<>();
        for (Branch root : forest.roots()) {
            for (Branch branch : Forest.walk(root)) {
                nodes.add(cards.card(branch));
                if (!branch.isLeaf()) {
                    rails.add(WireMaker.rail(branch));
                    branch.children.forEach(child -> runs.add(wires.wire(branch, child)));
                }
            }
        }
        return new Diagram(grove.width(), grove.height(), nodes, rails, runs, forest.undrawn());
    }

    /** The card at a point. */
    public Optional<Card> cardAt(double x, double y) {
        return cards.stream().filter(card -> card.box().contains(x, y)).findFirst();
    }

    /** The run whose line is nearest to a point and no further away than so much. */
    public Optional<Wire> wireAt(double x, double y, double within) {
        Wire nearest = null;
        double least = within;
        for (Wire wire : wires) {
            double distance = wire.distance(x, y) - wire.width() / 2;
            if (distance <= least) {
                nearest = wire;
                least = distance;
            }
        }
        return Optional.ofNullable(nearest);
    }
}
