package farwatt.window.console;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyEvent;

/** What keys do in the script. For the window's thread. */
final class ConsoleKeys {
    /** What keys start outside the text. */
    interface Doings {
        void run();

        void cancel();

        /** Lists all words, those with this in them first. */
        void words();

        void save();

        /** Shows the offers as they are now. */
        void offers();

        boolean isLines();
    }

    private final EditorView editor;
    private final Typing typing;
    private final Doings doings;

    ConsoleKeys(EditorView editor, Typing typing, Doings doings) {
        this.editor = editor;
        this.typing = typing;
        this.doings = doings;
    }

    private TextArea area() {
        return editor.area();
    }

    void install() {
        area().addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (pressed(e)) {
                e.consume();
                doings.offers();
            }
        });
    }

    /** Keys that hold everywhere in the window and mean the script while it is written. */
    static boolean isOwn(KeyEvent e, Doings doings) {
        return switch (e.getCode()) {
            case Z, Y -> e.isShortcutDown();
            case S -> e.isShortcutDown() && !doings.isLines();
            default -> false;
        };
    }

    private boolean pressed(KeyEvent e) {
        boolean chosen = typing.chosen() >= 0;
        switch (e.getCode()) {
            case ENTER -> {
                return enter(e, chosen);
            }
            case TAB -> {
                return tab(e);
            }
            case ESCAPE -> {
                return escape();
            }
            case UP -> {
                return upOrDown(e, -1);
            }
            case DOWN -> {
                return upOrDown(e, 1);
            }
            case F9 -> doings.run();
            case F1 -> doings.words();
            case SPACE -> {
                if (!e.isShortcutDown()) {
                    return false;
                }
                typing.ask(area().getText(), area().getCaretPosition());
            }
            case S -> {
                if (!e.isShortcutDown() || doings.isLines()) {
                    return false;
                }
                doings.save();
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean enter(KeyEvent e, boolean chosen) {
        if (e.isShortcutDown() || e.isAltDown()) {
            return false;
        }
        if (chosen && !e.isShiftDown()) {
            accept(typing.chosen());
        } else if (!e.isShiftDown() && doings.isLines() && Typing.isWhole(area().getText())) {
            typing.close();
            doings.run();
        } else {
            area().replaceSelection("");
            editor.edit(typing.newLine(area().getText(), area().getCaretPosition()));
            typing.close();
        }
        return true;
    }

    /** Puts an offer in its place. */
    void accept(int offer) {
        editor.edit(typing.accept(area().getText(), offer));
        typing.close();
    }

    private boolean tab(KeyEvent e) {
        if (typing.isOffering() && !e.isShiftDown()) {
            accept(Math.max(0, typing.chosen()));
        } else if (!e.isControlDown()) {
            typing.close();
            Focus.next(area(), e.isShiftDown());
        } else {
            return false;
        }
        return true;
    }

    private boolean escape() {
        if (typing.isOffering()) {
            typing.close();
        } else {
            doings.cancel();
        }
        return true;
    }

    private boolean upOrDown(KeyEvent e, int step) {
        if (e.isShiftDown() || e.isShortcutDown()) {
            return false;
        }
        if (e.isAltDown() && !typing.isOffering()) {
            typing.ask(area().getText(), area().getCaretPosition());
            return true;
        }
        if (typing.isOffering() && (step > 0 || typing.chosen() >= 0)) {
            typing.choose(step);
            return true;
        }
        if (!doings.isLines()) {
            return false;
        }
        var put = step < 0
                ? typing.older(area().getText(), area().getCaretPosition())
                : typing.newer(area().getText(), area().getCaretPosition());
        put.ifPresent(editor::put);
        if (put.isPresent()) {
            typing.close();
        }
        return put.isPresent();
    }
}
