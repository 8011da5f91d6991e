package farwatt.window.frame;

import farwatt.window.remember.Remembered;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** What to try first, step by step; goes away for good when it was read. */
final class FirstSteps extends HBox {
    private static final String KEY = "first_steps";
    private static final List<String> STEPS = List.of(
            "Choose the table runs and type 26 under gauge, in the row trunk: the verdict follows.",
            "Choose a scenario above: what differs is marked.",
            "Stand on any figure and press F4: how it came about.");

    private final Label step = new Label();
    private int at;

    FirstSteps(Remembered remembered) {
        getStyleClass().add("fw-strip");
        step.setMaxWidth(Double.MAX_VALUE);
        step.setMinWidth(0);
        step.setWrapText(true);
        HBox.setHgrow(step, Priority.ALWAYS);
        Button next = button("Next step", () -> tell(at + 1));
        Button seen = button("Got it", () -> {
            remembered.put(KEY, "seen");
            show(false);
        });
        getChildren().addAll(step, next, seen);
        tell(0);
        show(remembered.get(KEY, "").isEmpty());
    }

    private static Button button(String text, Runnable action) {
        Button button = new Button(text);
        button.getStyleClass().add("fw-button");
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }

    private void tell(int which) {
        at = which % STEPS.size();
        step.setText("To try, " + (at + 1) + " of " + STEPS.size() + ": " + STEPS.get(at));
    }

    private void show(boolean visible) {
        setVisible(visible);
        setManaged(visible);
    }
}
