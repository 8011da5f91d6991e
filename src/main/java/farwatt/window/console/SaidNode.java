package farwatt.window.console;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Printed text that can be chosen and copied. For the window's thread. */
final class SaidNode extends TextArea {
    private static final int MOST_ROWS = 14;

    SaidNode(String text) {
        getStyleClass().addAll("fw-console", "fw-said");
        setEditable(false);
        setAccessibleText("Printed text");
        // Tab goes on to the next part of the answer
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.TAB) {
                e.consume();
                Focus.next(this, e.isShiftDown());
            }
        });
        show(text);
    }

    void show(String text) {
        if (!text.equals(getText())) {
            setText(text);
            int rows = (int)
                    Math.min(MOST_ROWS, text.chars().filter(c -> c == '\n').count() + 1);
            setPrefRowCount(rows);
        }
    }
}
