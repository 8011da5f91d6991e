package farwatt.window.frame;

import farwatt.picture.Palette;
import farwatt.window.desk.UnitsShown;
import farwatt.window.remember.Remembered;
import java.util.List;

/** How the window looks: theme, size, units; remembered. */
final class Look {
    /** A theme's style class and what it is called. */
    enum Theme {
        LIGHT("fw-light", "Light", Palette.LIGHT),
        DARK("fw-dark", "Dark", Palette.DARK),
        HIGH("fw-high", "High contrast", Palette.CONTRAST);

        final String style;
        final String word;
        final Palette palette;

        Theme(String style, String word, Palette palette) {
            this.style = style;
            this.word = word;
            this.palette = palette;
        }
    }

    static final List<Integer> SIZES = List.of(100, 125, 150, 175, 200);
    private static final double PIXELS = 13;

    private final Frame frame;
    private final Remembered remembered;

    Look(Frame frame, Remembered remembered) {
        this.frame = frame;
        this.remembered = remembered;
    }

    void theme(Theme theme) {
        remembered.put("theme", theme.name());
        apply();
    }

    void size(int percent) {
        remembered.put("size", String.valueOf(percent));
        apply();
    }

    void units(UnitsShown units) {
        remembered.put("units", units.name());
        frame.top().showUnits(units);
    }

    private Theme theme() {
        String kept = remembered.get("theme", "");
        for (Theme theme : Theme.values()) {
            if (theme.name().equals(kept)) {
                return theme;
            }
        }
        return Theme.LIGHT;
    }

    /** The colours of pictures. */
    Palette palette() {
        return theme().palette;
    }

    private int size() {
        String kept = remembered.get("size", "100");
        return SIZES.stream()
                .filter(size -> kept.equals(String.valueOf(size)))
                .findFirst()
                .orElse(100);
    }

    /** Puts theme and size on the window. */
    void apply() {
        for (Theme theme : Theme.values()) {
            frame.getStyleClass().remove(theme.style);
        }
        frame.getStyleClass().add(theme().style);
        frame.colour(palette());
        frame.setStyle("-fx-font-size: " + PIXELS * size() / 100 + "px;");
    }
}
