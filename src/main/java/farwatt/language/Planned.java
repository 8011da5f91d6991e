package farwatt.language;

/**
 * An expression ready to be worked out.
 *
 * @param type of its value
 * @param uses all it may look at
 */
public record Planned(Formula formula, Type type, Uses uses) {}
