package farwatt.intake;

/**
 * A cell of the plan that the list says otherwise.
 *
 * @param id of the device or run
 * @param name of the cell
 * @param before as the plan has it, "" where it is empty
 * @param after as the list has it
 */
public record Difference(String id, String name, String before, String after) {}
