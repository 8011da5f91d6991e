package farwatt.intake;

/**
 * Cells that stand in a list again and again, such as a place or a kind, kept once. Remembers some thousands; what is
 * not among them is made anew. For one thread.
 */
final class Alike {
    private static final int SLOTS = 1 << 13;
    /** Longer texts hardly stand twice. */
    private static final int LONGEST = 40;

    private final RawCell[] cells = new RawCell[SLOTS];

    /** The cell of a text. */
    RawCell text(String text) {
        return text(text, 0, text.length());
    }

    /** The cell of a stretch of a text. */
    RawCell text(String all, int from, int to) {
        int length = to - from;
        if (length == 0) {
            return RawCell.EMPTY;
        }
        if (length > LONGEST) {
            return RawCell.text(all.substring(from, to));
        }
        int hash = 0;
        for (int i = from; i < to; i++) {
            hash = 31 * hash + all.charAt(i);
        }
        int slot = (hash ^ hash >>> 13) & (SLOTS - 1);
        RawCell there = cells[slot];
        boolean same =
                there != null && there.text().length() == length && all.regionMatches(from, there.text(), 0, length);
        if (!same) {
            there = RawCell.text(all.substring(from, to));
            cells[slot] = there;
        }
        return there;
    }
}
