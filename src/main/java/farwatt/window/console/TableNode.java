package farwatt.window.console;

import farwatt.script.ResultTable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A table that a script made: to look through, to copy, to save. For the window's thread. */
final class TableNode extends VBox {
    private static final int MOST_ROWS = 10;
    private static final int LOOKED_AT = 200;
    /** Height of a row in heights of a letter. */
    private static final double ROW = 1.95;

    private static final double LETTER = 0.62;

    private final ResultTable table;
    private final TableView<List<ResultTable.Cell>> view = new TableView<>();
    private final Button copy = new Button("Copy");

    /** @param saving told when a person wants it saved */
    TableNode(ResultTable table, Consumer<ResultTable> saving) {
        this.table = table;
        getStyleClass().add("fw-result");
        for (int i = 0; i < table.columns().size(); i++) {
            view.getColumns().add(column(i));
        }
        view.getItems().setAll(table.rows());
        view.setAccessibleText("Table, " + table.rows().size() + " rows: "
                + table.columns().stream().map(ResultTable.Column::name).collect(Collectors.joining(", ")));
        view.setOnKeyPressed(e -> {
            if (e.isShortcutDown() && e.getCode() == KeyCode.C) {
                e.consume();
                copy();
            }
        });
        copy.setAccessibleText("Copy the table");
        copy.setOnAction(e -> copy());
        Button save = new Button("Save…");
        save.setAccessibleText("Save the table");
        save.setOnAction(e -> saving.accept(table));
        copy.getStyleClass().add("fw-button");
        save.getStyleClass().add("fw-button");
        getChildren().addAll(view, new HBox(4, copy, save));
    }

    private TableColumn<List<ResultTable.Cell>, String> column(int at) {
        ResultTable.Column column = table.columns().get(at);
        TableColumn<List<ResultTable.Cell>, String> made = new TableColumn<>(column.name());
        made.setCellValueFactory(
                row -> new ReadOnlyStringWrapper(ResultTable.text(row.getValue().get(at), column)));
        boolean words =
                table.rows().stream().limit(LOOKED_AT).anyMatch(row -> row.get(at) instanceof ResultTable.Words);
        if (!words) {
            made.setStyle("-fx-alignment: center-right;");
        }
        made.setSortable(false);
        return made;
    }

    @Override
    protected void layoutChildren() {
        size();
        super.layoutChildren();
    }

    @Override
    protected double computePrefHeight(double width) {
        size();
        return super.computePrefHeight(width);
    }

    /** As high as its rows and as wide as its texts in the size of letters that is set. */
    private void size() {
        double em = em();
        int rows = Math.max(1, Math.min(MOST_ROWS, table.rows().size()));
        view.setFixedCellSize(Math.ceil(ROW * em));
        double high = Math.ceil((rows + 1.25) * ROW * em) + (table.rows().size() > rows ? 0 : 4);
        if (high != view.getPrefHeight()) {
            view.setMinHeight(high);
            view.setPrefHeight(high);
            view.setMaxHeight(high);
            for (int i = 0; i < table.columns().size(); i++) {
                view.getColumns().get(i).setPrefWidth(width(i) * LETTER * em + 2 * em);
            }
        }
    }

    /** The size of letters here. */
    private double em() {
        return copy.getFont().getSize();
    }

    private int width(int at) {
        ResultTable.Column column = table.columns().get(at);
        int longest = column.name().length() + 2;
        for (List<ResultTable.Cell> row :
                table.rows().subList(0, Math.min(LOOKED_AT, table.rows().size()))) {
            longest = Math.max(longest, ResultTable.text(row.get(at), column).length());
        }
        return Math.min(longest, 60);
    }

    /** The whole table as text with tabs. */
    private void copy() {
        List<String> lines = new ArrayList<>();
        lines.add(table.columns().stream().map(ResultTable.Column::name).collect(Collectors.joining("\t")));
        for (List<ResultTable.Cell> row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(ResultTable.text(row.get(i), table.columns().get(i)));
            }
            lines.add(String.join("\t", cells));
        }
        ClipboardContent content = new ClipboardContent();
        content.putString(String.join("\n", lines) + "\n");
        Clipboard.getSystemClipboard().setContent(content);
    }
}
