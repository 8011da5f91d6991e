package farwatt.review;

/** Which limit set what a node can give, in the order of the words of bound_by. */
enum Bound {
    RIGHT(Phrase.BOUND_RIGHT, Phrase.DO_RIGHT),
    PORT(Phrase.BOUND_PORT, Phrase.DO_PORT),
    BUDGET(Phrase.BOUND_BUDGET, Phrase.DO_BUDGET),
    WIRE(Phrase.BOUND_WIRE, Phrase.DO_WIRE),
    CABLE(Phrase.BOUND_CABLE, Phrase.DO_CABLE),
    FLOOR(Phrase.BOUND_FLOOR, Phrase.DO_FLOOR);

    private final Phrase called;
    private final Phrase remedy;

    Bound(Phrase called, Phrase remedy) {
        this.called = called;
        this.remedy = remedy;
    }

    /** By the place of the word in its list; a node that has a figure has one. */
    static Bound of(double word) {
        return values()[(int) word];
    }

    /** A few words: {@code port limit}. */
    String called() {
        return called.text();
    }

    /**
     * What helps, and what does not.
     *
     * @param run id of the run that feeds the node, "" for a source
     */
    String whatHelps(String run) {
        return remedy.text(run);
    }
}
