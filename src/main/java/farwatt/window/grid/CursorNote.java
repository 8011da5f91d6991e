package farwatt.window.grid;

import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Rectangle2D;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Under the cell with the cursor: what is wrong with it, or what stands there without the scenario. */
final class CursorNote extends Region {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final double WIDEST = 420;

    private final GridModel model;
    private final Editing editing;
    private final CellsView cells;
    private final Label note = new Label();

    CursorNote(GridModel model, Editing editing, CellsView cells) {
        this.model = model;
        this.editing = editing;
        this.cells = cells;
        setMouseTransparent(true);
        note.getStyleClass().add("fw-notice");
        note.setWrapText(true);
        note.setManaged(false);
        getChildren().add(note);
        editing.watch(this::follow);
        cells.focusedProperty().addListener((o, before, now) -> follow());
        cells.watchScroll(this::requestLayout);
    }

    /** Looks at the cell with the cursor anew. */
    void follow() {
        boolean wanted = !editing.isOpen() && !model.isEmpty() && cells.isFocused();
        Optional<Face> face = wanted
                ? Optional.of(model.face(model.range().row(), model.range().column()))
                : Optional.empty();
        Optional<Notice> notice = face.flatMap(Face::notice);
        Optional<String> base = face.flatMap(Face::base).map(text -> Messages.text(GridCode.CELL_BASE, text));
        note.setText(notice.map(Notice::text).or(() -> base).orElse(""));
        note.pseudoClassStateChanged(
                WRONG, notice.map(Notice::level).filter(Level.FAIL::equals).isPresent());
        setVisible(!note.getText().isEmpty());
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        if (!isVisible() || model.isEmpty()) {
            return;
        }
        Rectangle2D cell = cells.bounds(model.range().row(), model.range().column());
        double wide = Math.min(Math.min(getWidth(), WIDEST), Math.ceil(note.prefWidth(-1)) + 1);
        double high = note.prefHeight(wide);
        boolean above = cell.getMaxY() + high > getHeight();
        double x = Math.max(0, Math.min(cell.getMinX(), getWidth() - wide));
        note.resizeRelocate(x, above ? cell.getMinY() - high : cell.getMaxY(), wide, high);
        note.setVisible(cell.getMinY() >= cells.headHeight() - cell.getHeight() && cell.getMinY() < getHeight());
    }
}
