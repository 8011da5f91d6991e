package farwatt.picture;

/** Figures of a study, ready to be drawn in any colours. Safe for any thread. */
public sealed interface Chart permits HeatMap, Curve, Spread, Sensitivity {
    /** The picture in the colours of a palette. */
    Picture picture(Palette palette);
}
