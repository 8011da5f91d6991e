package farwatt.intake;

/** What became of a row of a customer's list. The counts of the four add up to the rows. */
public enum RowState {
    TAKEN("taken"),
    CHANGED("changed"),
    HELD_BACK("held back"),
    LEFT_OUT("left out");

    private final String word;

    RowState(String word) {
        this.word = word;
    }

    /** The word in reports. */
    public String word() {
        return word;
    }
}
