package farwatt.window.grid;

import farwatt.report.Level;
import farwatt.report.Notice;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** One cell on the screen; shows another one when the table moves under it. */
final class CellNode extends Label {
    private static final PseudoClass DEFAULT = PseudoClass.getPseudoClass("default");
    private static final PseudoClass EXPRESSION = PseudoClass.getPseudoClass("expression");
    private static final PseudoClass FAULT = PseudoClass.getPseudoClass("fault");
    private static final PseudoClass WAITING = PseudoClass.getPseudoClass("waiting");
    private static final PseudoClass DIFFERS = PseudoClass.getPseudoClass("differs");
    private static final PseudoClass FAILS = PseudoClass.getPseudoClass("fails");
    private static final PseudoClass WARNS = PseudoClass.getPseudoClass("warns");
    private static final PseudoClass IDENTITY = PseudoClass.getPseudoClass("identity");
    private static final PseudoClass SOLVED = PseudoClass.getPseudoClass("solved");
    private static final PseudoClass OWN = PseudoClass.getPseudoClass("own");

    private final GridModel model;
    private final Region mark = new Region();
    private int row = -1;
    private int column = -1;
    private long version = -1;

    CellNode(GridModel model) {
        this.model = model;
        getStyleClass().setAll("fw-cell");
        setManaged(false);
        setFocusTraversable(false);
        setAccessibleRole(AccessibleRole.TABLE_CELL);
        setContentDisplay(ContentDisplay.LEFT);
        mark.getStyleClass().add("mark");
    }

    int row() {
        return row;
    }

    int column() {
        return column;
    }

    /** Shows a cell as seen; nothing is done where it shows that already. */
    void show(int newRow, int newColumn, long newVersion) {
        if (row == newRow && column == newColumn && version == newVersion) {
            return;
        }
        row = newRow;
        column = newColumn;
        version = newVersion;
        Face face = model.face(row, column);
        Column.Tint tint = model.columns().get(column).tint();
        setText(lineOf(model.text(face)));
        setAlignment(Double.isNaN(face.figure()) ? Pos.CENTER_LEFT : Pos.CENTER_RIGHT);
        tint(tint);
        Optional<Level> level = face.notice().map(Notice::level);
        boolean identity = tint == Column.Tint.IDENTITY;
        Optional<Level> worst = identity ? model.verdict(row) : level;
        pseudoClassStateChanged(DEFAULT, face.origin() == Face.Origin.DEFAULT);
        pseudoClassStateChanged(EXPRESSION, face.origin() == Face.Origin.EXPRESSION);
        pseudoClassStateChanged(WAITING, face.origin() == Face.Origin.WAITING);
        pseudoClassStateChanged(FAULT, face.origin() == Face.Origin.FAULT);
        pseudoClassStateChanged(DIFFERS, face.base().isPresent());
        pseudoClassStateChanged(FAILS, worst.filter(Level.FAIL::equals).isPresent());
        pseudoClassStateChanged(WARNS, worst.filter(Level.WARN::equals).isPresent());
        mark(worst.filter(l -> l != Level.NOTE).isPresent() || face.origin() == Face.Origin.EXPRESSION);
    }

    private void mark(boolean wanted) {
        if (wanted != (getGraphic() != null)) {
            setGraphic(wanted ? mark : null);
            // cells change while the table is laid out, after the styles of this turn were found
            applyCss();
        }
    }

    private void tint(Column.Tint tint) {
        pseudoClassStateChanged(IDENTITY, tint == Column.Tint.IDENTITY);
        pseudoClassStateChanged(SOLVED, tint == Column.Tint.SOLVED);
        pseudoClassStateChanged(OWN, tint == Column.Tint.OWN || tint == Column.Tint.OWN_GIVEN);
    }

    private static String lineOf(String text) {
        int end = text.indexOf('\n');
        return end < 0 ? text : text.substring(0, end) + " …";
    }

    /** Shows nothing; the next {@link #show} fills it. */
    void rest() {
        row = -1;
        setVisible(false);
    }

    boolean isShowing(int someRow, int someColumn) {
        return isVisible() && row == someRow && column == someColumn;
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        if (row < 0 || row >= model.rowCount() || column >= model.columns().size()) {
            return super.queryAccessibleAttribute(attribute, parameters);
        }
        return switch (attribute) {
            case TEXT -> Spoken.cell(model, row, column);
            case ROW_INDEX -> row;
            case COLUMN_INDEX -> column;
            case SELECTED -> model.range().contains(row, column);
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }
}
