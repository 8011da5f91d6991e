package farwatt.window.console;

import farwatt.picture.Palette;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.script.Outcome;
import farwatt.script.ResultPicture;
import farwatt.script.ResultTable;
import farwatt.window.mark.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What came of one run, as a slip among others. For the window's thread. */
final class AnswerNode extends VBox {
    /** What a person can do with an answer. */
    interface Doings {
        /** Puts what was run back where it is written. */
        void again(Answer answer);

        void cancel();

        void takeScenarios(Answer answer);

        void takeChanges(Answer answer);

        /** Goes to the line of the mistake. */
        void toLine(Answer answer);

        void save(String suggested, ResultTable table);

        void save(ResultPicture picture);

        boolean isPlanChanged(Answer answer);

        /** What a picture says of where it comes from. */
        String origin(Answer answer);
    }

    private final Answer answer;
    private final Doings doings;
    private final HBox state = new HBox(6);
    private final VBox body = new VBox(4);
    private final VBox foot = new VBox(4);
    private final ProgressBar bar = new ProgressBar();
    private final Label step = new Label();
    private final List<Piece> shown = new ArrayList<>();
    private Palette palette;
    private String ended = "";

    AnswerNode(Answer answer, Doings doings, Palette palette) {
        this.answer = answer;
        this.doings = doings;
        this.palette = palette;
        getStyleClass().add("fw-answer");
        Label title = new Label(answer.title());
        title.getStyleClass().addAll("fw-console", "fw-asked");
        title.setMinWidth(0);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        Button again = button("Write again", () -> doings.again(answer));
        again.setAccessibleText("Write again: " + answer.title());
        state.setAlignment(Pos.CENTER_LEFT);
        HBox head = new HBox(8, state, title, again);
        head.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(head, body, foot);
        body.managedProperty().bind(javafx.beans.binding.Bindings.isNotEmpty(body.getChildren()));
        foot.managedProperty().bind(javafx.beans.binding.Bindings.isNotEmpty(foot.getChildren()));
        refresh();
    }

    private static Button button(String text, Runnable action) {
        Button button = new Button(text);
        button.getStyleClass().add("fw-button");
        button.setMnemonicParsing(false);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }

    Answer answer() {
        return answer;
    }

    /** Draws pictures in other colours. */
    void show(Palette other) {
        palette = other;
        body.getChildren().forEach(node -> {
            if (node instanceof PictureNode picture) {
                picture.show(other);
            }
        });
    }

    /** Shows what is new. */
    void refresh() {
        List<Piece> pieces = answer.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (i < shown.size()) {
                if (piece instanceof Piece.Said said && body.getChildren().get(i) instanceof SaidNode node) {
                    node.show(said.text());
                }
            } else {
                body.getChildren().add(node(piece));
                shown.add(piece);
            }
        }
        if (answer.isRunning()) {
            running();
        } else {
            ended();
        }
    }

    private Node node(Piece piece) {
        if (piece instanceof Piece.Said said) {
            return new SaidNode(said.text());
        }
        if (piece instanceof Piece.Listed listed) {
            return new TableNode(listed.table(), table -> doings.save("table.csv", table));
        }
        if (piece instanceof Piece.Drawn drawn) {
            return new PictureNode(drawn.picture(), doings.origin(answer), palette, doings::save);
        }
        Piece.Filed filed = (Piece.Filed) piece;
        return button("Save " + filed.name() + "…", () -> doings.save(filed.name(), filed.table()));
    }

    private void running() {
        if (state.getChildren().isEmpty()) {
            bar.setPrefWidth(90);
            bar.setAccessibleText("How far the script is");
            Button cancel = button("Cancel", doings::cancel);
            cancel.setAccessibleText("Cancel the script (Escape)");
            state.getChildren().setAll(Mark.BUSY.node(), bar, step, cancel);
        }
        bar.setProgress(answer.share() > 0 ? answer.share() : ProgressBar.INDETERMINATE_PROGRESS);
        step.setText(answer.step());
    }

    private void ended() {
        String now = signature();
        if (now.equals(ended)) {
            return;
        }
        ended = now;
        Outcome outcome = answer.outcome().orElseThrow();
        bar.setProgress(0);
        state.getChildren().setAll(mark(outcome.state()));
        state.setVisible(!state.getChildren().isEmpty());
        state.setManaged(state.isVisible());
        foot.getChildren().clear();
        if (!outcome.value().isEmpty()) {
            SaidNode value = new SaidNode(outcome.value());
            value.getStyleClass().add("fw-value");
            value.setAccessibleText("Value");
            foot.getChildren().add(value);
        }
        if (answer.left() > 0) {
            foot.getChildren().add(quiet(Messages.text(ConsoleCode.LEFT, answer.left())));
        }
        if (!outcome.said().isEmpty()) {
            foot.getChildren().add(said(outcome));
        }
        answer.notes().forEach(note -> foot.getChildren().add(quiet(note)));
        offers(outcome);
    }

    /** What the foot depends on. */
    private String signature() {
        return answer.offersChanges() + " " + answer.offersScenarios() + " " + doings.isPlanChanged(answer);
    }

    private static List<Node> mark(Outcome.State state) {
        return switch (state) {
            case DONE -> List.of();
            case CANCELLED -> List.of(Mark.NOTE.node());
            case STOPPED -> List.of(Mark.of(Level.WARN).node());
            case FAILED, BROKEN -> List.of(Mark.of(Level.FAIL).node());
        };
    }

    private Node said(Outcome outcome) {
        Label text = new Label(outcome.said());
        text.getStyleClass().add("fw-console");
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        boolean placed = outcome.error().filter(e -> !e.chain().isEmpty()).isPresent();
        return placed ? new VBox(4, text, button("To the line", () -> doings.toLine(answer))) : text;
    }

    private static Label quiet(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add("fw-quiet");
        return label;
    }

    private void offers(Outcome outcome) {
        if (!answer.offersChanges() && !answer.offersScenarios()) {
            return;
        }
        FlowPane row = new FlowPane(6, 4);
        if (answer.offersScenarios()) {
            String names = outcome.kept().stream().map(s -> s.id()).collect(Collectors.joining(", "));
            row.getChildren()
                    .add(button(
                            "Keep " + (outcome.kept().size() == 1 ? "scenario " : "scenarios ") + names,
                            () -> doings.takeScenarios(answer)));
        }
        if (answer.offersChanges()) {
            String count = answer.changes() == 1 ? "1 change" : answer.changes() + " changes";
            row.getChildren().add(button("Apply " + count + " to the plan", () -> doings.takeChanges(answer)));
            if (doings.isPlanChanged(answer)) {
                foot.getChildren().add(quiet(Messages.text(ConsoleCode.PLAN_CHANGED)));
            }
        }
        foot.getChildren().add(row);
    }
}
