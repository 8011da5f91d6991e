package farwatt.window.grid;

import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.report.Level;
import java.util.List;
import java.util.Optional;

/** One plan with the values that belong to it, as people see them. Does not change. */
public interface Shown {
    /** The plan whose rows are shown, in its order; places in the other methods are places in its tables. */
    Plan plan();

    /** The tables a person may look into, in their order. */
    List<Table> tables();

    /** How many rows of a table fail. */
    int failing(Table table);

    /** The columns of a table in their order, its identity first, the person's own last. */
    List<Column> columns(Table table);

    /** One cell; called for every visible cell, so it should be quick. */
    Face face(Table table, int place, Column column);

    /** The worst finding on a row, if there is any. */
    Optional<Level> verdict(Table table, int place);
}
