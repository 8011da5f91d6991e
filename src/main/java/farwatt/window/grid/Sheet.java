package farwatt.window.grid;

import farwatt.catalogue.Wording;
import farwatt.language.Completion;
import farwatt.plan.Change;
import farwatt.plan.Row;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Notice;
import java.util.List;
import java.util.Optional;

/**
 * What the grid needs from the window around it: what is to be seen, and what a person may do to it. Everything is
 * called on the window's thread and answers at once.
 */
public interface Sheet {
    /**
     * What is to be seen now. Right after {@link #apply} its plan holds the change; values may follow later, with
     * another call of the watchers.
     */
    Shown now();

    /** The decimal sign the person types and reads. */
    Decimal decimal();

    /** What is known about expressions of the plan as it is now. */
    Wording wording();

    /**
     * What a text becomes in a cell.
     *
     * @param id the row's id; "" for a row that is not there yet
     * @param text as typed, with the person's decimal sign; a bare number has the column's unit already
     */
    Filled check(Table table, String id, String name, String text);

    /**
     * What may stand at the caret of a cell's text.
     *
     * @param id the row's id; "" for any row of the table
     * @param name the cell; "" for an expression of any kind
     */
    Completion complete(Table table, String id, String name, String text, int caret);

    /** What is wrong with a row of {@link Table#COLUMNS} that is not there yet. */
    Optional<Notice> checkColumn(Row column);

    /**
     * Makes a change of {@link Shown#plan()} as one step to undo, and calls the watchers.
     *
     * @param what a person calls it
     */
    void apply(String what, Change change);

    /** Shows how the value of a cell came about. */
    void explain(Table table, String id, String name);

    /**
     * Told where the person is now.
     *
     * @param ids of the chosen rows, the one with the cursor first; empty in an empty table
     * @param name of the column with the cursor
     */
    void pointed(Table table, List<String> ids, String name);

    /** Tells the person something that has no place in the grid. */
    void say(Notice notice);

    /** Calls a watcher whenever {@link #now} gives something else. */
    void watch(Runnable watcher);
}
