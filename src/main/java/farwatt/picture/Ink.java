package farwatt.picture;

/** What something is drawn in; a palette says the colour. */
public enum Ink {
    /** The ground of the whole picture. */
    PAPER,
    /** The ground of a card. */
    CARD,
    /** Edges of cards, axes, rails. */
    EDGE,
    /** The band that tells sources and switches from devices. */
    BAND,
    TEXT,
    /** Text of the second rank. */
    QUIET,
    /** Runs of cable and curves. */
    RUN,
    /** The empty part of a bar, and grid lines. */
    TRACK,
    /** What holds. */
    GOOD,
    /** What someone should look at. */
    LOOK,
    /** What fails. */
    BAD,
    /** What gets no power. */
    DARK
}
