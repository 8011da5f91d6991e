package farwatt.window.mark;

import farwatt.report.Level;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.shape.SVGPath;

/** A shape and a word for how things stand. Every state has a shape of its own. */
public enum Mark {
    GOOD("Holds", "fw-good", "M1 7 L3 5 L6 8 L12 1 L14 3 L6 12 Z"),
    FAIL(
            "Fails",
            "fw-fail",
            "M7 -1 L15 7 L7 15 L-1 7 Z M4.2 5 L6.2 7 L4.2 9 L5 9.8 L7 7.8 L9 9.8 L9.8 9 L7.8 7 L9.8 5 L9 4.2 "
                    + "L7 6.2 L5 4.2 Z"),
    WARN("Mind", "fw-warn", "M7 0 L14 13 H0 Z"),
    NOTE("Note", "fw-note", "M3 6 A4 4 0 1 0 11 6 A4 4 0 1 0 3 6 Z"),
    BUSY("Working", "fw-note", "M0 5 H3 V8 H0 Z M5 5 H8 V8 H5 Z M10 5 H13 V8 H10 Z");

    private final String word;
    private final String style;
    private final String path;

    Mark(String word, String style, String path) {
        this.word = word;
        this.style = style;
        this.path = path;
    }

    /** The mark of a level. */
    public static Mark of(Level level) {
        return switch (level) {
            case FAIL -> FAIL;
            case WARN -> WARN;
            default -> NOTE;
        };
    }

    public String word() {
        return word;
    }

    /** Shape and word side by side. */
    public HBox node() {
        SVGPath shape = new SVGPath();
        shape.setContent(path);
        shape.setFillRule(javafx.scene.shape.FillRule.EVEN_ODD);
        shape.getStyleClass().add("shape-mark");
        Label label = new Label(word);
        label.getStyleClass().add("fw-word");
        label.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        HBox box = new HBox(4, shape, label);
        box.setAlignment(Pos.CENTER_LEFT);
        box.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        box.getStyleClass().add(style);
        box.setAccessibleText(word);
        return box;
    }
}
