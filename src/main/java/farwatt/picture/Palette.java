package farwatt.picture;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The colour of every ink. Texts stand out from paper and card with a contrast of at least 4.5 : 1. */
public enum Palette {
    /** For print and bright rooms. */
    LIGHT(
            "light", 0xFBFAF6, 0xFFFFFF, 0x5B6470, 0x35586A, 0x1B2126, 0x515A63, 0x1F6478, 0xD9DEDF, 0x1D6A43, 0x8A4B00,
            0xA8201A, 0x44344E),
    /** For dark rooms. */
    DARK(
            "dark", 0x14181B, 0x1F262B, 0x8B98A3, 0x7FAFC2, 0xF1F3F4, 0xB6BFC7, 0x7CC3D6, 0x3A444C, 0x71D49C, 0xF2B45F,
            0xFF9C90, 0xCFC1DA),
    /** For eyes that need it. */
    CONTRAST(
            "contrast",
            0x000000,
            0x000000,
            0xFFFFFF,
            0xFFFFFF,
            0xFFFFFF,
            0xFFFFFF,
            0x7FE9FF,
            0x5A5A5A,
            0x6CFFA6,
            0xFFD84A,
            0xFF9E94,
            0xE6CCFF);

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // made once, never changed
    private final Map<Ink, Integer> colours = new EnumMap<>(Ink.class);

    Palette(String word, int... colours) {
        this.word = word;
        for (Ink ink : Ink.values()) {
            this.colours.put(ink, colours[ink.ordinal()]);
        }
    }

    /** The word on the command line. */
    public String word() {
        return word;
    }

    /** The palette of this word. */
    public static Optional<Palette> of(String word) {
        for (Palette palette : values()) {
            if (palette.word.equals(word)) {
                return Optional.of(palette);
            }
        }
        return Optional.empty();
    }

    /** Red, green and blue in the lower 24 bits. */
    public int rgb(Ink ink) {
        return colours.getOrDefault(ink, 0);
    }

    /**
     * Contrast of two colours, 1 to 21.
     *
     * <p>Source: Web Content Accessibility Guidelines 2.1, contrast ratio and relative luminance.
     */
    public static double contrast(int one, int other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
