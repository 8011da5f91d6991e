package farwatt.picture;

import java.awt.Color;
import java.util.EnumMap;
import java.util.Map;

/** Colours of pictures; every ink keeps 4.5 : 1 against paper and cards. */
public enum Palette {
    LIGHT(0x1d2b2f, 0x5d6460, 0xffffff, 0xf7f5ec, 0x0b5560, 0x9b1c1c, 0x7a4b00, 0x1f5c2e),
    DARK(0xe9ebe4, 0xa3aeab, 0x161c1e, 0x21292b, 0x7fd0cf, 0xff9c8f, 0xf2c46d, 0x93d6a0),
    HIGH(0xffffff, 0xe0e0e0, 0x000000, 0x000000, 0xffe94d, 0xffb3a8, 0xffd84d, 0xa8ffb0);

    private final Map<Pen.Ink, Integer> inks = new EnumMap<>(Pen.Ink.class);

    Palette(int ink, int quiet, int paper, int card, int mark, int fail, int warn, int good) {
        inks.put(Pen.Ink.INK, ink);
        inks.put(Pen.Ink.QUIET, quiet);
        inks.put(Pen.Ink.PAPER, paper);
        inks.put(Pen.Ink.CARD, card);
        inks.put(Pen.Ink.MARK, mark);
        inks.put(Pen.Ink.FAIL, fail);
        inks.put(Pen.Ink.WARN, warn);
        inks.put(Pen.Ink.GOOD, good);
    }

    /** The colour as red, green and blue in one number. */
    public int rgb(Pen.Ink ink) {
        return inks.getOrDefault(ink, 0);
    }

    Color color(Pen.Ink ink) {
        return new Color(rgb(ink));
    }
}
