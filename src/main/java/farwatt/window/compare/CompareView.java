package farwatt.window.compare;

import farwatt.report.Notice;
import farwatt.review.SideBySide;
import farwatt.window.desk.Desk;
import farwatt.window.grid.TableCopy;
import farwatt.window.mark.Mark;
import farwatt.window.work.Work;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Scenarios side by side; what differs from the first is marked. For the window's thread. */
public final class CompareView extends BorderPane {
    private static final double SIDE = 260;

    private final CompareModel model;
    private final Consumer<Notice> say;
    private final VBox choices = new VBox(2);
    private final TextArea measures = new TextArea();
    private final TableView<SideBySide.Row> table = new TableView<>();
    private final Button copy = new Button("Copy the table");

    public CompareView(Desk desk, Work work, Consumer<Notice> say) {
        model = new CompareModel(desk, work);
        this.say = say;
        measures.setPromptText("One expression a line; empty for the usual measures.");
        measures.setAccessibleText("Measures, one expression a line");
        measures.setPrefRowCount(3);
        Button go = new Button("Lay side by side");
        go.getStyleClass().add("fw-button");
        go.setOnAction(e -> start());
        ScrollPane roll = new ScrollPane(choices);
        roll.setFitToWidth(true);
        VBox.setVgrow(roll, Priority.ALWAYS);
        copy.getStyleClass().add("fw-button");
        copy.setDisable(true);
        copy.setOnAction(e -> say.accept(TableCopy.toClipboard(table)));
        VBox side = new VBox(6, new Label("Scenarios"), roll, new Label("Measures"), measures, go, copy);
        side.setPrefWidth(SIDE);
        side.setStyle("-fx-padding: 0.4em;");
        setLeft(side);
        table.setPlaceholder(new Label("Choose scenarios, then lay them side by side."));
        table.setAccessibleText("Scenarios side by side");
        setCenter(table);
        desk.watch(this::refresh);
        refresh();
    }

    private void refresh() {
        List<String> ids = model.scenarios();
        List<Object> shown =
                choices.getChildren().stream().map(node -> node.getUserData()).toList();
        if (shown.equals(ids)) {
            return;
        }
        choices.getChildren().clear();
        for (String id : ids) {
            CheckBox box = new CheckBox(called(id));
            box.setMnemonicParsing(false);
            box.setUserData(id);
            box.setSelected(model.isChosen(id));
            box.setOnAction(e -> model.toggle(id));
            choices.getChildren().add(box);
        }
    }

    private static String called(String id) {
        return id.isEmpty() ? "plan as it is" : id;
    }

    private void start() {
        model.reads(measures.getText());
        model.start(end -> {
            if (end instanceof Work.End.Done<SideBySide> done) {
                show(done.result());
            } else if (end instanceof Work.End.Not<SideBySide> not) {
                say.accept(not.notice());
            }
        });
    }

    private void show(SideBySide result) {
        table.getColumns().clear();
        TableColumn<SideBySide.Row, String> names = new TableColumn<>("measure");
        names.setCellValueFactory(
                row -> new ReadOnlyStringWrapper(row.getValue().name()));
        table.getColumns().add(names);
        for (int k = 0; k < result.columns().size(); k++) {
            SideBySide.Column column = result.columns().get(k);
            Mark mark = column.verdict().holds() ? Mark.GOOD : Mark.FAIL;
            TableColumn<SideBySide.Row, String> values = new TableColumn<>(called(column.id()));
            values.setGraphic(mark.node());
            int at = k;
            values.setCellValueFactory(row -> new ReadOnlyStringWrapper(
                    row.getValue().text(at) + (row.getValue().differs(at) ? "  ≠" : "")));
            values.setPrefWidth(180);
            table.getColumns().add(values);
        }
        table.getItems().setAll(result.rows());
        copy.setDisable(result.rows().isEmpty());
        result.notices().forEach(say);
    }
}
