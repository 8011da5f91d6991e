package farwatt.picture;

/** Figures of a study, ready to be drawn in any colours. Safe for any thread. */
public sealed interface Chart permits HeatMap, Curve, Spread, Sensitivity {
    /** The picture in the colours of a palette. */
    Picture picture(Palette palette);

    /** The same laid out for a screen. */
    Picture picture(Palette palette, Extent extent);

    /** The same with something else under its title; what the chart itself has to say there stays. */
    Chart captioned(String below);
}
