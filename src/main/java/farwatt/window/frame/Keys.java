package farwatt.window.frame;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyCombination.Modifier;
import javafx.scene.input.KeyEvent;

/** Keys that hold everywhere in the window. */
final class Keys {
    private static final Modifier CTRL = KeyCombination.SHORTCUT_DOWN;
    private static final Modifier SHIFT = KeyCombination.SHIFT_DOWN;

    private final Frame frame;
    private final Map<KeyCombination, Runnable> keys = new LinkedHashMap<>();
    private int area;

    Keys(Frame frame, FileDoings files, ScenarioDoings scenarios) {
        this.frame = frame;
        Doings doings = new Doings(frame);
        on(KeyCode.Z, doings::undo, CTRL);
        on(KeyCode.Y, doings::redo, CTRL);
        on(KeyCode.Z, doings::redo, CTRL, SHIFT);
        on(KeyCode.U, doings::units, CTRL);
        on(KeyCode.N, scenarios::begin, CTRL, SHIFT);
        on(KeyCode.S, () -> committed(files::save), CTRL);
        on(KeyCode.S, () -> committed(files::saveAs), CTRL, SHIFT);
        on(KeyCode.O, () -> committed(files::open), CTRL);
        on(KeyCode.N, () -> committed(files::begin), CTRL);
        on(KeyCode.F6, this::nextArea);
        on(KeyCode.F10, frame::study);
        on(KeyCode.F7, this::scripts);
        on(KeyCode.F8, () -> frame.bench().toggle());
        on(KeyCode.F8, () -> frame.bench().toggleWhole(), CTRL);
    }

    private void on(KeyCode code, Runnable action, Modifier... with) {
        keys.put(new KeyCodeCombination(code, with), action);
    }

    private void committed(Runnable then) {
        frame.grid().commit();
        then.run();
    }

    void install() {
        frame.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (frame.isScripting(e)) {
                return;
            }
            for (Map.Entry<KeyCombination, Runnable> key : keys.entrySet()) {
                if (key.getKey().match(e)) {
                    e.consume();
                    key.getValue().run();
                    return;
                }
            }
        });
    }

    private void scripts() {
        frame.grid().commit();
        frame.bench().show(Scripts.WORD);
        frame.scripts().view().enter();
    }

    /** From the grid to the reasons, the findings, the top line, the diagram, the bench, and on to the grid. */
    private void nextArea() {
        area = (area + 1) % (frame.bench().isOpen() ? 6 : 5);
        switch (area) {
            case 1 -> frame.why().enter();
            case 2 -> frame.why().enterFindings();
            case 3 -> frame.top().enter();
            case 4 -> frame.diagram().enter();
            case 5 -> frame.enterBench();
            default -> frame.grid().toCells();
        }
    }
}
