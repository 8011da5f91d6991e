package farwatt.study;

import farwatt.engine.Trials;

/** The points of a study before they are worked out: which values stand in the varied cells. Safe for any thread. */
interface Plot {
    /** How many points there are. */
    long size();

    /** One past the last point of the block that begins at a point; a block is worked out by one thread. */
    long blockEnd(long from);

    /** Puts the values of every point of a block, in whatever order is quickest, and says so after each. */
    void walk(long from, int count, Trials trials, Visit visit);

    /** The inside value of a varied cell at a point. */
    double inside(long point, int knob);

    /** The same as a person reads it. */
    String text(long point, int knob);

    /** Told that the values of a point stand. */
    @FunctionalInterface
    interface Visit {
        /** @param offset of the point in its block */
        void at(int offset);
    }
}
