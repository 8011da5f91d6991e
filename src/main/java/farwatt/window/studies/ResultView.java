package farwatt.window.studies;

import farwatt.picture.Palette;
import farwatt.quantity.Decimal;
import farwatt.report.Messages;
import farwatt.window.mark.Mark;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What a study found: sentences, a picture, a table. For the window's thread. */
final class ResultView extends BorderPane {
    private static final double USUAL_FONT = 13;
    private static final double PICTURE = 0.62;

    private final StudiesModel model;
    private final Decimal decimal;
    private final TakeAway away;
    private final StudiesView.Saving saving;
    private final IntConsumer trying;
    private final Label basis = new Label();
    private final HBox stale = new HBox(4);
    private final Label said = new Label();
    private final FlowPane takes = new FlowPane(6, 2);
    private final List<ComboBox<String>> held = new ArrayList<>();
    private final ComboBox<String> figure = new ComboBox<>();
    private final TableView<Integer> table = new TableView<>();
    private final SplitPane halves = new SplitPane();
    private final PictureView picture;
    private final Button attempt;
    private final ToggleButton into = new ToggleButton("Into the workbook");
    private @Nullable StudyResult shown;
    private boolean filling;

    /**
     * A view of results.
     *
     * @param decimal the person's decimal sign
     * @param trying told the row of which a scenario is wanted
     */
    ResultView(StudiesModel model, Decimal decimal, TakeAway away, StudiesView.Saving saving, IntConsumer trying) {
        this.model = model;
        this.decimal = decimal;
        this.away = away;
        this.saving = saving;
        this.trying = trying;
        picture = new PictureView(() -> basis.getFont().getSize() / USUAL_FONT, this::choose, this::attempt);
        basis.getStyleClass().add("fw-quiet");
        said.setWrapText(true);
        said.getStyleClass().add("fw-study-said");
        stale.setAlignment(Pos.CENTER_LEFT);
        Label changed = new Label(Messages.text(StudiesCode.CHANGED));
        stale.getChildren().addAll(Mark.WARN.node(), changed);
        stale.managedProperty().bind(stale.visibleProperty());
        figure.setAccessibleText("Figure that is drawn");
        figure.setOnAction(e -> draw());
        into.getStyleClass().add("fw-button");
        into.setTooltip(new Tooltip("With its chart, as a sheet of the next hand-over workbooks"));
        into.setMinWidth(USE_PREF_SIZE);
        into.setOnAction(e -> model.handOver());
        attempt = button("Make it a scenario", "The chosen row as a scenario (Enter)", () -> attempt(row()));
        FlowPane head = new FlowPane(10, 2, basis, stale);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox top = new VBox(2, head, said, takes);
        top.getStyleClass().add("fw-study-head");
        setTop(top);
        table.setAccessibleText("What the study found, row by row");
        table.setPlaceholder(new Label("Ask a question at the left and press Run."));
        table.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> rowChosen());
        table.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER && !e.isShortcutDown() && model.canTry(row())) {
                attempt(row());
                e.consume();
            }
        });
        table.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                attempt(row());
            }
        });
        halves.getItems().setAll(table);
        setCenter(halves);
        refresh();
    }

    private static Button button(String text, String help, Runnable action) {
        Button button = new Button(text);
        button.getStyleClass().add("fw-button");
        button.setTooltip(new Tooltip(help));
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }

    private int row() {
        Integer row = table.getSelectionModel().getSelectedItem();
        return row == null ? -1 : row;
    }

    private void choose(int row) {
        table.getSelectionModel().clearAndSelect(row);
        table.scrollTo(Math.max(0, row - 2));
    }

    private void rowChosen() {
        picture.mark(row());
        attempt.setDisable(!model.canTry(row()));
    }

    private void attempt(int row) {
        if (model.canTry(row)) {
            trying.accept(row);
        }
    }

    void show(Palette palette) {
        picture.show(palette);
    }

    /** Texts have another size now. */
    void lay() {
        picture.lay();
    }

    /** Shows what the model has. */
    void refresh() {
        Optional<StudyResult> now = model.result();
        stale.setVisible(model.isStale());
        if (!now.equals(Optional.ofNullable(shown))) {
            shown = now.orElse(null);
            now.ifPresent(this::fill);
        }
        into.setSelected(model.isHandedOver());
        takes.setVisible(now.isPresent());
        takes.setManaged(now.isPresent());
        picture.show(model.drawn());
    }

    private void fill(StudyResult result) {
        filling = true;
        basis.setText(result.kind().question() + "  "
                + Messages.text(StudiesCode.BASIS, result.basis().text()));
        said.setText(String.join("  ", result.said()));
        takes.getChildren().clear();
        fillChoices(result);
        fillTakes(result);
        columns(result.table());
        boolean drawn = !result.drawing().figures().isEmpty();
        if (drawn != halves.getItems().contains(picture)) {
            List<Node> parts = drawn ? List.of(picture, table) : List.of(table);
            halves.getItems().setAll(parts);
            if (drawn) {
                halves.setDividerPositions(PICTURE);
            }
        }
        filling = false;
    }

    private void fillChoices(StudyResult result) {
        held.clear();
        Drawing drawing = result.drawing();
        if (drawing.figures().size() > 1) {
            figure.getItems().setAll(drawing.figures());
            figure.getSelectionModel().select(0);
            takes.getChildren().addAll(new Label("Drawn"), figure);
        } else {
            figure.getItems().clear();
        }
        for (int h = 0; h < drawing.held().size(); h++) {
            ComboBox<String> values = new ComboBox<>();
            values.getItems().setAll(drawing.values(h));
            values.getSelectionModel().select(0);
            values.setAccessibleText(drawing.held().get(h) + " is held at");
            values.setOnAction(e -> draw());
            held.add(values);
            takes.getChildren().addAll(new Label(drawing.held().get(h) + " held at"), values);
        }
    }

    private void fillTakes(StudyResult result) {
        int last = result.table().size() - 1;
        if (last >= 0 && !result.table().steps(last).isEmpty()) {
            attempt.setDisable(true);
            takes.getChildren().add(attempt);
        }
        if (!result.drawing().figures().isEmpty()) {
            takes.getChildren()
                    .addAll(
                            button("Save picture…", "As PNG or SVG", () -> savePicture(result)),
                            button(
                                    "Copy picture",
                                    "To the clipboard",
                                    () -> picture.drawn()
                                            .ifPresent(now -> away.copyPicture(now.chart(), result.basis()))));
        }
        takes.getChildren()
                .addAll(
                        button(
                                "Save table…",
                                "As CSV",
                                () -> save("Table of the study", List.of(".csv"), path -> away.table(result, path))),
                        button("Copy table", "To the clipboard, with tabs", () -> away.copyTable(result)),
                        into);
    }

    private void savePicture(StudyResult result) {
        picture.drawn()
                .ifPresent(now -> save(
                        "Picture of the study",
                        List.of(".png", ".svg"),
                        path -> away.picture(now.chart(), result.basis(), path)));
    }

    private void save(String title, List<String> endings, Consumer<Path> then) {
        saving.where(title, endings).ifPresent(then);
    }

    private void draw() {
        if (!filling) {
            int which = Math.max(0, figure.getSelectionModel().getSelectedIndex());
            model.draw(
                    which,
                    held.stream()
                            .map(values ->
                                    Math.max(0, values.getSelectionModel().getSelectedIndex()))
                            .toList());
        }
    }

    private void columns(StudyTable found) {
        table.getSelectionModel().clearSelection();
        table.getColumns().clear();
        for (int c = 0; c < found.headings().size(); c++) {
            int column = c;
            TableColumn<Integer, String> each =
                    new TableColumn<>(found.headings().get(c));
            each.setCellValueFactory(cell -> new ReadOnlyStringWrapper(shown(found, cell.getValue(), column)));
            each.setSortable(false);
            if (found.size() > 0 && found.number(0, c).isPresent()) {
                each.getStyleClass().add("fw-number");
            }
            each.setReorderable(false);
            each.setPrefWidth(width(found, c));
            table.getColumns().add(each);
        }
        table.setItems(new RowList(found.size()));
    }

    /** A cell's text, a number with the person's decimal sign. */
    private String shown(StudyTable found, int row, int column) {
        boolean swap = decimal == Decimal.COMMA && found.number(row, column).isPresent();
        String text = found.text(row, column);
        return swap ? text.replace('.', ',') : text;
    }

    /** Room for the heading and the first rows. */
    private double width(StudyTable found, int column) {
        int longest = found.headings().get(column).length() + 2;
        for (int r = 0; r < Math.min(30, found.size()); r++) {
            longest = Math.max(longest, found.text(r, column).length());
        }
        double size = basis.getFont().getSize();
        return Math.min(30 * size, (longest + 1) * size * 0.58);
    }
}
