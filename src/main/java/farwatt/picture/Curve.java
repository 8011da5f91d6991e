package farwatt.picture;

import java.util.List;

/**
 * One value over another as a chart: how a reserve falls with each copy added, or with the length of a trunk up to its
 * limit.
 *
 * @param caption what stands above
 * @param across what is varied
 * @param up what came of it
 * @param points in order of x, SI; y is a NaN where there is no value
 * @param form how the points are joined
 * @param guides the target, the limit found, and others
 */
public record Curve(Caption caption, Measure across, Measure up, List<Point> points, Form form, List<Guide> guides)
        implements Chart {
    /** How points are joined. */
    public enum Form {
        /** By a straight line: what is varied can take any value. */
        LINE,
        /** The same with each point marked: few values were tried. */
        MARKED,
        /** By steps, each point marked: what is varied goes by whole pieces. */
        STEPS,
        /** As columns that stand side by side, each from its x to the next. */
        COLUMNS
    }

    public Curve {
        points = List.copyOf(points);
        guides = List.copyOf(guides);
    }

    @Override
    public Picture picture(Palette palette) {
        return new CurvePicture(this, palette);
    }
}
