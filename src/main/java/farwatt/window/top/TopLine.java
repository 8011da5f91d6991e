package farwatt.window.top;

import farwatt.engine.Corner;
import farwatt.window.desk.Desk;
import farwatt.window.desk.DeskSheet;
import farwatt.window.desk.UnitsShown;
import farwatt.window.mark.Mark;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The line on top. For the window's thread. */
public final class TopLine extends VBox {
    private final Desk desk;
    private final DeskSheet sheet;
    private final TopLineModel model;
    private final Doings doings;
    private final Label name = new Label();
    private final Label unsaved = new Label();
    private final Label scenarios = new Label("Scenarios:");
    private final Label at = new Label("figures in:");
    private final HBox tags = new HBox(2);
    private final HBox corners = new HBox(0);
    private final HBox verdict = new HBox();
    private final Label sentence = new Label();
    private final Label counts = new Label();
    private final Button undo = button("Undo", "Take the last step back (Ctrl+Z)");
    private final Button redo = button("Redo", "Make the step again (Ctrl+Y)");
    private final Button units = button("", "Metric or imperial (Ctrl+U)");
    private List<String> shownTags = List.of();

    /** What the buttons of the line start elsewhere. */
    public interface Doings {
        void undo();

        void redo();

        void find();

        void units();

        void newScenario();

        void renameScenario(String id);

        void duplicateScenario(String id);

        void standOn(String id);

        void removeScenario(String id);
    }

    public TopLine(Desk desk, DeskSheet sheet, Doings doings, MenuButton... menus) {
        this.desk = desk;
        this.sheet = sheet;
        this.doings = doings;
        model = new TopLineModel(desk);
        getStyleClass().add("fw-top");
        name.getStyleClass().add("fw-name");
        name.setMaxWidth(260);
        unsaved.getStyleClass().add("fw-quiet");
        corners.setAlignment(Pos.CENTER);
        Button find = button("Find", "Find in the table (Ctrl+F)");
        undo.setOnAction(e -> doings.undo());
        redo.setOnAction(e -> doings.redo());
        find.setOnAction(e -> doings.find());
        units.setOnAction(e -> doings.units());
        HBox left = new HBox(8, name, unsaved);
        left.getChildren().addAll(menus);
        left.setAlignment(Pos.CENTER_LEFT);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox first = new HBox(10, left, gap, units, undo, redo, find);
        first.setAlignment(Pos.CENTER_LEFT);
        ScrollPane roll = new ScrollPane(tags);
        roll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        roll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        roll.setFitToHeight(true);
        roll.setFocusTraversable(false);
        HBox.setHgrow(roll, Priority.ALWAYS);
        tags.setAlignment(Pos.CENTER_LEFT);
        scenarios.getStyleClass().add("fw-quiet");
        scenarios.setMinWidth(USE_PREF_SIZE);
        at.getStyleClass().add("fw-quiet");
        at.setMinWidth(USE_PREF_SIZE);
        corners.setMinWidth(USE_PREF_SIZE);
        HBox second = new HBox(8, roll, at, corners);
        second.setAlignment(Pos.CENTER_LEFT);
        verdict.getStyleClass().add("fw-verdict");
        sentence.setTextOverrun(OverrunStyle.ELLIPSIS);
        sentence.setWrapText(true);
        HBox.setHgrow(sentence, Priority.ALWAYS);
        sentence.setMaxWidth(Double.MAX_VALUE);
        counts.getStyleClass().add("fw-quiet");
        counts.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(first, second, verdict);
        corners();
        desk.watch(this::refresh);
        refresh();
    }

    /** Keeps the verdict to one line where there is little room; all of it is in its hint. */
    public void terse(boolean terse) {
        sentence.setWrapText(!terse);
        for (Label label : List.of(scenarios, at)) {
            label.setVisible(!terse);
            label.setManaged(!terse);
        }
    }

    private static Button button(String text, String hint) {
        Button button = new Button(text);
        button.getStyleClass().add("fw-button");
        button.setTooltip(new Tooltip(hint));
        button.setAccessibleHelp(hint);
        button.setMinWidth(USE_PREF_SIZE);
        return button;
    }

    private void corners() {
        for (Corner corner : Corner.values()) {
            ToggleButton button = corner(TopLineModel.word(corner), "Figures " + corner.phrase());
            button.setUserData(corner);
            button.setOnAction(e -> desk.look(corner));
        }
        ToggleButton all = corner("worst of all", "Figures of the corner that decides the verdict");
        all.setUserData("all");
        all.setOnAction(e -> desk.lookAtWorst());
    }

    private ToggleButton corner(String word, String hint) {
        ToggleButton button = new ToggleButton(word);
        button.getStyleClass().add("fw-corner");
        button.setTooltip(new Tooltip(hint));
        button.setAccessibleText("Corner " + word);
        corners.getChildren().add(button);
        return button;
    }

    private void refresh() {
        name.setText(model.title());
        unsaved.setText(model.isUnsaved() ? "not saved" : "");
        for (Node node : corners.getChildren()) {
            Object corner = node.getUserData();
            boolean chosen = desk.looksAtWorst() ? corner.equals("all") : corner == desk.corner();
            ((ToggleButton) node).setSelected(chosen);
        }
        tags();
        Mark mark = model.mark();
        sentence.setText(model.verdict());
        sentence.setTooltip(new Tooltip(model.verdict()));
        counts.setText(model.counts());
        verdict.getChildren().setAll(mark.node(), sentence, counts);
        verdict.setAccessibleText(mark.word() + ". " + model.verdict());
        step(undo, "Undo", model.undo().orElse(""));
        step(redo, "Redo", model.redo().orElse(""));
        units.setText(sheet.units().word());
        units.setAccessibleText("Units: " + sheet.units().word());
    }

    private static void step(Button button, String word, String label) {
        button.setDisable(label.isEmpty());
        button.setAccessibleText(label.isEmpty() ? word : word + ": " + label);
        button.getTooltip().setText(label.isEmpty() ? word : word + ": " + label);
    }

    private void tags() {
        List<String> ids = new ArrayList<>(List.of(""));
        ids.addAll(model.scenarios());
        if (!ids.equals(shownTags)) {
            shownTags = ids;
            tags.getChildren().setAll(scenarios);
            ids.forEach(id -> tags.getChildren().add(tag(id)));
            Button more = button("+ scenario", "New scenario on the one looked at (Ctrl+Shift+N)");
            more.setAccessibleText("New scenario");
            more.setOnAction(e -> doings.newScenario());
            tags.getChildren().add(more);
        }
        for (Node node : tags.getChildren()) {
            if (node instanceof ToggleButton tag) {
                tag.setSelected(desk.scenario().equals(tag.getUserData()));
            }
        }
    }

    private ToggleButton tag(String id) {
        ToggleButton tag = new ToggleButton(id.isEmpty() ? "plan as it is" : id);
        tag.getStyleClass().add("fw-tag");
        tag.setMinWidth(USE_PREF_SIZE);
        tag.setUserData(id);
        tag.setOnAction(e -> {
            desk.look(id);
            refresh();
        });
        tag.setAccessibleText("Scenario " + tag.getText());
        if (!id.isEmpty()) {
            tag.setTooltip(new Tooltip(model.hint(id)));
            tag.setContextMenu(new ContextMenu(
                    item("Rename…", () -> doings.renameScenario(id)),
                    item("Duplicate", () -> doings.duplicateScenario(id)),
                    item("Stand on another…", () -> doings.standOn(id)),
                    item("Remove", () -> doings.removeScenario(id))));
        }
        return tag;
    }

    private static MenuItem item(String text, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setOnAction(e -> action.run());
        return item;
    }

    /** Shows the units that are chosen now. */
    public void showUnits(UnitsShown shown) {
        sheet.show(shown);
        refresh();
    }

    /** Takes the cursor to the tags of the scenarios. */
    public void enter() {
        tags.getChildren().get(0).requestFocus();
    }
}
