package farwatt.window.console;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Over the script: what is being written, how to open and save it, and how to run it. For the window's thread. */
final class PaperBar extends HBox {
    private final ConsoleFiles files;
    private final Runnable changed;
    private final MenuButton paper = new MenuButton();
    private final Label unsaved = new Label("not saved");
    private final TextField arguments = new TextField();
    private final Button run;

    /** @param changed told when another text is to be written */
    PaperBar(ConsoleFiles files, ConsoleKeys.Doings doings, Runnable changed) {
        super(6);
        this.files = files;
        this.changed = changed;
        setAlignment(Pos.CENTER_LEFT);
        setStyle("-fx-padding: 0.1em 0.4em;");
        paper.getStyleClass().add("fw-button");
        paper.setMnemonicParsing(false);
        paper.setAccessibleHelp("What is written: lines, or a script to open, save or try");
        unsaved.getStyleClass().add("fw-quiet");
        unsaved.setMinWidth(USE_PREF_SIZE);
        arguments.setPromptText("words for args");
        arguments.setAccessibleText("Words that the script sees as args");
        arguments.setPrefColumnCount(8);
        HBox gap = new HBox();
        HBox.setHgrow(gap, Priority.ALWAYS);
        run = ConsoleView.button("Run", "F9", doings::run);
        getChildren().addAll(paper, unsaved, arguments, gap, run);
        getChildren().forEach(node -> node.managedProperty().bind(node.visibleProperty()));
        fill();
    }

    private void fill() {
        Menu samples = new Menu("Samples");
        for (String name : Samples.NAMES) {
            samples.getItems().add(item(Samples.about(name), () -> files.sample(name, changed)));
        }
        paper.getItems()
                .addAll(
                        item("Lines, one after another", () -> files.lines(changed)),
                        new SeparatorMenuItem(),
                        item("Open a script…", () -> files.open(changed)),
                        samples,
                        new SeparatorMenuItem(),
                        item("Save", () -> files.save(() -> {})),
                        item("Save under another name…", () -> files.saveAs(changed)));
    }

    private static MenuItem item(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(e -> action.run());
        return item;
    }

    /** Shows what is written now. */
    void show(Papers.Paper now) {
        paper.setText(now.isLines() ? "Lines" : now.name());
        unsaved.setVisible(now.isUnsaved());
        arguments.setVisible(!now.isLines());
    }

    /** Shows whether a script runs. */
    void running(boolean is) {
        run.setDisable(is);
    }

    /** What the script is to see as args. */
    String arguments() {
        return arguments.getText();
    }
}
