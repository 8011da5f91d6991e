package farwatt.window.grid;

import java.util.Locale;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** A column's heading: mark of its sort, name, unit, and how rows are sorted by it. */
final class HeadNode extends Region {
    private static final PseudoClass UP = PseudoClass.getPseudoClass("up");
    private static final PseudoClass DOWN = PseudoClass.getPseudoClass("down");
    private static final PseudoClass HELD = PseudoClass.getPseudoClass("held");
    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");
    private static final double PAD = 6;

    private final GridModel model;
    private final Label name = new Label();
    private final Label unit = new Label();
    private final Region mark = new Region();
    private final Region sort = new Region();
    private final Tooltip about = new Tooltip();
    private Optional<Column> column = Optional.empty();

    HeadNode(GridModel model) {
        this.model = model;
        setManaged(false);
        setAccessibleRole(AccessibleRole.TABLE_COLUMN);
        name.getStyleClass().add("name");
        unit.getStyleClass().add("unit");
        mark.getStyleClass().add("mark");
        sort.getStyleClass().add("sort");
        about.setWrapText(true);
        about.setMaxWidth(420);
        Tooltip.install(this, about);
        getChildren().addAll(name, unit, mark, sort);
        name.setMouseTransparent(true);
        unit.setMouseTransparent(true);
        mark.setMouseTransparent(true);
    }

    void show(Column now, int at) {
        if (!column.equals(Optional.of(now))) {
            column = Optional.of(now);
            name.setText(now.key());
            unit.setText(now.unit());
            getStyleClass()
                    .setAll(
                            "fw-head",
                            "fw-" + now.tint().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            // headings change while the table is laid out, after the styles of this turn were found
            applyCss();
            requestLayout();
            about.setText(Spoken.about(now));
        }
        Optional<RowOrder.Way> way =
                model.order().by().filter(by -> by.key().equals(now.key())).map(RowOrder.By::way);
        pseudoClassStateChanged(UP, way.filter(RowOrder.Way.UP::equals).isPresent());
        pseudoClassStateChanged(DOWN, way.filter(RowOrder.Way.DOWN::equals).isPresent());
        pseudoClassStateChanged(HELD, at < model.columnSet().held());
        pseudoClassStateChanged(HERE, at == model.range().column() && !model.isEmpty());
        setAccessibleText(Spoken.heading(model, now));
        setVisible(true);
    }

    Optional<Column> column() {
        return column;
    }

    /** True for a place on the part that sorts. */
    boolean isOnSort(double x) {
        return x >= sort.getLayoutX() - PAD && x < getWidth() - PAD;
    }

    @Override
    protected void layoutChildren() {
        double line = name.prefHeight(-1);
        double markSize = mark.prefWidth(-1);
        double sortSize = sort.prefWidth(-1);
        double top = (getHeight() - line - unit.prefHeight(-1)) / 2;
        double textX = PAD + markSize + 4;
        double wide = Math.max(0, getWidth() - textX - sortSize - 2 * PAD);
        mark.resizeRelocate(PAD, top + (line - markSize) / 2, markSize, markSize);
        name.resizeRelocate(textX, top, wide, line);
        unit.resizeRelocate(textX, top + line, wide, unit.prefHeight(-1));
        sort.resizeRelocate(getWidth() - sortSize - PAD, top + (line - sortSize) / 2, sortSize, sortSize);
    }
}
