package farwatt.catalogue;

import farwatt.quantity.Typed;
import farwatt.report.Notice;
import java.util.Optional;

/** What a cell was understood as. */
public sealed interface Reading {
    /** Nothing stands there; the default takes its place. */
    record Empty() implements Reading {}

    /**
     * One quantity.
     *
     * @param inside its inside value
     * @param typed as typed, the column's unit put in where none was
     * @param notice what to tell about it though it holds: a unit that was missing, a value out of the usual
     */
    record Literal(double inside, Typed typed, Optional<Notice> notice) implements Reading {}

    /**
     * A word of the column's list.
     *
     * @param index its place in the list
     */
    record Word(int index, String word) implements Reading {}

    record YesNo(boolean yes) implements Reading {}

    /** The id of a row as typed; whether there is such a row is not known here. */
    record RowId(String id) implements Reading {}

    record TextValue(String text) implements Reading {}

    /** Nothing of the above, so it must be an expression. */
    record Expression(String text) implements Reading {}

    /** Something that the column cannot hold. */
    record Wrong(Notice notice) implements Reading {}
}
