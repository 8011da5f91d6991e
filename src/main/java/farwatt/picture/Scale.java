package farwatt.picture;

import java.util.List;

/**
 * An axis of single steps, which may be quantities, gauges or words.
 *
 * @param name what is varied
 * @param steps each step as a person reads it, with its unit
 */
public record Scale(String name, List<String> steps) {
    public Scale {
        steps = List.copyOf(steps);
    }
}
