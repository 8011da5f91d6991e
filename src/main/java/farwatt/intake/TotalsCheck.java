package farwatt.intake;

/**
 * A total of the list held against its rows.
 *
 * @param place where the total stands
 * @param heading its column
 * @param stated what the list says
 * @param found what the rows give
 * @param agrees whether they are the same within the digits stated
 * @param said one sentence
 */
public record TotalsCheck(String place, String heading, String stated, String found, boolean agrees, String said) {}
