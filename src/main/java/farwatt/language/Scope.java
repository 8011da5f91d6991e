package farwatt.language;

import farwatt.quantity.Units;
import java.util.Collection;
import java.util.Optional;

/**
 * What a text may refer to; given by the host. Names are compared as they stand, ids of rows without regard to case.
 * Kinds of rows are the host's own words, such as "run".
 */
public interface Scope {
    /** A bare name: this row's own value or relation, a value a person named, a name of the plan, a row; in this order. */
    Optional<Ref> bare(String name);

    /** A row by its id, as between single quotes. */
    Optional<Ref.Fixed> row(String id);

    /** The kind of the row whose cell it is; empty where the text stands in no row. */
    Optional<String> self();

    /** A name of a row of a kind: its value or its relation. */
    Optional<Ref> member(String kind, String name);

    /** A name of the plan. */
    Optional<Ref> plan(String name);

    /** A table for a gather. */
    Optional<Source> table(String name);

    /** The kind that covers both, if rows of the two kinds can be the same row or take each other's place. */
    default Optional<String> join(String kind, String other) {
        return kind.equals(other) ? Optional.of(kind) : Optional.empty();
    }

    /** What the inner names of a gather over rows of a kind refer to; {@code this} stays. */
    Scope inside(String kind);

    /** Everything a bare name may be. */
    Collection<Item> items();

    /** The names of a row of a kind. */
    Collection<Item> members(String kind);

    /** The names of the plan. */
    Collection<Item> planItems();

    /** The tables a gather may go over. */
    Collection<Item> tables();

    /** What rows of a kind are called in a sentence, with article: "a run". */
    String called(String kind);

    /** The number of a text in the host's pool; equal texts have equal numbers. */
    double word(String text);

    /** The units that may be typed. */
    Units units();
}
