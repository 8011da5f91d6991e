package farwatt.window.console;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Under the script: what the word at the caret does, with an example to put in. For the window's thread. */
final class HelpLine extends VBox {
    private static final String LINES =
            "Enter runs what is whole, Shift+Enter begins a line, Up brings back what was run. F1 lists all words.";
    private static final String FILE = "F9 runs the script, Enter begins a line. F1 lists all words.";

    private final Label call = new Label();
    private final Label sentence = new Label();
    private final Label example = new Label();
    private String shown = "";

    /** @param put told an example that a person wants in the script */
    HelpLine(Consumer<String> put) {
        getStyleClass().add("fw-help");
        call.getStyleClass().addAll("fw-console", "fw-word");
        call.setMinWidth(0);
        sentence.setWrapText(true);
        sentence.setMinHeight(USE_PREF_SIZE);
        example.getStyleClass().addAll("fw-console", "fw-quiet");
        example.setMinWidth(0);
        Button in = new Button("Put in");
        in.getStyleClass().add("fw-button");
        in.setMinWidth(USE_PREF_SIZE);
        in.setOnAction(e -> put.accept(shown));
        in.accessibleTextProperty().bind(example.textProperty().map(text -> "Put in the example " + text));
        HBox line = new HBox(8, in, example);
        line.setAlignment(Pos.CENTER_LEFT);
        line.managedProperty().bind(line.visibleProperty());
        line.visibleProperty().bind(call.textProperty().isNotEmpty());
        call.managedProperty().bind(line.visibleProperty());
        getChildren().addAll(call, sentence, line);
    }

    /** Shows what there is to know; keys where there is nothing. */
    void show(Optional<Helping.Help> help, Papers.Paper paper) {
        shown = help.map(Helping.Help::example).orElse("");
        call.setText(help.map(Helping.Help::call).orElse(""));
        sentence.setText(help.map(Helping.Help::sentence).orElse(paper.isLines() ? LINES : FILE));
        sentence.getStyleClass().remove("fw-quiet");
        if (help.isEmpty()) {
            sentence.getStyleClass().add("fw-quiet");
        }
        example.setText(shown);
    }

    /** What it says now. */
    String text() {
        return (call.getText() + " " + sentence.getText()).strip();
    }
}
