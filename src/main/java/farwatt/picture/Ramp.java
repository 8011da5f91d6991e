package farwatt.picture;

/**
 * Colours from little to much that grow steadily lighter, from blue to yellow: the order can be seen with any kind of
 * colour vision and in grey. Our own steps.
 */
final class Ramp {
    private static final int[] STEPS = {0x12224D, 0x2F4770, 0x5A6B7C, 0x8B8F7B, 0xBFB26C, 0xF5DE72};

    private Ramp() {}

    /** The colour for a share of the way, 0 to 1. */
    static int rgb(double share) {
        double at = Math.max(0, Math.min(1, share)) * (STEPS.length - 1);
        int below = Math.min(STEPS.length - 2, (int) at);
        double part = at - below;
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int from = STEPS[below] >> shift & 255;
            int to = STEPS[below + 1] >> shift & 255;
            rgb |= (int) Math.round(from + (to - from) * part) << shift;
        }
        return rgb;
    }

    /** Black or white, whichever stands out more. */
    static int text(int ground) {
        return Palette.contrast(ground, 0) >= Palette.contrast(ground, 0xFFFFFF) ? 0 : 0xFFFFFF;
    }
}
