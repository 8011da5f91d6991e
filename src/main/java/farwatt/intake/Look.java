package farwatt.intake;

/** How a workbook shows a row. */
enum Look {
    PLAIN,
    HIDDEN,
    /** Everything in it is struck out. */
    STRUCK
}
