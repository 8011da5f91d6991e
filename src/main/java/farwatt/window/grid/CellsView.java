package farwatt.window.grid;

import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Orientation;
import javafx.geometry.Rectangle2D;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollBar;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;

/**
 * The table on the screen: headings over cells, held columns at the left, bars to scroll. Has as many nodes as there
 * are cells to be seen, however long the table is.
 */
final class CellsView extends Region {
    private final GridModel model;
    private final Heads heldHeads;
    private final Heads heads;
    private final Tiles heldTiles;
    private final Tiles tiles;
    private final ScrollBar upright = new ScrollBar();
    private final ScrollBar level = new ScrollBar();
    private final Label nothing = new Label();
    /** Its type size is the one everything is measured by. */
    private final Label letter = new Label("0");

    private double[] x = {0};
    private double rowHeight = 26;
    private double headHeight = 44;
    private long version;
    private boolean revealing;

    CellsView(GridModel model) {
        this.model = model;
        heldHeads = new Heads(model);
        heads = new Heads(model);
        heldTiles = new Tiles(model);
        tiles = new Tiles(model);
        getStyleClass().add("fw-cells");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TABLE_VIEW);
        level.setOrientation(Orientation.HORIZONTAL);
        upright.setOrientation(Orientation.VERTICAL);
        for (ScrollBar bar : new ScrollBar[] {upright, level}) {
            bar.setManaged(false);
            bar.setFocusTraversable(false);
            ChangeListener<Number> moved = (o, before, now) -> requestLayout();
            bar.valueProperty().addListener(moved);
        }
        nothing.getStyleClass().add("fw-nothing");
        nothing.setManaged(false);
        nothing.setWrapText(true);
        letter.setManaged(false);
        letter.setVisible(false);
        getChildren().addAll(letter, tiles, heldTiles, heads, heldHeads, nothing, upright, level);
    }

    /** Calls a watcher whenever cells lie somewhere else on the screen. */
    void watchScroll(Runnable watcher) {
        upright.valueProperty().addListener((o, before, now) -> watcher.run());
        level.valueProperty().addListener((o, before, now) -> watcher.run());
    }

    /** Shows all cells anew, since something is to be seen otherwise. */
    void refresh() {
        version++;
        requestLayout();
    }

    /** Brings the cursor into view with the next layout. */
    void reveal() {
        revealing = true;
        requestLayout();
        notifyAccessibleAttributeChanged(AccessibleAttribute.FOCUS_ITEM);
    }

    /** Goes back to where a table was scrolled. */
    void restore() {
        GridModel.Scroll to = model.scroll();
        upright.setMax(Double.MAX_VALUE);
        level.setMax(Double.MAX_VALUE);
        upright.setValue(to.y());
        level.setValue(to.x());
        refresh();
    }

    /** Moves what is seen by pixels. */
    void scrollBy(double dx, double dy) {
        upright.setValue(limited(upright.getValue() + dy, upright.getMax()));
        level.setValue(limited(level.getValue() + dx, level.getMax()));
    }

    private static double limited(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }

    @Override
    protected void layoutChildren() {
        measure();
        double barWide = upright.prefWidth(-1);
        double barHigh = level.prefHeight(-1);
        double wide = Math.max(0, getWidth() - barWide);
        double high = Math.max(0, getHeight() - headHeight - barHigh);
        double held = Math.min(heldWidth(), wide);
        bars(held, wide, high);
        if (revealing) {
            revealing = false;
            scrollToCursor(held, wide, high);
        }
        model.scroll(new GridModel.Scroll(level.getValue(), upright.getValue()));
        panes(held, wide, high);
        upright.resizeRelocate(wide, headHeight, barWide, high);
        level.resizeRelocate(held, headHeight + high, wide - held, barHigh);
        nothing.setVisible(model.rowCount() == 0);
        nothing.resizeRelocate(16, headHeight + 8, Math.max(0, wide - 32), 3 * rowHeight);
    }

    private void panes(double held, double wide, double high) {
        int heldCount = model.columnSet().held();
        int count = model.columns().size();
        double top = upright.getValue();
        int first = (int) (top / rowHeight);
        int last = Math.min(model.rowCount(), (int) Math.ceil((top + high) / rowHeight));
        double left = level.getValue();
        int from = heldCount;
        while (from < count && x[from + 1] - held - left <= 0) {
            from++;
        }
        int to = from;
        while (to < count && x[to] - held - left < wide - held) {
            to++;
        }
        heldHeads.resizeRelocate(0, 0, held, headHeight);
        heads.resizeRelocate(held, 0, wide - held, headHeight);
        heldTiles.resizeRelocate(0, headHeight, held, high);
        tiles.resizeRelocate(held, headHeight, wide - held, high);
        double[] shifted = shifted(held + left);
        heldHeads.show(0, heldCount, x);
        heads.show(from, to, shifted);
        heldTiles.show(new Tiles.Part(first, last, 0, heldCount), new Tiles.Ground(x, rowHeight, top), version);
        tiles.show(new Tiles.Part(first, last, from, to), new Tiles.Ground(shifted, rowHeight, top), version);
    }

    private double[] shifted(double by) {
        double[] moved = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            moved[i] = x[i] - by;
        }
        return moved;
    }

    private void measure() {
        letter.applyCss();
        Font font = letter.getFont();
        double one = letterWidth();
        rowHeight = Math.ceil(font.getSize() * 2);
        headHeight = Math.ceil(font.getSize() * 3.4);
        x = new double[model.columns().size() + 1];
        for (int i = 0; i < model.columns().size(); i++) {
            x[i + 1] = x[i] + Math.round(model.columnSet().width(model.columns().get(i)) * one) + 12;
        }
    }

    /** Pixels of one letter as column widths are counted. */
    double letterWidth() {
        return letter.getFont().getSize() * 0.55;
    }

    private double heldWidth() {
        return x[model.columnSet().held()];
    }

    private void bars(double held, double wide, double high) {
        set(upright, model.rowCount() * rowHeight, high, rowHeight);
        set(level, x[x.length - 1] - held, wide - held, letterWidth() * 8);
    }

    private static void set(ScrollBar bar, double all, double seen, double step) {
        double most = Math.max(0, all - seen);
        bar.setMax(most);
        bar.setVisibleAmount(all <= 0 ? 0 : most * Math.min(1, seen / all));
        bar.setUnitIncrement(step);
        bar.setBlockIncrement(seen);
        bar.setVisible(most > 0);
        bar.setValue(limited(bar.getValue(), most));
    }

    private void scrollToCursor(double held, double wide, double high) {
        if (model.isEmpty()) {
            return;
        }
        int row = model.range().row();
        int column = model.range().column();
        upright.setValue(into(upright.getValue(), row * rowHeight, (row + 1) * rowHeight, high, upright.getMax()));
        if (column >= model.columnSet().held()) {
            level.setValue(into(level.getValue(), x[column] - held, x[column + 1] - held, wide - held, level.getMax()));
        }
    }

    /** The least move that brings a stretch into what is seen; its start counts more than its end. */
    private static double into(double now, double from, double to, double seen, double most) {
        double moved = Math.max(now, to - seen);
        return limited(Math.min(moved, from), most);
    }

    void nothing(String text) {
        nothing.setText(text);
    }

    /** How many whole rows are seen at a time, at least one. */
    int page() {
        return Math.max(1, (int) (tiles.getHeight() / rowHeight) - 1);
    }

    /** Where a cell lies in this view. */
    Rectangle2D bounds(int row, int column) {
        double shift = column < model.columnSet().held() ? 0 : level.getValue();
        double y = headHeight + row * rowHeight - upright.getValue();
        return new Rectangle2D(x[column] - shift, y, x[column + 1] - x[column], rowHeight);
    }

    /** The row at a height of this view, limited to those there are. */
    int rowAt(double y) {
        int row = (int) Math.floor((y - headHeight + upright.getValue()) / rowHeight);
        return Math.max(0, Math.min(model.rowCount() - 1, row));
    }

    /** The column at a place of this view, limited to those there are. */
    int columnAt(double px) {
        double held = heldWidth();
        double at = px < held ? px : px + level.getValue();
        int column = 0;
        while (column < model.columns().size() - 1 && x[column + 1] <= at) {
            column++;
        }
        return column;
    }

    /** True for a place on cells, not on headings, bars or beyond the last row. */
    boolean isOnCells(double px, double py) {
        return py >= headHeight
                && py < headHeight + tiles.getHeight()
                && px < tiles.getLayoutX() + tiles.getWidth()
                && py < headHeight + model.rowCount() * rowHeight - upright.getValue();
    }

    boolean isOnHeads(double px, double py) {
        return py < headHeight && px < x[x.length - 1] - level.getValue();
    }

    /** The column whose right edge is grabbed at a place of the headings. */
    Optional<Column> edgeAt(double px) {
        double reach = 4;
        for (int i = 0; i < model.columns().size(); i++) {
            Rectangle2D bounds = bounds(0, i);
            boolean hidden = i >= model.columnSet().held() && bounds.getMaxX() < heldWidth() + reach;
            if (!hidden && Math.abs(bounds.getMaxX() - px) <= reach) {
                return Optional.of(model.columns().get(i));
            }
        }
        return Optional.empty();
    }

    double headHeight() {
        return headHeight;
    }

    /** The node of a cell that is on the screen. */
    Optional<CellNode> node(int row, int column) {
        return column < model.columnSet().held() ? heldTiles.node(row, column) : tiles.node(row, column);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case ROW_COUNT -> model.rowCount();
            case COLUMN_COUNT -> model.columns().size();
            case FOCUS_ITEM ->
                model.isEmpty()
                        ? this
                        : node(model.range().row(), model.range().column())
                                .<Object>map(n -> n)
                                .orElse(this);
            case CELL_AT_ROW_COLUMN ->
                node((Integer) parameters[0], (Integer) parameters[1])
                        .<Object>map(n -> n)
                        .orElse(this);
            case MULTIPLE_SELECTION -> true;
            case TEXT -> model.table().key();
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }
}
