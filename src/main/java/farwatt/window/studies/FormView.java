package farwatt.window.studies;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** What is asked: a question, its fields, Run and Cancel. For the window's thread. */
final class FormView extends BorderPane {
    private final StudiesModel model;
    private final Offers offers;
    private final ComboBox<StudyKind> question = new ComboBox<>();
    private final VBox fields = new VBox(2);
    private final Map<StudyField, List<TextField>> lines = new EnumMap<>(StudyField.class);
    private final Map<StudyField, Label> troubles = new EnumMap<>(StudyField.class);
    private final Label trouble = new Label();
    private final Button run = new Button("Run");
    private final Button cancel = new Button("Cancel");
    private final ProgressBar bar = new ProgressBar(0);
    private final Label step = new Label();
    private boolean filling;

    FormView(StudiesModel model, Offers offers) {
        this.model = model;
        this.offers = offers;
        question.getItems().setAll(StudyKind.values());
        question.setConverter(new StringConverter<>() {
            @Override
            public String toString(StudyKind kind) {
                return kind == null ? "" : kind.question();
            }

            @Override
            public StudyKind fromString(String text) {
                return StudyKind.SWEEP;
            }
        });
        question.setValue(model.kind());
        question.setMaxWidth(Double.MAX_VALUE);
        question.setAccessibleText("Question");
        question.setOnAction(e -> model.choose(question.getValue()));
        run.getStyleClass().addAll("fw-button", "fw-run");
        run.setTooltip(new Tooltip("Enter in a field, or Ctrl+Enter"));
        run.setOnAction(e -> model.run());
        cancel.getStyleClass().add("fw-button");
        cancel.setTooltip(new Tooltip("Esc"));
        cancel.setOnAction(e -> model.cancel());
        run.setMinWidth(USE_PREF_SIZE);
        cancel.setMinWidth(USE_PREF_SIZE);
        bar.setPrefWidth(70);
        bar.setAccessibleText("How far the study is");
        HBox.setHgrow(step, Priority.ALWAYS);
        HBox foot = new HBox(6, run, cancel, bar, step);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("fw-study-foot");
        trouble.setWrapText(true);
        trouble.getStyleClass().add("fw-trouble");
        VBox all = new VBox(4, question, fields, trouble);
        all.getStyleClass().add("fw-study-form");
        ScrollPane roll = new ScrollPane(all);
        roll.setFitToWidth(true);
        setCenter(roll);
        setBottom(foot);
        build();
        refresh();
    }

    /** Puts the keyboard into the first field. */
    void enter() {
        lines.values().stream()
                .findFirst()
                .flatMap(all -> all.stream().findFirst())
                .ifPresentOrElse(TextField::requestFocus, run::requestFocus);
    }

    /** Other fields, for another question or another plan. */
    void build() {
        question.setValue(model.kind());
        fields.getChildren().clear();
        lines.clear();
        troubles.clear();
        for (StudyField field : model.kind().fields()) {
            Label title = new Label(field.title());
            title.getStyleClass().add("fw-quiet");
            VBox box = new VBox(2);
            List<TextField> all = new ArrayList<>();
            lines.put(field, all);
            model.lines(field).forEach(text -> line(field, box, text));
            boolean many = model.kind().takesMany(field);
            if (all.isEmpty() || many) {
                line(field, box, "");
            }
            title.setLabelFor(all.get(0));
            Label wrong = new Label();
            wrong.setWrapText(true);
            wrong.getStyleClass().addAll("fw-trouble", "fw-console");
            wrong.managedProperty().bind(wrong.visibleProperty());
            wrong.setVisible(false);
            troubles.put(field, wrong);
            fields.getChildren().addAll(title, box, wrong);
        }
    }

    private void line(StudyField field, VBox box, String text) {
        List<TextField> all = lines.getOrDefault(field, List.of());
        int at = all.size();
        TextField input = new TextField(text);
        input.setPromptText(at == 0 ? field.hint() : "one more: " + field.hint());
        input.setAccessibleText(field.title() + (at == 0 ? "" : " " + (at + 1)) + ", " + field.hint());
        input.setOnAction(e -> model.run());
        input.textProperty().addListener((o, was, is) -> {
            if (!filling) {
                model.type(field, at, is);
                if (model.kind().takesMany(field) && at == all.size() - 1 && !is.isBlank()) {
                    line(field, box, "");
                }
            }
        });
        offers.serve(input, field);
        all.add(input);
        box.getChildren().add(input);
    }

    /** Shows what is under way and what is wrong. */
    void refresh() {
        boolean busy = model.state().isBusy();
        cancel.setVisible(busy);
        bar.setVisible(busy);
        double share = model.state().share();
        bar.setProgress(!busy ? 0 : share > 0 ? share : ProgressBar.INDETERMINATE_PROGRESS);
        step.setText(busy ? model.state().step() : model.note());
        step.setTooltip(step.getText().isEmpty() ? null : new Tooltip(step.getText()));
        trouble.setVisible(false);
        troubles.values().forEach(label -> label.setVisible(false));
        model.trouble().ifPresent(this::show);
        trouble.setManaged(trouble.isVisible());
    }

    private void show(StudiesModel.Trouble wrong) {
        Label label = wrong.field().map(troubles::get).orElse(trouble);
        boolean fresh = !wrong.text().equals(label.getText());
        label.setText(wrong.text());
        label.setVisible(true);
        wrong.field().map(lines::get).filter(all -> wrong.line() < all.size()).ifPresent(all -> {
            TextField input = all.get(wrong.line());
            input.setAccessibleHelp(wrong.text());
            if (fresh) {
                input.requestFocus();
            }
        });
    }

    /** The examples of another plan, where nothing was typed. */
    void refill() {
        if (!model.isExample()) {
            return;
        }
        boolean same = lines.entrySet().stream()
                .allMatch(each -> each.getValue().stream()
                        .map(TextField::getText)
                        .filter(text -> !text.isBlank())
                        .toList()
                        .equals(model.lines(each.getKey())));
        if (!same) {
            filling = true;
            build();
            filling = false;
        }
    }
}
