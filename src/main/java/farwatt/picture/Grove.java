package farwatt.picture;

import java.util.ArrayList;
import java.util.List;

/** Puts trees side by side: one below the other in stacks about as high as all is wide. */
final class Grove {
    private static final double BETWEEN = 26;
    private static final double TALLEST_SHARE = 0.8;

    private double width;
    private double height;

    /** Gives every branch its place. */
    static Grove of(List<Branch> roots) {
        Grove grove = new Grove();
        List<Skyline> outlines = roots.stream().map(TidyTree::settle).toList();
        grove.stack(roots, outlines);
        return grove;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    private void stack(List<Branch> roots, List<Skyline> outlines) {
        double area = 0;
        double tallest = 0;
        List<Double> gaps = new ArrayList<>();
        for (int i = 0; i < roots.size(); i++) {
            Skyline outline = outlines.get(i);
            // what nothing feeds stands close together
            gaps.add(roots.get(i).isLeaf() ? 0 : BETWEEN);
            double high = outline.bottom() - outline.top() + gaps.get(i);
            area += high * (wide(outline) + TidyTree.GUTTER / 2);
            tallest = Math.max(tallest, high);
        }
        double most = Math.max(tallest, Math.sqrt(area * TALLEST_SHARE));
        double left = 0;
        double top = 0;
        for (int i = 0; i < roots.size(); i++) {
            Skyline outline = outlines.get(i);
            double high = outline.bottom() - outline.top();
            if (top > 0 && top + high > most + 1e-6) {
                left = width + TidyTree.GUTTER / 2;
                top = 0;
            }
            put(roots.get(i), left, top - outline.top());
            top += high;
            width = Math.max(width, left + wide(outline));
            height = Math.max(height, top);
            top += gaps.get(i);
        }
    }

    private static double wide(Skyline outline) {
        int columns = (outline.end() + 1) / 2;
        return columns * TidyTree.COLUMN - TidyTree.GUTTER;
    }

    private static void put(Branch root, double left, double middle) {
        root.y = middle;
        for (Branch branch : Forest.walk(root)) {
            branch.left = left;
            branch.children.forEach(child -> child.y = branch.y + child.down);
        }
    }
}
