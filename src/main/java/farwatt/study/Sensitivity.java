package farwatt.study;

import farwatt.engine.Knob;
import farwatt.engine.Trials;
import farwatt.engine.Value;
import farwatt.report.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Moves every number that was typed into the plan a step up and down, each by itself, and tells what that does to one
 * expression. A step is a share of the number; temperatures move by a kelvin for each per cent, gauges and counts by
 * one.
 */
public final class Sensitivity {
    /** The step unless said otherwise. */
    public static final double USUAL_STEP = 0.05;

    private static final int BLOCK = 64;

    private Sensitivity() {}

    /**
     * Moves every input.
     *
     * @param share the step, above 0 and below 1
     * @throws Refusal if the expression cannot be understood or is no number, or the step makes no sense
     * @throws java.util.concurrent.CancellationException if that was asked for
     */
    public static Effects of(Ground ground, String read, double share, Effort effort) throws Refusal {
        if (!(share > 0 && share < 1)) {
            throw Refusal.of(StudyCode.BAD_STEP, share);
        }
        Value now = ground.ask(read);
        Heading heading = new Heading(read.strip(), now.type(), now.unit());
        if (!heading.isNumber()) {
            throw Refusal.of(StudyCode.NOT_A_NUMBER, read.strip());
        }
        List<Inputs> inputs = Inputs.of(ground);
        List<Knob> knobs = inputs.stream().map(Inputs::knob).toList();
        double[] read2 = new double[inputs.size() * 2];
        String[] why = new String[inputs.size() * 2];
        try {
            Trials first = Trials.of(ground.plan(), ground.corner(), knobs, List.of(read));
            new Crew(new Moves(inputs, share), 0, List.of(heading), first::another, effort).run(point -> {
                read2[(int) point.number()] = point.inside(0);
                why[(int) point.number()] = point.why(0).orElse("");
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return effects(heading, now, inputs, share, read2, why);
    }

    private static Effects effects(
            Heading heading, Value now, List<Inputs> inputs, double share, double[] read, String[] why) {
        double base = now.isPresent() ? now.inside() : Double.NaN;
        List<Effect> all = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            Inputs input = inputs.get(i);
            double step = input.step(share);
            double down = read[2 * i];
            double up = read[2 * i + 1];
            double size = Math.max(Math.abs(down - base), Math.abs(up - base));
            if (size != 0) {
                String reason = why[2 * i].isEmpty() ? why[2 * i + 1] : why[2 * i];
                all.add(new Effect(
                        input.heading(),
                        input.now(),
                        input.now() - step,
                        input.now() + step,
                        down,
                        up,
                        reason,
                        Double.isNaN(size) ? Double.POSITIVE_INFINITY : size));
            }
        }
        all.sort(Comparator.comparingDouble(Effect::size)
                .reversed()
                .thenComparing(effect -> effect.input().name()));
        return new Effects(heading, base, all, inputs.size() - all.size());
    }

    /** Two points for every input: down, up. */
    private record Moves(List<Inputs> inputs, double share) implements Plot {
        @Override
        public long size() {
            return 2L * inputs.size();
        }

        @Override
        public long blockEnd(long from) {
            return Math.min(size(), from + BLOCK);
        }

        @Override
        public void walk(long from, int count, Trials trials, Visit visit) {
            for (int offset = 0; offset < count; offset++) {
                int input = (int) ((from + offset) / 2);
                trials.put(input, inside(from + offset, 0));
                visit.at(offset);
                trials.put(input, inputs.get(input).now());
            }
        }

        @Override
        public double inside(long point, int knob) {
            Inputs input = inputs.get((int) (point / 2));
            double step = input.step(share);
            return point % 2 == 0 ? input.now() - step : input.now() + step;
        }

        @Override
        public String text(long point, int knob) {
            return inputs.get((int) (point / 2)).heading().text(inside(point, knob));
        }
    }
}
