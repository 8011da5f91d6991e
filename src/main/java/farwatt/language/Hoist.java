package farwatt.language;

import java.util.Optional;

/** Takes gathers out of formulas that are the same in every cell, so that they are worked out once. */
@FunctionalInterface
public interface Hoist {
    /** Leaves every gather where it is. */
    Hoist NONE = gather -> Optional.empty();

    /** The cell to read instead; empty to leave the gather in the formula. Asked only for those that stand alone. */
    Optional<Ref.Cell> lift(GatherPlan gather);
}
