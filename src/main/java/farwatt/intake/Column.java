package farwatt.intake;

import farwatt.quantity.Decimal;
import java.util.Optional;

/**
 * A column of a list and what it means.
 *
 * @param at counted from 0
 * @param heading its heading taken apart
 * @param meaning what it means
 * @param confidence 0..1
 * @param reason what speaks for it
 * @param decimal which decimal mark its numbers use; empty where nothing decides
 */
record Column(
        int at, HeadingText heading, Meaning meaning, double confidence, String reason, Optional<Decimal> decimal) {
    Column(int at, HeadingText heading, Guess guess) {
        this(at, heading, guess.meaning(), guess.confidence(), guess.reason(), Optional.empty());
    }

    Column with(Optional<Decimal> found) {
        return new Column(at, heading, meaning, confidence, reason, found);
    }

    Column meaning(Meaning other) {
        return new Column(at, heading, other, confidence, "an answer", decimal);
    }

    Column with(ListUnit unit) {
        return new Column(at, heading.with(unit), meaning, confidence, reason, decimal);
    }

    String shown() {
        return heading.shown();
    }
}
