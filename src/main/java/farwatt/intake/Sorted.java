package farwatt.intake;

/**
 * A row and what kind of row it is.
 *
 * @param row the row
 * @param kind what kind
 * @param section text of the section heading it stands under, "" if none
 */
record Sorted(RawRow row, Kind kind, String section) {
    /** What a row of a list is. */
    enum Kind {
        DEVICE,
        TITLE,
        HEADING,
        HEADING_AGAIN,
        SECTION,
        TOTAL,
        NOTE,
        RULE,
        HIDDEN
    }
}
