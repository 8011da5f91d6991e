package farwatt.window;

import javafx.scene.paint.Color;

/** Contrast of colours as WCAG 2.2 defines it. */
public final class Contrast {
    private Contrast() {}

    /** The ratio of two colours, 1 to 21. */
    public static double of(Color one, Color other) {
        double a = light(one);
        double b = light(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double light(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(double part) {
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
