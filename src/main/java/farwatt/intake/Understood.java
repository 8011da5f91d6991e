package farwatt.intake;

/**
 * A value that was understood from a row.
 *
 * @param name the plan's name, such as {@code draw}
 * @param text canonical, such as {@code 12.95 W}
 * @param source how it came about
 * @param original the cell as it stood there
 */
public record Understood(String name, String text, Source source, String original) {}
