package farwatt.window.grid;

import farwatt.plan.Table;
import farwatt.report.Messages;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** The tables at the grid's side: name, how many rows, how many of them fail. */
final class TableList extends ListView<Table> {
    private static final PseudoClass FAILS = PseudoClass.getPseudoClass("fails");
    private static final double WIDTH = 13;
    private static final double DIGIT = 0.65;
    private static final int USUAL_DIGITS = 5;

    private final GridModel model;
    private final Editing editing;
    private boolean following;

    TableList(GridModel model, Editing editing) {
        this.model = model;
        this.editing = editing;
        getStyleClass().add("fw-tables");
        setAccessibleText(Messages.text(GridCode.TABLES));
        setCellFactory(list -> new Line());
        getSelectionModel().selectedItemProperty().addListener((o, before, now) -> chosen(now));
        follow();
    }

    private void chosen(@Nullable Table table) {
        if (following || table == null || table == model.table()) {
            return;
        }
        if (editing.commit()) {
            model.show(table);
        } else {
            follow();
        }
    }

    /** Shows what the model shows. */
    void follow() {
        following = true;
        List<Table> tables = model.shown().tables();
        if (!getItems().equals(tables)) {
            getItems().setAll(tables);
        }
        if (!Objects.equals(getSelectionModel().getSelectedItem(), model.table())) {
            getSelectionModel().select(model.table());
        }
        following = false;
        setStyle(String.format(Locale.ROOT, "-fx-pref-width: %.1fem;", width(tables)));
        refresh();
    }

    /** Room for the longest counts, in letters' heights. */
    private double width(List<Table> tables) {
        int digits = 0;
        for (Table table : tables) {
            String counts = Integer.toString(model.shown().plan().rows(table).size());
            int failing = model.shown().failing(table);
            digits = Math.max(
                    digits,
                    counts.length() + (failing > 0 ? Integer.toString(failing).length() : 0));
        }
        return WIDTH + DIGIT * Math.max(0, digits - USUAL_DIGITS);
    }

    /** Goes to the table before or after the one shown. */
    void step(int by) {
        int at = getItems().indexOf(model.table()) + by;
        if (at >= 0 && at < getItems().size()) {
            getSelectionModel().select(at);
        }
    }

    private final class Line extends ListCell<Table> {
        private final Label name = new Label();
        private final Label count = new Label();
        private final Label fails = new Label();
        private final Region mark = new Region();
        private final HBox line;

        Line() {
            setPrefWidth(0);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            name.getStyleClass().add("name");
            count.getStyleClass().add("count");
            fails.getStyleClass().add("fails");
            mark.getStyleClass().add("mark");
            fails.setGraphic(mark);
            line = new HBox(name, gap, fails, count);
            line.getStyleClass().add("line");
        }

        @Override
        protected void updateItem(@Nullable Table table, boolean empty) {
            super.updateItem(table, empty);
            if (empty || table == null) {
                setGraphic(null);
                setAccessibleText("");
                return;
            }
            int rows = model.shown().plan().rows(table).size();
            int failing = model.shown().failing(table);
            name.setText(table.key());
            count.setText(Integer.toString(rows));
            fails.setText(Integer.toString(failing));
            fails.setVisible(failing > 0);
            fails.setManaged(failing > 0);
            pseudoClassStateChanged(FAILS, failing > 0);
            String counted = Messages.text(GridCode.TABLE_COUNT, table.key(), rows);
            setAccessibleText(failing == 0 ? counted : counted + ", " + Messages.text(GridCode.TABLE_FAILS, failing));
            setGraphic(line);
        }
    }
}
