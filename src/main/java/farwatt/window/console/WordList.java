package farwatt.window.console;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** All words with what they do and an example, to look through. For the window's thread. */
final class WordList extends BorderPane {
    private final TextField part = new TextField();
    private final ListView<Helping.Help> list = new ListView<>();
    private final Consumer<String> put;
    private List<Helping.Help> all = List.of();

    /**
     * An empty list.
     *
     * @param put told the example of a word that was chosen
     * @param close told when the person is done
     */
    WordList(Consumer<String> put, Runnable close) {
        this.put = put;
        part.setPromptText("Part of a word or of what it does");
        part.setAccessibleText("Words that have this in them");
        part.textProperty().addListener(o -> filter());
        part.setOnAction(e -> list.requestFocus());
        HBox.setHgrow(part, Priority.ALWAYS);
        Button back = new Button("Back to the answers");
        back.getStyleClass().add("fw-button");
        back.setOnAction(e -> close.run());
        HBox head = new HBox(6, part, back);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setStyle("-fx-padding: 0 0 0.3em 0;");
        setTop(head);
        list.setCellFactory(view -> new WordCell());
        list.setAccessibleText("Words of scripts and names of the plan; Enter puts the example in");
        list.setPlaceholder(new Label("No word has that in it."));
        list.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                e.consume();
                take();
            }
        });
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                e.consume();
                close.run();
            }
        });
        setCenter(list);
    }

    private void take() {
        Helping.Help chosen = list.getSelectionModel().getSelectedItem();
        if (chosen != null) {
            put.accept(chosen.example());
        }
    }

    /** Shows all words, those with a part first looked for. */
    void show(List<Helping.Help> words, String begun) {
        all = words;
        part.setText(begun);
        filter();
        part.requestFocus();
        part.selectAll();
    }

    private void filter() {
        list.getItems()
                .setAll(all.stream().filter(help -> help.has(part.getText())).toList());
        list.getSelectionModel().selectFirst();
        list.scrollTo(0);
    }

    private final class WordCell extends ListCell<Helping.Help> {
        private final Label call = new Label();
        private final Label sentence = new Label();
        private final Label example = new Label();
        private final VBox box = new VBox(call, sentence, example);

        WordCell() {
            call.getStyleClass().addAll("fw-console", "fw-word");
            example.getStyleClass().addAll("fw-console", "fw-quiet");
            sentence.setWrapText(true);
            setPrefWidth(0);
            setOnMouseClicked(e -> {
                if (e.getClickCount() == 2) {
                    take();
                }
            });
        }

        @Override
        protected void updateItem(Helping.Help help, boolean empty) {
            super.updateItem(help, empty);
            setText(null);
            setGraphic(empty || help == null ? null : box);
            if (!empty && help != null) {
                call.setText(help.call());
                sentence.setText(help.sentence());
                example.setText(help.example());
                setAccessibleText(help.call() + ": " + help.sentence());
            }
        }
    }
}
