package farwatt.window.takeoff;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.window.WindowCode;
import farwatt.window.desk.Desk;
import farwatt.window.grid.TabText;
import farwatt.window.takeoff.TakeOffModel.Line;
import farwatt.window.takeoff.TakeOffModel.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What to order, to be read, copied and printed. Counts anew while it is looked at. For the window's thread. */
public final class TakeOffView extends BorderPane {
    static final List<String> HEADINGS =
            List.of("what", "kind", "planned", "with slack", "boxes", "against the plan as it is", "cost", "notes");
    private static final List<Double> WIDTHS = List.of(110.0, 260.0, 90.0, 90.0, 60.0, 190.0, 100.0, 260.0);

    private final TakeOffModel model;
    private final Desk desk;
    private final Consumer<Notice> say;
    private final Label title = new Label();
    private final TableView<Line> table = new TableView<>();
    private final Button copy = new Button("Copy");
    private final Button print = new Button("Print…");
    private Order shown = new Order("", List.of(), "", "");
    private long counted = -1;

    public TakeOffView(TakeOffModel model, Desk desk, Consumer<Notice> say) {
        this.model = model;
        this.desk = desk;
        this.say = say;
        title.getStyleClass().add("fw-word");
        title.setMinWidth(0);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        for (Button button : List.of(copy, print)) {
            button.getStyleClass().add("fw-button");
            button.setDisable(true);
        }
        copy.setAccessibleText("Copy the take-off");
        print.setAccessibleText("Print the take-off");
        copy.setOnAction(e -> copy());
        print.setOnAction(e -> print());
        HBox head = new HBox(8, title, gap, copy, print);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setStyle("-fx-padding: 0.3em 0.6em;");
        setTop(head);
        table.setAccessibleText("Take-off");
        table.setPlaceholder(new Label("Counting…"));
        for (int i = 0; i < HEADINGS.size(); i++) {
            table.getColumns().add(column(i));
        }
        setCenter(table);
        desk.watch(this::refresh);
        sceneProperty().addListener(o -> refresh());
    }

    private static TableColumn<Line, String> column(int i) {
        TableColumn<Line, String> column = new TableColumn<>(HEADINGS.get(i));
        Function<Line, String> text = line -> line.texts().get(i);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
        column.setPrefWidth(WIDTHS.get(i));
        column.setSortable(false);
        return column;
    }

    private void refresh() {
        if (getScene() != null && desk.stills() != counted) {
            counted = desk.stills();
            model.count(this::show);
        }
    }

    private void show(Order order) {
        shown = order;
        table.setPlaceholder(new Label("Nothing is in use."));
        title.setText("Take-off: " + order.title() + (order.cost().isEmpty() ? "" : ", " + order.cost()));
        table.getItems().setAll(order.lines());
        copy.setDisable(order.lines().isEmpty());
        print.setDisable(order.lines().isEmpty());
    }

    private void copy() {
        List<List<String>> rows = new ArrayList<>(List.of(HEADINGS));
        shown.lines().forEach(line -> rows.add(line.texts()));
        ClipboardContent content = new ClipboardContent();
        content.putString(TabText.write(rows));
        Clipboard.getSystemClipboard().setContent(content);
        say.accept(Notice.of(
                Level.NOTE, WindowCode.COPIED, Place.NONE, shown.lines().size()));
    }

    private void print() {
        if (!Printing.print(shown, getScene().getWindow())) {
            say.accept(Notice.of(Level.NOTE, WindowCode.NOT_PRINTED, Place.NONE));
        }
    }
}
