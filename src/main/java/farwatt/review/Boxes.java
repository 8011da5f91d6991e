package farwatt.review;

import java.util.Arrays;

/**
 * How many boxes of cable some runs need, each run cut whole from one box. Up to twelve runs the fewest there can be;
 * for more, each run, the longest first, from the box that it leaves least in.
 */
final class Boxes {
    private static final int EXACT = 12;
    private static final double ROUNDING = 1e-9;

    private Boxes() {}

    /**
     * Packs runs.
     *
     * @param cuts lengths in m, none above the box
     * @param length of a box in m; cuts that fill it but for rounding fit
     */
    static int count(double[] cuts, double length) {
        double box = length * (1 + ROUNDING);
        return cuts.length <= EXACT ? fewest(cuts, box) : bestFit(cuts, box);
    }

    /** By sets of runs: the fewest boxes for each set, and with so few the least taken from the last one. */
    private static int fewest(double[] cuts, double box) {
        int sets = 1 << cuts.length;
        int[] boxes = new int[sets];
        double[] taken = new double[sets];
        Arrays.fill(boxes, Integer.MAX_VALUE);
        boxes[0] = 0;
        taken[0] = box;
        for (int set = 0; set < sets; set++) {
            for (int i = 0; i < cuts.length; i++) {
                int more = set | 1 << i;
                if (more == set) {
                    continue;
                }
                boolean fits = taken[set] + cuts[i] <= box;
                int count = fits ? boxes[set] : boxes[set] + 1;
                double last = fits ? taken[set] + cuts[i] : cuts[i];
                if (count < boxes[more] || (count == boxes[more] && last < taken[more])) {
                    boxes[more] = count;
                    taken[more] = last;
                }
            }
        }
        return boxes[sets - 1];
    }

    /** Best fit, longest first. */
    static int bestFit(double[] cuts, double box) {
        double[] sorted = cuts.clone();
        Arrays.sort(sorted);
        double[] left = new double[cuts.length];
        int count = 0;
        for (int i = sorted.length - 1; i >= 0; i--) {
            int best = -1;
            for (int b = 0; b < count; b++) {
                if (left[b] >= sorted[i] && (best < 0 || left[b] < left[best])) {
                    best = b;
                }
            }
            if (best < 0) {
                best = count++;
                left[best] = box;
            }
            left[best] -= sorted[i];
        }
        return count;
    }
}
