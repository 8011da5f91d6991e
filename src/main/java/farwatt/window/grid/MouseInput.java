package farwatt.window.grid;

import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.ScrollBar;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/** The mouse over the cells and headings. */
final class MouseInput {
    private static final double LEAST_STEP = 1;

    private final Parts parts;
    private final GridModel model;
    private final Deeds deeds;
    private final CellsView cells;
    private Optional<ContextMenu> menu = Optional.empty();
    private Optional<Column> grabbed = Optional.empty();
    private double grabbedAt;
    private double widthBefore;
    private boolean dragging;

    MouseInput(Parts parts, Deeds deeds, CellsView cells) {
        this.parts = parts;
        this.model = parts.model();
        this.deeds = deeds;
        this.cells = cells;
    }

    /** @param over lies over the cells while one of them is typed into */
    void install(Node over) {
        over.addEventFilter(ScrollEvent.SCROLL, this::scrolled);
        cells.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        cells.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        cells.addEventHandler(MouseEvent.MOUSE_RELEASED, event -> released());
        cells.addEventHandler(MouseEvent.MOUSE_MOVED, this::moved);
        cells.addEventFilter(ScrollEvent.SCROLL, this::scrolled);
        cells.addEventHandler(ContextMenuEvent.CONTEXT_MENU_REQUESTED, this::asked);
    }

    private void pressed(MouseEvent event) {
        if (isOnBar(event) || !parts.editing().commit()) {
            return;
        }
        cells.requestFocus();
        menu.ifPresent(ContextMenu::hide);
        double x = event.getX();
        double y = event.getY();
        if (cells.isOnHeads(x, y)) {
            head(event);
        } else if (cells.isOnCells(x, y)) {
            cell(event);
        }
        event.consume();
    }

    private static boolean isOnBar(MouseEvent event) {
        Node node = event.getTarget() instanceof Node target ? target : null;
        while (node != null && !(node instanceof ScrollBar)) {
            node = node.getParent();
        }
        return node != null;
    }

    private void cell(MouseEvent event) {
        int row = cells.rowAt(event.getY());
        int column = cells.columnAt(event.getX());
        boolean inside =
                event.getButton() == MouseButton.SECONDARY && model.range().contains(row, column);
        if (event.isShiftDown()) {
            model.pickTo(row, column);
        } else if (!inside) {
            model.pick(row, column);
        }
        dragging = event.getButton() == MouseButton.PRIMARY;
        if (event.getClickCount() == 2 && event.getButton() == MouseButton.PRIMARY) {
            dragging = false;
            deeds.run(Deed.EDIT);
        }
    }

    private void head(MouseEvent event) {
        grabbed = cells.edgeAt(event.getX());
        if (grabbed.isPresent()) {
            grabbedAt = event.getX();
            widthBefore = model.columnSet().width(grabbed.get());
            if (event.getClickCount() == 2) {
                parts.columns().fit(grabbed.get());
                grabbed = Optional.empty();
            }
            return;
        }
        int column = cells.columnAt(event.getX());
        if (event.getButton() == MouseButton.PRIMARY
                && headAt(event).filter(h -> onSort(h, event)).isPresent()) {
            parts.columns().sort(model.columns().get(column));
        } else if (event.isShiftDown()) {
            model.range(new Range(model.rowCount() - 1, column, 0, model.range().fromColumn()));
        } else {
            model.range(new Range(model.rowCount() - 1, column, 0, column));
        }
    }

    private static Optional<HeadNode> headAt(MouseEvent event) {
        Node node = event.getTarget() instanceof Node target ? target : null;
        while (node != null && !(node instanceof HeadNode)) {
            node = node.getParent();
        }
        return Optional.ofNullable((HeadNode) node);
    }

    private static boolean onSort(HeadNode head, MouseEvent event) {
        return head.isOnSort(
                head.sceneToLocal(event.getSceneX(), event.getSceneY()).getX());
    }

    private void dragged(MouseEvent event) {
        if (grabbed.isPresent()) {
            parts.columns().width(grabbed.get(), widthBefore + (event.getX() - grabbedAt) / cells.letterWidth());
        } else if (dragging && !model.isEmpty()) {
            model.pickTo(cells.rowAt(event.getY()), cells.columnAt(event.getX()));
        }
    }

    private void released() {
        grabbed = Optional.empty();
        dragging = false;
    }

    private void moved(MouseEvent event) {
        boolean edge = cells.isOnHeads(event.getX(), event.getY())
                && cells.edgeAt(event.getX()).isPresent();
        cells.setCursor(edge ? Cursor.H_RESIZE : Cursor.DEFAULT);
    }

    /** The wheel leaves a cell that is being typed into, as a click elsewhere does. */
    private void scrolled(ScrollEvent event) {
        if (parts.editing().commit()) {
            boolean sideways = event.isShiftDown() && event.getDeltaX() == 0;
            double dx = sideways ? event.getDeltaY() : event.getDeltaX();
            double dy = sideways ? 0 : event.getDeltaY();
            if (Math.abs(dx) + Math.abs(dy) >= LEAST_STEP) {
                cells.scrollBy(-dx, -dy);
            }
        }
        event.consume();
    }

    private void asked(ContextMenuEvent event) {
        if (!parts.editing().commit()) {
            return;
        }
        menu.ifPresent(ContextMenu::hide);
        ContextMenu now = deeds.menu();
        menu = Optional.of(now);
        if (event.isKeyboardTrigger() && !model.isEmpty()) {
            var bounds = cells.bounds(model.range().row(), model.range().column());
            Point2D at = cells.localToScreen(bounds.getMinX(), bounds.getMaxY());
            now.show(cells, at.getX(), at.getY());
        } else {
            now.show(cells, event.getScreenX(), event.getScreenY());
        }
        event.consume();
    }
}
