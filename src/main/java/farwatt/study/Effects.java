package farwatt.study;

import java.util.List;

/**
 * What every input does to one expression.
 *
 * @param read what was read
 * @param now its value as things stand
 * @param effects the largest first; a lost value counts as the largest; inputs without any effect are left out
 * @param without how many inputs have no effect
 */
public record Effects(Heading read, double now, List<Effect> effects, int without) {
    public Effects {
        effects = List.copyOf(effects);
    }
}
