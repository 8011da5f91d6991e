package farwatt.window.grid;

import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keys pressed while the cells or the field over a cell have the keyboard. */
final class KeyInput {
    private static final int FAR = 1_000_000_000;

    private final Parts parts;
    private final GridModel model;
    private final Editing editing;
    private final Deeds deeds;
    private final CellsView cells;
    private final TableList list;

    KeyInput(Parts parts, Deeds deeds, CellsView cells, TableList list) {
        this.parts = parts;
        this.model = parts.model();
        this.editing = parts.editing();
        this.deeds = deeds;
        this.cells = cells;
        this.list = list;
    }

    void install(CellEditor editor) {
        cells.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        cells.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        editor.field().addEventFilter(KeyEvent.KEY_PRESSED, this::pressedInField);
        list.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.F6 || event.getCode() == KeyCode.ENTER) {
                cells.requestFocus();
                event.consume();
            }
        });
    }

    private void pressed(KeyEvent event) {
        Optional<Deed> deed = Deeds.of(event);
        boolean done = true;
        if (deed.isPresent()) {
            deeds.run(deed.get());
        } else if (event.getCode() == KeyCode.ENTER) {
            deeds.run(Deed.EDIT);
        } else if (event.getCode() == KeyCode.F6) {
            list.requestFocus();
        } else {
            done = moved(event) || whole(event);
        }
        if (done) {
            event.consume();
        }
    }

    /** All cells, whole rows, whole columns; the table before or after. */
    private boolean whole(KeyEvent event) {
        Range range = model.range();
        int lastRow = model.rowCount() - 1;
        int lastColumn = model.columns().size() - 1;
        boolean space = event.getCode() == KeyCode.SPACE;
        if (event.isShortcutDown() && event.getCode() == KeyCode.A) {
            model.range(new Range(lastRow, lastColumn, 0, 0));
        } else if (event.isShiftDown() && space) {
            model.range(new Range(range.row(), lastColumn, range.fromRow(), 0));
        } else if (event.isShortcutDown() && space) {
            model.range(new Range(lastRow, range.column(), 0, range.fromColumn()));
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.PAGE_UP) {
            list.step(-1);
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.PAGE_DOWN) {
            list.step(1);
        } else {
            return false;
        }
        return true;
    }

    private boolean moved(KeyEvent event) {
        if (event.isAltDown() || (event.isMetaDown() && !event.isShortcutDown())) {
            return false;
        }
        int far = event.isShortcutDown() ? FAR : 1;
        switch (event.getCode()) {
            case UP -> move(event, -far, 0);
            case DOWN -> move(event, far, 0);
            case LEFT -> move(event, 0, -far);
            case RIGHT -> move(event, 0, far);
            case PAGE_UP -> {
                return !event.isShortcutDown() && move(event, -cells.page(), 0);
            }
            case PAGE_DOWN -> {
                return !event.isShortcutDown() && move(event, cells.page(), 0);
            }
            case HOME -> move(event, event.isShortcutDown() ? -FAR : 0, -FAR);
            case END -> move(event, event.isShortcutDown() ? FAR : 0, FAR);
            case TAB -> {
                return tab(event);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean move(KeyEvent event, int rows, int columns) {
        Range range = model.range();
        int row = within(range.row() + rows, model.rowCount());
        int column = within(range.column() + columns, model.columns().size());
        if (event.isShiftDown()) {
            model.pickTo(row, column);
        } else {
            model.pick(row, column);
        }
        return true;
    }

    private static int within(int at, int size) {
        return Math.max(0, Math.min(size - 1, at));
    }

    /** Through the cells row by row; from the last one, or backwards from the first, on to what lies around the grid. */
    private boolean tab(KeyEvent event) {
        return !event.isShortcutDown() && next(event.isShiftDown() ? -1 : 1);
    }

    private boolean next(int step) {
        int width = model.columns().size();
        int at = model.range().row() * width + model.range().column() + step;
        if (model.isEmpty() || at < 0 || at >= model.rowCount() * width) {
            return false;
        }
        model.pick(at / width, at % width);
        return true;
    }

    private void typed(KeyEvent event) {
        String text = event.getCharacter();
        boolean plain = !event.isShortcutDown() && !event.isMetaDown() && (!event.isAltDown() || event.isControlDown());
        if (plain
                && !text.isBlank()
                && !Character.isISOControl(text.charAt(0))
                && !KeyEvent.CHAR_UNDEFINED.equals(text)) {
            editing.open(Editing.From.A_KEY, text);
            event.consume();
        }
    }

    private void pressedInField(KeyEvent event) {
        boolean offered = !editing.offers().isEmpty();
        boolean chosen = editing.chosen() >= 0;
        boolean done = true;
        switch (event.getCode()) {
            case ESCAPE -> escape(chosen);
            case ENTER -> enter(event, chosen);
            case TAB -> leave(chosen, () -> next(event.isShiftDown() ? -1 : 1));
            case UP -> upOrDown(offered, event, -1);
            case DOWN -> upOrDown(offered, event, 1);
            case PAGE_UP, PAGE_DOWN -> leave(false, () -> pressed(event));
            case F4 -> leave(false, () -> deeds.run(Deed.EXPLAIN));
            case SPACE -> {
                done = event.isShortcutDown();
                if (done) {
                    editing.askOffers();
                }
            }
            default -> done = false;
        }
        if (done) {
            event.consume();
        }
    }

    private void escape(boolean chosen) {
        if (chosen) {
            editing.closeOffers();
            editing.choose(0);
        } else {
            editing.cancel();
            cells.requestFocus();
        }
    }

    private void enter(KeyEvent event, boolean chosen) {
        if (chosen) {
            editing.accept(editing.chosen());
        } else if (event.isShortcutDown()) {
            editing.commitToAll(parts.block());
            cells.requestFocus();
        } else {
            int step = event.isShiftDown() ? -1 : 1;
            leave(false, () -> down(step));
        }
    }

    private void upOrDown(boolean offered, KeyEvent event, int step) {
        if (event.isAltDown() && !offered) {
            editing.askOffers();
        } else if (offered) {
            editing.choose(step);
        } else {
            leave(false, () -> down(step));
        }
    }

    /** The next row in the same column. */
    private void down(int step) {
        model.pick(
                within(model.range().row() + step, model.rowCount()),
                model.range().column());
    }

    private void leave(boolean accept, Runnable then) {
        if (accept) {
            editing.accept(editing.chosen());
        }
        if (editing.commit()) {
            cells.requestFocus();
            then.run();
        }
    }
}
