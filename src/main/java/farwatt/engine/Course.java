package farwatt.engine;

/**
 * What is to be done after certain cells got other values, found out once and done many times: cells in order, then
 * rows of the circuit, then what follows from its answers. Allocates nothing while everything stands.
 */
final class Course {
    private final Op[] before;
    private final PieceStep[] pieces;
    private final Op[] narrow;
    private final Op[] wide;
    private final int[] narrowReads;
    private final int[] wideReads;
    /** True where the cells decide what is in use, and with it which model there must be. */
    final boolean rebuilds;

    /**
     * @param narrow what follows where every tree stands as before
     * @param wide what follows from every answer of the trees touched
     * @param narrowReads expressions to work out anew after the narrow steps
     * @param wideReads and after the wide ones
     */
    Course(
            Op[] before,
            PieceStep[] pieces,
            Op[] narrow,
            Op[] wide,
            int[] narrowReads,
            int[] wideReads,
            boolean rebuilds) {
        this.before = before;
        this.pieces = pieces;
        this.narrow = narrow;
        this.wide = wide;
        this.narrowReads = narrowReads;
        this.wideReads = wideReads;
        this.rebuilds = rebuilds;
    }

    /** Does it; gives the expressions that may have other values now. */
    int[] run() {
        for (Op op : before) {
            op.run();
        }
        boolean asBefore = true;
        for (PieceStep piece : pieces) {
            asBefore &= piece.run();
        }
        for (Op op : asBefore ? narrow : wide) {
            op.run();
        }
        return asBefore ? narrowReads : wideReads;
    }

    /** How dear it is while everything stands. */
    int cost() {
        int cost = narrowReads.length;
        for (Op op : before) {
            cost += op.cost();
        }
        for (PieceStep piece : pieces) {
            cost += piece.cost();
        }
        for (Op op : narrow) {
            cost += op.cost();
        }
        return cost;
    }
}
