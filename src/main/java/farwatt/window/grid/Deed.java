package farwatt.window.grid;

import static javafx.scene.input.KeyCombination.ALT_DOWN;
import static javafx.scene.input.KeyCombination.SHIFT_DOWN;
import static javafx.scene.input.KeyCombination.SHORTCUT_DOWN;

import farwatt.report.Messages;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** What can be done in the grid besides moving about: its name in menus and its key. */
enum Deed {
    EDIT(GridCode.DO_EDIT, KeyCode.F2),
    EXPLAIN(GridCode.DO_EXPLAIN, KeyCode.F4),
    COPY(GridCode.DO_COPY, KeyCode.C, SHORTCUT_DOWN),
    COPY_SHOWN(GridCode.DO_COPY_SHOWN, KeyCode.C, SHORTCUT_DOWN, SHIFT_DOWN),
    CUT(GridCode.DO_CUT, KeyCode.X, SHORTCUT_DOWN),
    PASTE(GridCode.DO_PASTE, KeyCode.V, SHORTCUT_DOWN),
    CLEAR(GridCode.DO_CLEAR, KeyCode.DELETE),
    REPEAT(GridCode.DO_REPEAT, KeyCode.DOWN, ALT_DOWN),
    INSERT(GridCode.DO_INSERT, KeyCode.INSERT),
    DUPLICATE(GridCode.DO_DUPLICATE, KeyCode.INSERT, ALT_DOWN),
    REMOVE(GridCode.DO_REMOVE, KeyCode.DELETE, ALT_DOWN),
    SORT(GridCode.DO_SORT, KeyCode.F5),
    FILTER(GridCode.DO_FILTER, KeyCode.F5, SHIFT_DOWN),
    HOLD(GridCode.DO_HOLD, KeyCode.F3),
    HIDE(GridCode.DO_HIDE, KeyCode.F3, SHIFT_DOWN),
    COLUMNS(GridCode.DO_COLUMNS, KeyCode.F9),
    OWN(GridCode.DO_OWN, KeyCode.F9, SHIFT_DOWN),
    OWN_CHANGE(GridCode.DO_OWN_CHANGE, KeyCode.F9, ALT_DOWN),
    OWN_REMOVE(GridCode.DO_OWN_REMOVE, KeyCode.F3, ALT_DOWN),
    NARROWER(GridCode.DO_NARROWER, KeyCode.LEFT, ALT_DOWN),
    WIDER(GridCode.DO_WIDER, KeyCode.RIGHT, ALT_DOWN),
    FIT(GridCode.DO_FIT, KeyCode.UP, ALT_DOWN),
    FIND(GridCode.DO_FIND, KeyCode.F, SHORTCUT_DOWN);

    private final GridCode code;

    @SuppressWarnings("ImmutableEnumChecker") // a key combination does not change
    private final KeyCodeCombination key;

    Deed(GridCode code, KeyCode key, KeyCombination.Modifier... held) {
        this.code = code;
        this.key = new KeyCodeCombination(key, held);
    }

    String title() {
        return Messages.text(code);
    }

    KeyCodeCombination key() {
        return key;
    }
}
