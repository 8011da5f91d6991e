package farwatt.window.why;

import farwatt.engine.Explanation;
import farwatt.plan.Table;
import farwatt.review.Finding;
import farwatt.review.Remedy;
import farwatt.window.desk.Desk;
import farwatt.window.mark.Mark;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TreeCell;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Derivation of the chosen value above, findings below. For the window's thread. */
public final class WhyView extends SplitPane {
    /** Steps of a derivation that are open from the start. */
    private static final int OPEN = 2;

    private final WhyModel model;
    private final Label title = new Label("Why");
    private final TreeView<Explanation> tree = new TreeView<>();
    private final Label none = new Label("Choose a cell, then F4: how its value came about stands here.");
    private final ListView<Finding> findings = new ListView<>();
    private final Label findingsTitle = new Label("Findings");
    private final Button stop = new Button("Stop");
    private final Desk desk;
    private final Pointer pointer;
    private final Mending mending;

    /** Goes to a cell. */
    @FunctionalInterface
    public interface Pointer {
        void to(Table table, String id, String name);
    }

    /** What a person does with a remedy. */
    public interface Mending {
        /** Makes a scenario of it. */
        void attempt(Remedy remedy);

        /** Puts it into what is looked at. */
        void apply(Remedy remedy);
    }

    public WhyView(Desk desk, Pointer pointer, Mending mending) {
        this.mending = mending;
        this.desk = desk;
        model = new WhyModel(desk);
        this.pointer = pointer;
        setOrientation(Orientation.VERTICAL);
        title.getStyleClass().add("fw-side-title");
        findingsTitle.getStyleClass().add("fw-side-title");
        none.setWrapText(true);
        none.getStyleClass().add("fw-quiet");
        none.setMaxWidth(Double.MAX_VALUE);
        none.setMinHeight(USE_PREF_SIZE);
        none.setPadding(new javafx.geometry.Insets(0, 8, 0, 8));
        tree.setCellFactory(t -> new Step());
        tree.setAccessibleText("How the value came about");
        findings.setCellFactory(l -> new Found());
        findings.setAccessibleText("Findings, worst first");
        findings.setPlaceholder(new Label("Nothing was found."));
        findings.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                go();
            }
        });
        VBox above = new VBox(title, none, tree);
        none.managedProperty().bind(none.visibleProperty());
        none.visibleProperty().bind(tree.rootProperty().isNull());
        VBox.setVgrow(tree, Priority.ALWAYS);
        stop.getStyleClass().add("fw-button");
        stop.setAccessibleText("Stop looking for what mends the findings");
        stop.setOnAction(e -> desk.stopSeeking());
        stop.managedProperty().bind(stop.visibleProperty());
        stop.setVisible(false);
        HBox head = new HBox(8, findingsTitle, stop);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox below = new VBox(head, findings);
        VBox.setVgrow(findings, Priority.ALWAYS);
        getItems().addAll(above, below);
        setDividerPositions(0.45);
        desk.watch(this::refresh);
        desk.watchSeeking(this::counted);
        refresh();
    }

    private void go() {
        Finding finding = findings.getSelectionModel().getSelectedItem();
        if (finding != null) {
            Table.of(finding.place().table())
                    .ifPresent(table -> pointer.to(
                            table, finding.place().row(), finding.place().name()));
        }
    }

    /** Shows how a cell's value came about, now and after every edit. */
    public void choose(Table table, String id, String name) {
        model.choose(table, id, name);
        title.setText("Why " + model.title());
        model.ask(this::show);
    }

    /** Takes the cursor to the derivation. */
    public void enter() {
        tree.requestFocus();
    }

    /** Takes the cursor to the findings. */
    public void enterFindings() {
        findings.requestFocus();
    }

    private void refresh() {
        if (model.hasNews()) {
            findings.getItems().setAll(model.findings());
        }
        counted();
        model.ask(this::show);
    }

    /** How many findings there are, and how far the search for what mends them is. */
    private void counted() {
        String count = "Findings (" + findings.getItems().size() + ")";
        boolean seeking = desk.sought() < 1;
        findingsTitle.setText(seeking ? count + ", what mends them: " + (int) (100 * desk.sought()) + " %" : count);
        stop.setVisible(seeking);
    }

    private void show(Optional<Explanation> found) {
        if (found.isEmpty()) {
            tree.setRoot(null);
            return;
        }
        TreeItem<Explanation> root = item(found.get(), 0);
        tree.setRoot(root);
    }

    private static TreeItem<Explanation> item(Explanation explanation, int depth) {
        TreeItem<Explanation> item = new TreeItem<>(explanation);
        explanation.inputs().forEach(input -> item.getChildren().add(item(input, depth + 1)));
        item.setExpanded(depth < OPEN);
        return item;
    }

    /** One step of a derivation: what, how much, how, from where. */
    private static final class Step extends TreeCell<Explanation> {
        @Override
        protected void updateItem(Explanation step, boolean empty) {
            super.updateItem(step, empty);
            setText(null);
            if (empty || step == null) {
                setGraphic(null);
                return;
            }
            Label what = new Label(step.title() + " = " + step.value());
            what.getStyleClass().add("fw-word");
            Label how = new Label(step.how() + (step.source().isEmpty() ? "" : " (" + step.source() + ")"));
            how.getStyleClass().add("fw-quiet");
            VBox box = new VBox(what, how);
            if (step.more() > 0) {
                box.getChildren().add(new Label("and " + step.more() + " more"));
            }
            setGraphic(box);
            setAccessibleText(what.getText() + ". " + how.getText());
        }
    }

    /** One finding. */
    private final class Found extends ListCell<Finding> {
        Found() {
            setPrefWidth(0);
            setOnMouseClicked(e -> go());
        }

        @Override
        protected void updateItem(Finding finding, boolean empty) {
            super.updateItem(finding, empty);
            setText(null);
            if (empty || finding == null) {
                setGraphic(null);
                return;
            }
            Label where = new Label(finding.place().text()
                    + finding.corner().map(corner -> ", " + corner.phrase()).orElse(""));
            where.getStyleClass().add("fw-quiet");
            HBox.setHgrow(where, Priority.ALWAYS);
            Label text = wrapped(finding.text());
            VBox box = new VBox(new HBox(8, Mark.of(finding.level()).node(), where), text);
            if (!finding.caution().isEmpty()) {
                box.getChildren().add(wrapped("Caution: " + finding.caution()));
            }
            if (!finding.source().isEmpty()) {
                Label source = wrapped(finding.source());
                source.getStyleClass().add("fw-quiet");
                box.getChildren().add(source);
            }
            finding.remedies().forEach(remedy -> box.getChildren().add(remedy(remedy)));
            if (!finding.nearest().isEmpty()) {
                box.getChildren().add(wrapped(finding.nearest()));
            }
            box.getStyleClass().add("fw-finding");
            setGraphic(box);
            setAccessibleText(Mark.of(finding.level()).word() + ". " + where.getText() + ". " + finding.text());
        }

        private VBox remedy(Remedy remedy) {
            Button attempt = button("Try", "Makes a scenario: " + remedy.text());
            attempt.setOnAction(e -> mending.attempt(remedy));
            Button apply = button("Apply", "Changes the plan, one step to undo: " + remedy.text());
            apply.setOnAction(e -> mending.apply(remedy));
            return new VBox(2, wrapped("Mends it: " + remedy.text()), new HBox(6, attempt, apply));
        }

        private static Button button(String text, String help) {
            Button button = new Button(text);
            button.getStyleClass().add("fw-button");
            button.setAccessibleText(help);
            return button;
        }

        private Label wrapped(String text) {
            Label label = new Label(text);
            label.setWrapText(true);
            label.maxWidthProperty().bind(findings.widthProperty().subtract(36));
            label.setMinHeight(USE_PREF_SIZE);
            return label;
        }
    }
}
