package farwatt.language;

import farwatt.report.Span;
import java.util.Optional;

/** A word to be completed; the checker leaves here what it found out about its place. */
final class Hole {
    /** What may stand in the place. */
    sealed interface Place {}

    /** A value. */
    record Value(Scope scope, Type wanted) implements Place {}

    /** A name of a row of a kind. */
    record Member(Scope scope, String kind) implements Place {}

    /** A name of the plan. */
    record OfPlan(Scope scope) implements Place {}

    /** A function or a gather whose parenthesis is there already. */
    record Called() implements Place {}

    /** A table. */
    record Table(Scope scope) implements Place {}

    private final Span span;
    private Optional<Place> place = Optional.empty();

    Hole(Span span) {
        this.span = span;
    }

    Span span() {
        return span;
    }

    Optional<Place> place() {
        return place;
    }

    /** True if the word at a place is the one to be completed. */
    boolean fill(Span at, Place found) {
        boolean here = span.equals(at);
        if (here) {
            place = Optional.of(found);
        }
        return here;
    }

    /** No word at all. */
    static Hole none() {
        return new Hole(new Span(Integer.MAX_VALUE, Integer.MAX_VALUE));
    }
}
