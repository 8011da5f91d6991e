package farwatt.picture;

/** Something to draw with: a file or a window. Lengths in points, y downwards. */
public interface Pen {
    /** Inks by what they stand for; what colour that is, the pen knows. */
    enum Ink {
        INK,
        QUIET,
        PAPER,
        CARD,
        MARK,
        FAIL,
        WARN,
        GOOD
    }

    /** A line of several stretches; dashes are empty for an unbroken one. */
    void line(double[] xs, double[] ys, double thick, double[] dashes, Ink ink);

    /** A filled shape. */
    void area(double[] xs, double[] ys, Ink ink);

    /**
     * A text.
     *
     * @param y its baseline
     * @param size height of its letters
     */
    void text(String text, double x, double y, double size, Weight weight, Ink ink);

    /** How heavy letters are. */
    enum Weight {
        PLAIN,
        BOLD
    }
}
