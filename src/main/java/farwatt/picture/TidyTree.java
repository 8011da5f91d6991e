package farwatt.picture;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays one tree out from left to right. A node's runs leave a rail beside it, each straight to the card it feeds, so
 * that none crosses another. Switches come first, the first of them level with its feeder, so that a chain is one
 * straight line. Many devices of one node stand in several columns; the lines to the further ones go through lanes
 * above the row.
 */
final class TidyTree {
    static final double CARD_WIDTH = 220;
    static final double CARD_HEIGHT = 54;
    static final double GUTTER = 140;
    static final double COLUMN = CARD_WIDTH + GUTTER;
    /** Where the rail stands in the gutter. */
    static final double RAIL = 14;

    static final double LANE = 8;
    /** From a card's top to the first lane above it. */
    static final double FIRST_LANE = 7;

    private static final double GAP = 10;
    private static final double SWITCH_GAP = 8;
    private static final double LABEL = 16;
    private static final int ONE_COLUMN = 14;
    private static final int MOST_COLUMNS = 10;

    private TidyTree() {}

    /** Sets columns, lanes, rails and how far each branch hangs below its parent; gives the outline of the tree. */
    static Skyline settle(Branch root) {
        List<Branch> order = Forest.walk(root);
        for (Branch branch : order) {
            branch.children.forEach(child -> child.column = branch.column + 1);
        }
        Map<Branch, Skyline> outlines = new HashMap<>();
        for (int i = order.size() - 1; i >= 0; i--) {
            Branch branch = order.get(i);
            outlines.put(branch, settle(branch, outlines));
        }
        return outlines.getOrDefault(root, new Skyline(0));
    }

    private static Skyline settle(Branch branch, Map<Branch, Skyline> outlines) {
        double half = (CARD_HEIGHT + GAP) / 2;
        Skyline all = new Skyline(2 * branch.column);
        all.cover(2 * branch.column, -half, half);
        List<Branch> leaves = branch.children.stream().filter(Branch::isLeaf).toList();
        double last = 0;
        boolean empty = true;
        for (Branch child : branch.children) {
            Skyline outline = outlines.remove(child);
            if (outline == null || child.isLeaf()) {
                continue;
            }
            child.down = empty ? 0 : Math.max(last, all.clearance(outline) + SWITCH_GAP);
            all.join(outline, child.down);
            last = child.down;
            empty = false;
        }
        if (!leaves.isEmpty()) {
            Skyline outline = fold(branch, leaves);
            double down = empty ? 0 : Math.max(last, all.clearance(outline));
            leaves.forEach(leaf -> leaf.down += down);
            all.join(outline, down);
        }
        for (Branch child : branch.children) {
            branch.railTop = Math.min(branch.railTop, entry(child));
            branch.railBottom = Math.max(branch.railBottom, entry(child));
        }
        all.cover(2 * branch.column + 1, branch.railTop - LABEL, branch.railBottom + LABEL);
        return all;
    }

    /** Where the line to a child leaves the rail, from the parent's middle. */
    static double entry(Branch child) {
        return child.lane == 0 ? child.down : child.down - CARD_HEIGHT / 2 - FIRST_LANE - (child.lane - 1) * LANE;
    }

    /** Devices of one node in columns, filled one after the other; the first row is level with the node. */
    private static Skyline fold(Branch branch, List<Branch> leaves) {
        int columns = columns(leaves.size());
        int rows = (leaves.size() + columns - 1) / columns;
        double pitch = pitch(columns);
        for (int i = 0; i < leaves.size(); i++) {
            Branch leaf = leaves.get(i);
            leaf.column = branch.column + 1 + i / rows;
            leaf.lane = i / rows;
            leaf.down = i % rows * pitch;
        }
        int first = 2 * branch.column + 2;
        double lanes = columns == 1 ? 0 : FIRST_LANE + (columns - 2) * LANE;
        double half = (CARD_HEIGHT + GAP) / 2;
        Skyline outline = new Skyline(first);
        for (int slot = first; slot < first + 2 * columns - 1; slot++) {
            outline.cover(slot, -half - lanes, (rows - 1) * pitch + half);
        }
        return outline;
    }

    private static double pitch(int columns) {
        return CARD_HEIGHT + (columns == 1 ? GAP : GAP + 4 + (columns - 1) * LANE);
    }

    /** As many columns as make the devices of one node about as high as wide. */
    private static int columns(int leaves) {
        int columns = 1;
        if (leaves > ONE_COLUMN) {
            columns = 2;
            while (columns < MOST_COLUMNS
                    && Math.ceil((double) leaves / columns) * pitch(columns) > 0.9 * (columns + 1) * COLUMN) {
                columns++;
            }
        }
        return columns;
    }
}
