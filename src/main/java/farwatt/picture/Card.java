package farwatt.picture;

import farwatt.plan.Table;
import java.util.List;
import java.util.Optional;

/**
 * One node of the diagram.
 *
 * @param table where its row stands in the plan
 * @param id its row
 * @param role what it is
 * @param box the card
 * @param mark what is said of it
 * @param markBox where the mark's shape stands
 * @param bar its reserve; empty where there are no figures
 * @param words everything written on the card
 * @param said all of it in one sentence, for screen readers
 */
public record Card(
        Table table,
        String id,
        Role role,
        Box box,
        Mark mark,
        Box markBox,
        Optional<Bar> bar,
        List<Words> words,
        String said) {
    public Card {
        words = List.copyOf(words);
    }
}
