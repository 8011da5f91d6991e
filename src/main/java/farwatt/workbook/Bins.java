package farwatt.workbook;

import farwatt.quantity.Unit;
import farwatt.study.Heading;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Values counted by ranges that begin and end on round figures.
 *
 * @param counts range in words → how many values lie in it, in ascending order
 */
record Bins(Map<String, Integer> counts) {
    private static final int ABOUT = 20;

    Bins {
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    }

    /** @param values inside; those without a number are not counted */
    static Bins of(Unit unit, double[] values) {
        double[] shown = Arrays.stream(values)
                .filter(Double::isFinite)
                .map(unit::fromInside)
                .sorted()
                .toArray();
        Map<String, Integer> counts = new LinkedHashMap<>();
        if (shown.length == 0) {
            return new Bins(counts);
        }
        double least = shown[0];
        double greatest = shown[shown.length - 1];
        if (greatest - least <= 1e-12 * Math.max(Math.abs(greatest), Math.abs(least))) {
            counts.put(new BigDecimal(least).round(new java.math.MathContext(6)).toPlainString(), shown.length);
            return new Bins(counts);
        }
        BigDecimal step = round((greatest - least) / ABOUT);
        BigDecimal from =
                new BigDecimal(least).divide(step, 0, RoundingMode.FLOOR).multiply(step);
        int at = 0;
        while (at < shown.length) {
            BigDecimal to = from.add(step);
            int before = at;
            while (at < shown.length && shown[at] < to.doubleValue()) {
                at++;
            }
            counts.put(from.toPlainString() + " to " + to.toPlainString(), at - before);
            from = to;
        }
        return new Bins(counts);
    }

    /** The round figure at or above: 1, 2 or 5 times a power of ten. */
    private static BigDecimal round(double wanted) {
        int power = (int) Math.floor(Math.log10(wanted));
        for (int digit : new int[] {1, 2, 5}) {
            BigDecimal step = plain(digit, power);
            if (step.doubleValue() >= wanted) {
                return step;
            }
        }
        return plain(1, power + 1);
    }

    private static BigDecimal plain(int digit, int power) {
        BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
        return step.scale() < 0 ? step.setScale(0, RoundingMode.UNNECESSARY) : step;
    }

    /** Values that are words, counted by word. */
    static Bins ofAnswers(Heading heading, double[] values) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (double value :
                Arrays.stream(values).filter(Double::isFinite).sorted().toArray()) {
            counts.merge(heading.text(value), 1, Integer::sum);
        }
        return new Bins(counts);
    }
}
