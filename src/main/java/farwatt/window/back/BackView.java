package farwatt.window.back;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.window.WindowCode;
import farwatt.window.back.BackModel.Line;
import farwatt.window.back.BackModel.Read;
import farwatt.window.desk.Desk;
import farwatt.window.grid.TableCopy;
import farwatt.window.work.Work;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What a hand-over workbook brings back, to be looked at before it is taken. For the window's thread. */
public final class BackView extends BorderPane {
    private static final List<String> HEADINGS = List.of("what", "in the workbook", "of", "now", "then");
    private static final List<Double> WIDTHS = List.of(170.0, 170.0, 260.0, 200.0, 320.0);

    private final BackModel model;
    private final Consumer<Notice> say;
    private final Label title = new Label("No workbook was read yet.");
    private final Button take = new Button("Take back");
    private final Button copy = new Button("Copy the table");
    private final TableView<Line> table = new TableView<>();

    public BackView(BackModel model, Desk desk, Consumer<Notice> say) {
        this.model = model;
        this.say = say;
        title.setWrapText(true);
        title.setMinWidth(0);
        take.getStyleClass().add("fw-button");
        take.setDisable(true);
        take.setOnAction(e -> take());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox.setHgrow(title, Priority.ALWAYS);
        copy.getStyleClass().add("fw-button");
        copy.setDisable(true);
        copy.setOnAction(e -> say.accept(TableCopy.toClipboard(table)));
        HBox head = new HBox(8, title, gap, copy, take);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setStyle("-fx-padding: 0.3em 0.6em;");
        setTop(head);
        table.setAccessibleText("What the workbook brings back");
        table.setPlaceholder(new Label("Nothing in it differs from the plan."));
        for (int i = 0; i < HEADINGS.size(); i++) {
            int at = i;
            TableColumn<Line, String> column = new TableColumn<>(HEADINGS.get(i));
            column.setCellValueFactory(
                    row -> new ReadOnlyStringWrapper(row.getValue().texts().get(at)));
            column.setPrefWidth(WIDTHS.get(i));
            column.setSortable(false);
            table.getColumns().add(column);
        }
        setCenter(table);
        desk.watch(() -> take.setDisable(!model.canTake()));
    }

    /** Reads a workbook and shows what it brings. */
    public void open(Path workbook) {
        model.open(workbook, end -> {
            if (end instanceof Work.End.Done<Read> done) {
                show(done.result());
            } else if (end instanceof Work.End.Not<Read> not) {
                say.accept(not.notice());
            }
        });
    }

    private void show(Read read) {
        int changes = read.back().edited().size();
        int left = read.back().left().size();
        String text = read.name() + ": " + changes + " cells changed, "
                + read.back().added().size() + " new rows, " + left + " left aside.";
        title.setText(read.older() ? text + " The plan was saved since the workbook was written." : text);
        table.getItems().setAll(BackModel.lines(read.back()));
        copy.setDisable(table.getItems().isEmpty());
        take.setDisable(!model.canTake());
    }

    private void take() {
        try {
            model.take();
            take.setDisable(true);
            say.accept(Notice.of(Level.NOTE, WindowCode.TAKEN_BACK, Place.NONE, title.getText()));
        } catch (Refusal e) {
            say.accept(e.notice());
        }
    }
}
