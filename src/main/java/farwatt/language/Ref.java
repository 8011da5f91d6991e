package farwatt.language;

/** What a name refers to. */
public sealed interface Ref {
    /** The name as the host spells it. */
    String name();

    /** A column, read at the row the name is asked of. */
    record Reads(String name, Column column, Type type) implements Ref {}

    /** One fixed cell: a value a person named, a name of the plan. */
    record Cell(String name, Column column, int row, Type type) implements Ref {}

    /**
     * A relation from the row the name is asked of.
     *
     * @param kind of the rows it leads to
     */
    record Leads(String name, Link link, String kind) implements Ref {}

    /**
     * A row named by its id.
     *
     * @param name the id
     */
    record Fixed(String name, int row, String kind) implements Ref {}
}
