package farwatt.window.grid;

import farwatt.report.Messages;
import farwatt.report.Refusal;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Over the cells: which rows are seen, and, when asked for, find and replace. */
final class TopStrip extends VBox {
    private final Parts parts;
    private final TextField filter = new TextField();
    private final CheckBox failing = new CheckBox(Messages.text(GridCode.ONLY_FAILING));
    private final Label rows = new Label();
    private final TextField wanted = new TextField();
    private final TextField by = new TextField();
    private final Label found = new Label();
    private final FlowPane findBar;
    private final Runnable back;
    private boolean following;

    /** @param back puts the keyboard back to the cells */
    TopStrip(Parts parts, Runnable back) {
        this.parts = parts;
        this.back = back;
        getStyleClass().add("fw-strip");
        filter.setPromptText(Messages.text(GridCode.FILTER));
        filter.setAccessibleText(Messages.text(GridCode.DO_FILTER));
        filter.setPrefColumnCount(16);
        filter.textProperty().addListener((o, before, now) -> filter());
        failing.selectedProperty().addListener((o, before, now) -> filter());
        rows.getStyleClass().add("fw-quiet");
        HBox filterBar = new HBox(filter, failing, rows);
        filterBar.getStyleClass().add("bar");
        findBar = findBar();
        getChildren().add(filterBar);
        addEventHandler(KeyEvent.KEY_PRESSED, this::leave);
    }

    private FlowPane findBar() {
        wanted.setPromptText(Messages.text(GridCode.FIND));
        wanted.setAccessibleText(Messages.text(GridCode.FIND));
        by.setPromptText(Messages.text(GridCode.REPLACE_BY));
        by.setAccessibleText(Messages.text(GridCode.REPLACE_BY));
        wanted.textProperty().addListener((o, before, now) -> count());
        wanted.setOnAction(event -> next(1));
        by.setOnAction(event -> replaceOne());
        found.getStyleClass().add("fw-quiet");
        FlowPane bar = new FlowPane(
                wanted,
                button(GridCode.FIND_NEXT, () -> next(1)),
                button(GridCode.FIND_BEFORE, () -> next(-1)),
                by,
                button(GridCode.REPLACE_ONE, this::replaceOne),
                button(GridCode.REPLACE_ALL, this::replaceAll),
                found,
                button(GridCode.CLOSE, this::close));
        bar.getStyleClass().add("bar");
        return bar;
    }

    private static Button button(GridCode code, Runnable action) {
        Button button = new Button(Messages.text(code));
        button.setOnAction(event -> action.run());
        return button;
    }

    private void leave(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            close();
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER && event.getTarget() == filter) {
            back.run();
            event.consume();
        }
    }

    private void close() {
        getChildren().remove(findBar);
        back.run();
    }

    private void filter() {
        if (!following && parts.editing().commit()) {
            RowOrder.Only only = failing.isSelected() ? RowOrder.Only.FAILING : RowOrder.Only.ALL;
            parts.columns().filter(filter.getText(), only);
        }
    }

    /** Shows what the model shows. */
    void follow() {
        following = true;
        RowOrder order = parts.model().order();
        if (!filter.getText().equals(order.text())) {
            filter.setText(order.text());
        }
        failing.setSelected(order.only() == RowOrder.Only.FAILING);
        following = false;
        int seen = parts.model().rowCount();
        int all = parts.model().rows().size();
        rows.setText(seen == all ? "" : Messages.text(GridCode.ROWS_SEEN, seen, all));
    }

    void toFilter() {
        filter.requestFocus();
        filter.selectAll();
    }

    void toFind() {
        if (!getChildren().contains(findBar)) {
            getChildren().add(findBar);
        }
        wanted.requestFocus();
        wanted.selectAll();
        count();
    }

    private void count() {
        parts.search().wanted(wanted.getText());
        int cells = parts.search().count();
        boolean none = wanted.getText().isEmpty();
        found.setText(none ? "" : text(cells));
    }

    private static String text(int cells) {
        return cells == 0 ? Messages.text(GridCode.FOUND_NONE) : Messages.text(GridCode.FOUND_COUNT, cells);
    }

    private void next(int step) {
        count();
        parts.search().next(step);
    }

    private void replaceOne() {
        try {
            count();
            parts.search().replaceOne(by.getText());
            count();
        } catch (Refusal refused) {
            parts.model().sheet().say(refused.notice());
        }
    }

    private void replaceAll() {
        try {
            count();
            int done = parts.search().replaceAll(by.getText());
            found.setText(text(done));
        } catch (Refusal refused) {
            parts.model().sheet().say(refused.notice());
        }
    }
}
