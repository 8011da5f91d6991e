package farwatt.window.frame;

import farwatt.window.remember.Remembered;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What to try first; goes away for good when it was read. */
final class FirstSteps extends HBox {
    private static final String KEY = "first_steps";

    FirstSteps(Remembered remembered) {
        getStyleClass().add("fw-strip");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button seen = new Button("Got it");
        seen.getStyleClass().add("fw-button");
        seen.setMinWidth(USE_PREF_SIZE);
        seen.setOnAction(e -> {
            remembered.put(KEY, "seen");
            show(false);
        });
        getChildren()
                .addAll(
                        step("1  Choose the table runs and type 22 AWG under gauge: the verdict follows."),
                        step("2  Choose a scenario above: what differs is marked."),
                        step("3  Stand on any figure and press F4: how it came about."),
                        gap,
                        seen);
        show(remembered.get(KEY, "").isEmpty());
    }

    private void show(boolean visible) {
        setVisible(visible);
        setManaged(visible);
    }

    private static Label step(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        return label;
    }
}
