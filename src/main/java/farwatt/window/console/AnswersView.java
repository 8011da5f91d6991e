package farwatt.window.console;

import farwatt.picture.Palette;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** What came of the runs, the newest on top. For the window's thread. */
final class AnswersView extends ScrollPane {
    private final ConsoleModel model;
    private final AnswerNode.Doings doings;
    private final VBox all = new VBox();
    private final Label none = new Label("Answers come here, the newest on top.");
    private final Map<Answer, AnswerNode> nodes = new HashMap<>();
    private Palette palette = Palette.LIGHT;

    AnswersView(ConsoleModel model, AnswerNode.Doings doings) {
        this.model = model;
        this.doings = doings;
        none.getStyleClass().add("fw-quiet");
        none.setStyle("-fx-padding: 0.6em;");
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        all.getStyleClass().add("fw-answers");
        setAccessibleText("Answers, the newest first");
        refresh();
    }

    /** Draws pictures in other colours. */
    void show(Palette other) {
        palette = other;
        nodes.values().forEach(node -> node.show(other));
    }

    void refresh() {
        List<Node> order = new ArrayList<>();
        List<Answer> answers = model.answers();
        nodes.keySet().retainAll(answers);
        boolean fresh = false;
        for (Answer answer : answers) {
            AnswerNode node = nodes.get(answer);
            if (node == null) {
                node = new AnswerNode(answer, doings, palette);
                nodes.put(answer, node);
                fresh = true;
            } else {
                node.refresh();
            }
            order.add(node);
        }
        if (order.isEmpty()) {
            order.add(none);
        }
        if (!all.getChildren().equals(order)) {
            all.getChildren().setAll(order);
        }
        if (fresh) {
            setVvalue(0);
        }
    }
}
