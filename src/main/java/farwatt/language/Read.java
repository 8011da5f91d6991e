package farwatt.language;

/**
 * A column a formula may read.
 *
 * @param way to the row at which it is read
 * @param type of what is read
 * @param expr the name or path in the text
 */
public record Read(Column column, Way way, Type type, Expr expr) {}
