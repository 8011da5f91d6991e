package farwatt.language;

/** What a formula needs while it is worked out. One for each thread; reused. */
public final class Frame {
    final Faults faults;

    /** The row at hand: names of a row are read here. */
    public int row;

    /** The row whose cell it is: {@code this}. */
    public int self;

    public Frame(Faults faults) {
        this.faults = faults;
    }

    /** Puts the frame on the row whose cell is worked out. */
    public Frame at(int cell) {
        row = cell;
        self = cell;
        return this;
    }
}
