package farwatt.window.grid;

import farwatt.report.Messages;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Which columns of the table are seen. */
final class ColumnChooser extends VBox {
    private final VBox boxes = new VBox();

    /** @param close takes the panel away */
    ColumnChooser(Parts parts, Runnable close) {
        getStyleClass().add("fw-panel");
        Label title = new Label(
                Messages.text(GridCode.COLUMNS_TITLE, parts.model().table().key()));
        title.getStyleClass().add("title");
        for (Column column : parts.model().columnSet().all()) {
            CheckBox box = new CheckBox(column.unit().isEmpty() ? column.key() : column.key() + " · " + column.unit());
            box.setMnemonicParsing(false);
            box.setSelected(parts.model().columnSet().isSeen(column.key()));
            box.setTooltip(new Tooltip(Spoken.about(column)));
            box.setOnAction(event -> {
                parts.columns().toggleSeen(column);
                box.setSelected(parts.model().columnSet().isSeen(column.key()));
            });
            boxes.getChildren().add(box);
        }
        Button all = new Button(Messages.text(GridCode.COLUMNS_ALL));
        all.setOnAction(event -> {
            parts.columns().seeAll();
            boxes.getChildren().forEach(node -> ((CheckBox) node).setSelected(true));
        });
        Button done = new Button(Messages.text(GridCode.CLOSE));
        done.setOnAction(event -> close.run());
        ScrollPane scroll = new ScrollPane(boxes);
        scroll.setFitToWidth(true);
        HBox buttons = new HBox(all, done);
        buttons.getStyleClass().add("bar");
        getChildren().addAll(title, scroll, buttons);
    }

    void start() {
        boxes.getChildren().get(0).requestFocus();
    }
}
