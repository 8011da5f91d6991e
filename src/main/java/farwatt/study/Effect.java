package farwatt.study;

/**
 * What moving one input does.
 *
 * @param input its path, type and unit
 * @param now what it holds
 * @param low its value a step down
 * @param high its value a step up
 * @param down what is read then, a step down; a NaN where there is no value
 * @param up the same a step up
 * @param why why there is no value on one side, "" where there is one on both
 * @param size the larger change of what is read; infinite where a value is lost
 */
public record Effect(
        Heading input, double now, double low, double high, double down, double up, String why, double size) {}
