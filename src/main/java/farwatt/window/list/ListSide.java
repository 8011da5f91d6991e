package farwatt.window.list;

import farwatt.file.KeptMapping;
import farwatt.intake.ColumnMeaning;
import farwatt.intake.Meaning;
import farwatt.intake.Question;
import farwatt.window.mark.Mark;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Beside a list's rows: what is asked, what each column was taken to mean, and mappings that are kept. */
final class ListSide extends VBox {
    private static final double GAP = 6;
    private static final double CHOICE = 140;
    private static final double SURE = 0.6;
    private static final int IN_SIGHT = 14;
    /** What most columns mean stands first among what they can mean. */
    private static final List<Meaning> USUAL = List.of(
            Meaning.NAME,
            Meaning.KIND,
            Meaning.QUANTITY,
            Meaning.ZONE,
            Meaning.WATTS,
            Meaning.CLASS,
            Meaning.LENGTH,
            Meaning.FEEDER,
            Meaning.PORT,
            Meaning.NOTE,
            Meaning.OWN,
            Meaning.LEAVE_OUT);

    private static final int SHARE = 100;

    ListSide() {
        super(GAP);
        getStyleClass().add("fw-list-side");
    }

    private void title(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("fw-side-title");
        getChildren().add(label);
    }

    /** Asks for the password of a locked workbook. */
    void askPassword(String said, Consumer<String> unlock) {
        getChildren().clear();
        title("Locked");
        PasswordField word = new PasswordField();
        word.setPromptText("Password of the workbook");
        word.setAccessibleText("Password of the workbook");
        word.setOnAction(e -> unlock.accept(word.getText()));
        Button open = button("Open", () -> unlock.accept(word.getText()));
        HBox.setHgrow(word, Priority.ALWAYS);
        getChildren().addAll(wrapped(said, ""), new HBox(GAP, word, open));
        word.requestFocus();
    }

    /** Shows the questions, each with what is used until someone decides. */
    void ask(List<Question> questions, BiConsumer<String, String> answer) {
        getChildren().clear();
        if (questions.isEmpty()) {
            return;
        }
        title(questions.size() == 1 ? "One question" : questions.size() + " questions");
        for (Question question : questions) {
            ComboBox<String> choice = new ComboBox<>();
            choice.getItems().setAll(question.choices());
            choice.setEditable(question.choices().isEmpty());
            choice.setValue(question.used());
            choice.setAccessibleText(question.text());
            choice.setMaxWidth(Double.MAX_VALUE);
            choice.setOnAction(e -> {
                String value = choice.getValue();
                if (value != null && !value.equals(question.used())) {
                    answer.accept(question.key(), value);
                }
            });
            VBox box = new VBox(2, wrapped(question.text(), ""), choice);
            box.getStyleClass().add("fw-finding");
            getChildren().add(box);
        }
    }

    /** Shows what each column was taken to mean, how sure that is, and why. */
    void columns(List<ColumnMeaning> columns, BiConsumer<String, Meaning> mean) {
        title("Columns");
        for (ColumnMeaning column : columns) {
            ComboBox<Meaning> choice = new ComboBox<>();
            choice.getItems().setAll(USUAL);
            for (Meaning meaning : Meaning.values()) {
                if (!USUAL.contains(meaning)) {
                    choice.getItems().add(meaning);
                }
            }
            choice.setVisibleRowCount(IN_SIGHT);
            choice.setConverter(new MeaningWords());
            choice.setValue(column.meaning());
            choice.setAccessibleText("Meaning of " + column.heading());
            choice.setMinWidth(CHOICE);
            choice.setPrefWidth(CHOICE);
            choice.setOnAction(e -> {
                if (choice.getValue() != column.meaning()) {
                    mean.accept(column.heading(), choice.getValue());
                }
            });
            Label heading = wrapped(column.heading().isEmpty() ? "(no heading)" : column.heading(), "fw-word");
            HBox.setHgrow(heading, Priority.ALWAYS);
            heading.setMaxWidth(Double.MAX_VALUE);
            HBox line = new HBox(GAP, heading, choice);
            line.setAlignment(Pos.CENTER_LEFT);
            VBox box = new VBox(2, line, reason(column));
            box.getStyleClass().add("fw-finding");
            getChildren().add(box);
        }
    }

    private static Node reason(ColumnMeaning column) {
        String kept = column.ownName().isEmpty() ? "" : "; kept as " + column.ownName();
        String text = Math.round(column.confidence() * SHARE) + " % sure: " + column.reason() + kept;
        Label label = wrapped(text, "fw-quiet");
        boolean looks = column.confidence() >= SURE || column.meaning() == Meaning.OWN;
        return looks ? label : new HBox(GAP, Mark.WARN.node(), label);
    }

    /**
     * Offers mappings for use, and to keep this one.
     *
     * @param deeds what can be done besides, by its word
     */
    void mappings(List<KeptMapping> kept, Consumer<KeptMapping> use, List<Button> deeds) {
        title("Keep and use again");
        if (!kept.isEmpty()) {
            ComboBox<String> choice = new ComboBox<>();
            kept.forEach(mapping -> choice.getItems().add(mapping.name()));
            choice.setPromptText("Read it as before…");
            choice.setAccessibleText("Mappings that the plan keeps");
            choice.setMaxWidth(Double.MAX_VALUE);
            choice.setOnAction(
                    e -> use.accept(kept.get(choice.getSelectionModel().getSelectedIndex())));
            getChildren().add(choice);
        }
        FlowPane row = new FlowPane(GAP, GAP);
        row.getChildren().addAll(deeds);
        getChildren().add(row);
    }

    static Button button(String word, Runnable deed) {
        Button button = new Button(word);
        button.getStyleClass().add("fw-button");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> deed.run());
        return button;
    }

    private static Label wrapped(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        if (!style.isEmpty()) {
            label.getStyleClass().add(style);
        }
        return label;
    }

    /** Meanings as people read them. */
    private static final class MeaningWords extends StringConverter<Meaning> {
        @Override
        public String toString(Meaning meaning) {
            if (meaning == null) {
                return "";
            }
            return meaning == Meaning.OWN ? "own column" : meaning.word().replace('_', ' ');
        }

        @Override
        public Meaning fromString(String word) {
            return Meaning.of(word.toLowerCase(Locale.ROOT).replace(' ', '_')).orElse(Meaning.OWN);
        }
    }
}
