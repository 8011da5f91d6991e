package farwatt.window.console;

import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Moves the keyboard on from parts that would take the Tab for themselves. */
final class Focus {
    private Focus() {}

    static void next(Node from, boolean back) {
        // a text area lets go of the keyboard at Tab with the control key held
        Event.fireEvent(from, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, back, true, false, false));
    }
}
