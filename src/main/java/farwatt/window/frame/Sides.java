package farwatt.window.frame;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;

/**
 * Diagram, grid and reasons: side by side where there is room, one at a time where letters are large for the window.
 * For the window's thread.
 */
final class Sides extends BorderPane {
    /** What stands beside each other. */
    enum Part {
        DIAGRAM("Diagram"),
        GRID("Grid"),
        WHY("Why and findings");

        private final String word;

        Part(String word) {
            this.word = word;
        }
    }

    /** Below so many letters' heights of width there is room for one at a time. */
    private static final double LEAST = 76;
    /** Where the diagram ends and where the reasons begin. */
    private static final double[] DIVIDERS = {0.27, 0.75};

    private final Map<Part, Node> parts = new EnumMap<>(Part.class);
    private final Map<Part, ToggleButton> words = new EnumMap<>(Part.class);
    private final HBox choice = new HBox(2);
    private final SplitPane beside = new SplitPane();
    private final Runnable changed;
    private double letter = 13;
    private boolean single;
    private Part shown = Part.GRID;

    /** @param changed told when it becomes one at a time or side by side */
    Sides(Node diagram, Node grid, Node why, Runnable changed) {
        this.changed = changed;
        parts.put(Part.DIAGRAM, diagram);
        parts.put(Part.GRID, grid);
        parts.put(Part.WHY, why);
        beside.setOrientation(Orientation.HORIZONTAL);
        for (Part part : Part.values()) {
            ToggleButton word = new ToggleButton(part.word);
            word.getStyleClass().add("fw-corner");
            word.setOnAction(e -> show(part));
            words.put(part, word);
            choice.getChildren().add(word);
        }
        widthProperty().addListener(o -> arrange());
        lay();
    }

    /** Letters have another height now, in pixels. */
    void letters(double pixels) {
        letter = pixels;
        arrange();
    }

    private void arrange() {
        boolean now = getWidth() > 0 && getWidth() < LEAST * letter;
        if (now != single) {
            single = now;
            lay();
            changed.run();
        }
    }

    private void lay() {
        beside.getItems().clear();
        setCenter(null);
        if (single) {
            setTop(choice);
            show(shown);
        } else {
            setTop(null);
            beside.getItems().addAll(parts.values());
            beside.setDividerPositions(DIVIDERS);
            setCenter(beside);
        }
    }

    /** Brings a part into view. */
    void show(Part part) {
        shown = part;
        words.forEach((each, word) -> word.setSelected(each == part));
        if (single && getCenter() != parts.get(part)) {
            setCenter(parts.get(part));
        }
    }

    /** True where there is room for one part at a time. */
    boolean isSingle() {
        return single;
    }
}
