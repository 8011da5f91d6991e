package farwatt.language;

import farwatt.report.Span;
import java.util.List;

/**
 * What may stand in a place.
 *
 * @param replace the stretch of the text that an offer takes the place of
 * @param offers best first
 */
public record Completion(Span replace, List<Offer> offers) {
    public Completion {
        offers = List.copyOf(offers);
    }

    /**
     * One way to go on.
     *
     * @param text to be put in
     * @param item what it is
     */
    public record Offer(String text, Item item) {}
}
