package farwatt.picture;

import java.awt.Color;

/** Colours of pictures; every ink keeps 4.5 : 1 against paper and cards. */
public enum Palette {
    LIGHT(0x1d2b2f, 0x5d6460, 0xffffff, 0xf7f5ec, 0x0b5560, 0x9b1c1c, 0x7a4b00, 0x1f5c2e),
    DARK(0xe9ebe4, 0xa3aeab, 0x161c1e, 0x21292b, 0x7fd0cf, 0xff9c8f, 0xf2c46d, 0x93d6a0),
    HIGH(0xffffff, 0xe0e0e0, 0x000000, 0x000000, 0xffe94d, 0xffb3a8, 0xffd84d, 0xa8ffb0);

    private final int ink;
    private final int quiet;
    private final int paper;
    private final int card;
    private final int mark;
    private final int fail;
    private final int warn;
    private final int good;

    Palette(int ink, int quiet, int paper, int card, int mark, int fail, int warn, int good) {
        this.ink = ink;
        this.quiet = quiet;
        this.paper = paper;
        this.card = card;
        this.mark = mark;
        this.fail = fail;
        this.warn = warn;
        this.good = good;
    }

    /** The colour as red, green and blue in one number. */
    public int rgb(Pen.Ink wanted) {
        return switch (wanted) {
            case INK -> ink;
            case QUIET -> quiet;
            case PAPER -> paper;
            case CARD -> card;
            case MARK -> mark;
            case FAIL -> fail;
            case WARN -> warn;
            case GOOD -> good;
        };
    }

    Color color(Pen.Ink ink) {
        return new Color(rgb(ink));
    }
}
