package farwatt.picture;

import java.util.Comparator;
import java.util.List;

/**
 * What each input does to a value when it goes a step down and a step up, as bars on both sides of the value as it is;
 * the strongest first.
 *
 * @param caption what stands above
 * @param of what the value is
 * @param base the value as the plan stands, SI
 * @param inputs in any order
 */
public record Sensitivity(Caption caption, Measure of, double base, List<Input> inputs) implements Chart {
    /**
     * One input.
     *
     * @param name as a person asked for it
     * @param lower what was put in a step down, with unit
     * @param below the value then, SI; NaN where there is none
     * @param upper what was put in a step up
     * @param above the value then
     */
    public record Input(String name, String lower, double below, String upper, double above) {}

    public Sensitivity {
        inputs = List.copyOf(inputs);
    }

    List<Input> ordered() {
        return inputs.stream()
                .sorted(Comparator.comparingDouble(this::effect).reversed().thenComparing(Input::name))
                .toList();
    }

    private double effect(Input input) {
        return Math.max(apart(input.below()), apart(input.above()));
    }

    /** Without a value the effect is as large as can be: the plan breaks there. */
    private double apart(double value) {
        double apart = Math.abs(value - base);
        return Double.isFinite(apart) ? apart : Double.MAX_VALUE;
    }

    @Override
    public Picture picture(Palette palette) {
        return new SensitivityPicture(this, palette);
    }
}
