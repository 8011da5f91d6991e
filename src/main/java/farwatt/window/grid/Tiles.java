package farwatt.window.grid;

import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/**
 * A pane of cells: only the visible ones exist, and they are used again for others when the table moves. Over them lie
 * the frames of the chosen cells and of the cursor.
 */
final class Tiles extends Region {
    private final GridModel model;
    private final Rectangle clip = new Rectangle();
    private final Region chosen = new Region();
    private final Region cursor = new Region();
    private CellNode[][] cells = {};

    Tiles(GridModel model) {
        this.model = model;
        setManaged(false);
        setClip(clip);
        chosen.getStyleClass().add("fw-chosen");
        cursor.getStyleClass().add("fw-cursor");
        for (Region frame : new Region[] {chosen, cursor}) {
            frame.setManaged(false);
            frame.setMouseTransparent(true);
        }
        getChildren().addAll(chosen, cursor);
    }

    /**
     * Where columns and rows lie.
     *
     * @param x left edges of all seen columns in this pane, one more at the end
     * @param rowHeight of every row
     * @param top how far the rows are scrolled
     */
    @SuppressWarnings("ArrayRecordComponent") // made anew for every picture and never kept or compared
    record Ground(double[] x, double rowHeight, double top) {
        double y(int row) {
            return row * rowHeight - top;
        }
    }

    /** The cells to be seen: first inside, last not. */
    record Part(int firstRow, int lastRow, int firstColumn, int lastColumn) {
        int height() {
            return Math.max(0, lastRow - firstRow);
        }

        int width() {
            return Math.max(0, lastColumn - firstColumn);
        }
    }

    void show(Part part, Ground ground, long version) {
        clip.setWidth(getWidth());
        clip.setHeight(getHeight());
        enlarge(part.height(), part.width());
        int high = cells.length;
        for (int i = 0; i < high; i++) {
            int row = inRing(part.firstRow(), i, high);
            for (int j = 0; j < cells[i].length; j++) {
                int column = inRing(part.firstColumn(), j, cells[i].length);
                place(cells[i][j], row, column, part, ground, version);
            }
        }
        frame(part, ground);
    }

    /** The member of a ring's slot that lies at or after {@code first}. */
    private static int inRing(int first, int slot, int size) {
        return first + Math.floorMod(slot - first, size);
    }

    private static void place(CellNode cell, int row, int column, Part part, Ground ground, long version) {
        if (row >= part.lastRow() || column >= part.lastColumn()) {
            cell.rest();
            return;
        }
        double x = ground.x()[column];
        cell.show(row, column, version);
        cell.resizeRelocate(x, ground.y(row), ground.x()[column + 1] - x, ground.rowHeight());
        cell.setVisible(true);
    }

    private void enlarge(int high, int wide) {
        int haveWide = cells.length == 0 ? 0 : cells[0].length;
        if (cells.length >= high && haveWide >= wide) {
            return;
        }
        int newHigh = Math.max(high, cells.length);
        int newWide = Math.max(wide, haveWide);
        CellNode[][] more = new CellNode[newHigh][newWide];
        for (int i = 0; i < newHigh; i++) {
            for (int j = 0; j < newWide; j++) {
                boolean there = i < cells.length && j < haveWide;
                more[i][j] = there ? cells[i][j] : added();
            }
        }
        cells = more;
        chosen.toFront();
        cursor.toFront();
    }

    private CellNode added() {
        CellNode cell = new CellNode(model);
        getChildren().add(cell);
        return cell;
    }

    private void frame(Part part, Ground ground) {
        Range range = model.range();
        int left = Math.max(range.left(), part.firstColumn());
        int right = Math.min(range.right(), part.lastColumn() - 1);
        boolean seen = !model.isEmpty() && left <= right;
        chosen.setVisible(seen && !range.isOne());
        if (seen) {
            double y = Math.max(-ground.rowHeight(), ground.y(range.top()));
            double bottom = Math.min(getHeight() + ground.rowHeight(), ground.y(range.bottom() + 1));
            double x = ground.x()[left];
            chosen.resizeRelocate(x, y, ground.x()[right + 1] - x, Math.max(0, bottom - y));
        }
        boolean here = range.column() >= part.firstColumn() && range.column() < part.lastColumn();
        cursor.setVisible(!model.isEmpty() && here);
        if (cursor.isVisible()) {
            double x = ground.x()[range.column()];
            cursor.resizeRelocate(x, ground.y(range.row()), ground.x()[range.column() + 1] - x, ground.rowHeight());
        }
    }

    /** The node that shows a cell, if it is on the screen. */
    Optional<CellNode> node(int row, int column) {
        if (cells.length == 0 || cells[0].length == 0) {
            return Optional.empty();
        }
        CellNode cell = cells[Math.floorMod(row, cells.length)][Math.floorMod(column, cells[0].length)];
        return cell.isShowing(row, column) ? Optional.of(cell) : Optional.empty();
    }
}
