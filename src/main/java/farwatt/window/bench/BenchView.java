package farwatt.window.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The bench below: one thing at a time lies on it; folded away when nothing does. For the window's thread. */
public final class BenchView extends BorderPane {
    private final Map<String, Supplier<? extends Node>> things = new LinkedHashMap<>();
    private final HBox words = new HBox(2);
    private final Runnable folding;
    private final ToggleButton whole = new ToggleButton("Whole height");
    private String lies = "";

    /** @param folding told when it is opened or folded away */
    public BenchView(Runnable folding) {
        this.folding = folding;
        getStyleClass().add("fw-panel");
        Button fold = new Button("Fold away");
        fold.getStyleClass().add("fw-button");
        fold.setTooltip(new Tooltip("F8"));
        fold.setOnAction(e -> fold());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        whole.getStyleClass().add("fw-button");
        whole.setTooltip(new Tooltip("Gives the bench the place of diagram and grid (Ctrl+F8)"));
        whole.setOnAction(e -> folding.run());
        HBox head = new HBox(8, words, gap, whole, fold);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setStyle("-fx-padding: 0.15em 0.6em;");
        setTop(head);
    }

    /** Puts a thing among those that can lie on the bench; it is asked for whenever it is laid there. */
    public void add(String word, Supplier<? extends Node> thing) {
        things.put(word, thing);
        ToggleButton button = new ToggleButton(word);
        button.getStyleClass().add("fw-corner");
        button.setOnAction(e -> show(word));
        words.getChildren().add(button);
    }

    /** Puts a thing on the bench. */
    public void show(String word) {
        boolean wasOpen = isOpen();
        lies = word;
        setCenter(Objects.requireNonNull(things.get(word), word).get());
        words.getChildren()
                .forEach(node -> ((ToggleButton) node)
                        .setSelected(((ToggleButton) node).getText().equals(word)));
        if (!wasOpen) {
            folding.run();
        }
    }

    /** Puts a thing on the bench that wants the place of diagram and grid for as long as it lies there. */
    public void showWhole(String word) {
        whole.setSelected(true);
        show(word);
        folding.run();
    }

    /** Folds it away and gives back the place of diagram and grid. */
    public void done() {
        whole.setSelected(false);
        fold();
    }

    /** Folds it away. */
    public void fold() {
        lies = "";
        setCenter(null);
        folding.run();
    }

    /** Opens it as it was, or folds it away. */
    public void toggle() {
        if (isOpen()) {
            fold();
        } else {
            show(things.keySet().iterator().next());
        }
    }

    /** Takes the keyboard to what lies on it. */
    public void enter() {
        if (getCenter() != null) {
            getCenter().lookupAll("*").stream()
                    .filter(node -> node.isFocusTraversable() && node.isVisible() && !node.isDisabled())
                    .findFirst()
                    .ifPresent(Node::requestFocus);
        }
    }

    /** What can lie on it, by its words. */
    public List<String> places() {
        return List.copyOf(things.keySet());
    }

    /** True where it takes the place of what stands above it. */
    public boolean isWhole() {
        return isOpen() && whole.isSelected();
    }

    /** Takes that place, or gives it back. */
    public void toggleWhole() {
        if (isOpen()) {
            whole.fire();
        }
    }

    /** The word of what lies on it, "" if it is folded away. */
    public String lies() {
        return lies;
    }

    public boolean isOpen() {
        return !lies.isEmpty();
    }
}
