package farwatt.intake;

/**
 * What a column was taken to mean.
 *
 * @param sheet name of the sheet, "" for a text
 * @param heading as shown
 * @param meaning what it means
 * @param confidence 0..1; below 0.6 someone should look
 * @param reason what speaks for it
 * @param ownName for a column of the person's own its name in the plan, else ""
 */
public record ColumnMeaning(
        String sheet, String heading, Meaning meaning, double confidence, String reason, String ownName) {}
