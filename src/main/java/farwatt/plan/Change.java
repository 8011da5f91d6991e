package farwatt.plan;

import java.util.List;
import java.util.Optional;

/** One change of a plan. Names rows by id, never by object, so that a journal can be replayed. */
public sealed interface Change {
    /**
     * Fills, replaces or empties a cell.
     *
     * @param id the row's id; ignored for {@link Table#PLAN}
     * @param cell empty to empty the cell
     */
    record SetCell(Table table, String id, String name, Optional<Cell> cell) implements Change {}

    /** Puts a row at a place. */
    record AddRow(Table table, int place, Row row) implements Change {}

    /** Takes the row at a place away; {@code id} must be its id. */
    record DropRow(Table table, int place, String id) implements Change {}

    /** Replaces the row at a place by another (its id included); cells that name it are other changes. */
    record ReplaceRow(Table table, int place, Row row) implements Change {}

    /** Replaces all scenarios. */
    record SetScenarios(List<Scenario> scenarios) implements Change {
        public SetScenarios {
            scenarios = List.copyOf(scenarios);
        }
    }

    /** Replaces a part of the file that is only kept, such as studies; empty takes it away. */
    record SetRest(String key, Optional<String> json) implements Change {}

    /**
     * Several changes that are one step for a person.
     *
     * @param label what a person calls it, such as "Paste 3 rows"
     */
    record Batch(String label, List<Change> changes) implements Change {
        public Batch {
            changes = List.copyOf(changes);
        }
    }
}
