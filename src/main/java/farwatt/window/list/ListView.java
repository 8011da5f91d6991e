package farwatt.window.list;

import farwatt.intake.ColumnMeaning;
import farwatt.intake.Meaning;
import farwatt.intake.Outcome;
import farwatt.intake.Question;
import farwatt.intake.ReportLine;
import farwatt.intake.RowState;
import farwatt.intake.TakeIn;
import farwatt.intake.Taken;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.window.WindowCode;
import farwatt.window.desk.Desk;
import farwatt.window.work.Work;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.cell.TextFieldTableCell;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** What was understood of a list, to be mended and taken in. For the window's thread. */
public final class ListView extends BorderPane {
    private static final double SIDE = 330;

    private final ListModel model;
    private final Consumer<Notice> say;
    private final Runnable taken;
    private final Label counts = new Label("Open or paste a list.");
    private final VBox side = new VBox(4);
    private final TableView<ReportLine> rows = new TableView<>();
    private final Button take = new Button("Take in");
    private final Button leave = new Button("Take in, leave held rows out");

    /** @param taken told when a list was taken in */
    public ListView(Desk desk, Work work, Consumer<Notice> say, Runnable taken) {
        model = new ListModel(desk, work);
        this.say = say;
        this.taken = taken;
        take.getStyleClass().add("fw-button");
        leave.getStyleClass().add("fw-button");
        take.setOnAction(e -> take(TakeIn.Policy.STOP));
        leave.setOnAction(e -> take(TakeIn.Policy.SKIP));
        counts.setWrapText(true);
        HBox.setHgrow(counts, Priority.ALWAYS);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, counts, gap, take, leave);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setStyle("-fx-padding: 0.3em 0.6em;");
        setTop(head);
        ScrollPane roll = new ScrollPane(side);
        roll.setFitToWidth(true);
        roll.setPrefWidth(SIDE);
        side.setStyle("-fx-padding: 0.4em;");
        setLeft(roll);
        rows.setEditable(true);
        rows.setAccessibleText("Rows of the list and what became of each");
        rows.setPlaceholder(new Label("No list was read yet."));
        setCenter(rows);
        buttons();
    }

    /** Reads a file. */
    public void open(Path list) {
        model.open(list, this::read);
    }

    /** Reads text from elsewhere. */
    public void paste(String text) {
        model.paste(text, this::read);
    }

    private void read(Work.End<Outcome> end) {
        if (end instanceof Work.End.Done<Outcome> done) {
            show(done.result());
        } else if (end instanceof Work.End.Not<Outcome> not) {
            say.accept(not.notice());
        }
    }

    private void show(Outcome outcome) {
        StringBuilder text = new StringBuilder(model.name() + ": " + outcome.rows() + " rows");
        for (RowState state : RowState.values()) {
            text.append(", ").append(outcome.count(state)).append(' ').append(state.word());
        }
        outcome.totals().forEach(check -> text.append(". ").append(check.said()));
        outcome.notices().forEach(notice -> text.append(' ').append(notice.line()));
        counts.setText(text.toString());
        side.getChildren().clear();
        if (!outcome.questions().isEmpty()) {
            side.getChildren().add(title("Questions"));
            outcome.questions().forEach(question -> side.getChildren().add(question(question)));
        }
        side.getChildren().add(title("Columns"));
        outcome.columns().forEach(column -> side.getChildren().add(column(column)));
        table(outcome);
        buttons();
    }

    private static Label title(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("fw-side-title");
        return label;
    }

    private VBox question(Question question) {
        Label text = new Label(question.text());
        text.setWrapText(true);
        ComboBox<String> choice = new ComboBox<>();
        choice.getItems().setAll(question.choices());
        choice.setValue(question.used());
        choice.setAccessibleText(question.text());
        choice.setOnAction(e -> model.answer(question.key(), choice.getValue(), this::read));
        return new VBox(2, text, choice);
    }

    private VBox column(ColumnMeaning column) {
        ComboBox<Meaning> choice = new ComboBox<>();
        choice.getItems().setAll(Meaning.values());
        choice.setConverter(new StringConverter<>() {
            @Override
            public String toString(Meaning meaning) {
                return meaning == null ? "" : meaning.word().replace('_', ' ');
            }

            @Override
            public Meaning fromString(String word) {
                return Meaning.of(word.toLowerCase(Locale.ROOT).replace(' ', '_'))
                        .orElse(Meaning.OWN);
            }
        });
        choice.setValue(column.meaning());
        choice.setAccessibleText("Meaning of " + column.heading());
        choice.setOnAction(e -> model.mean(column.heading(), choice.getValue(), this::read));
        Label heading = new Label(column.heading());
        heading.getStyleClass().add("fw-word");
        heading.setMaxWidth(150);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox line = new HBox(6, heading, gap, choice);
        line.setAlignment(Pos.CENTER_LEFT);
        Label reason = new Label(column.reason());
        reason.setWrapText(true);
        reason.getStyleClass().add("fw-quiet");
        return new VBox(line, reason);
    }

    private void table(Outcome outcome) {
        rows.getColumns().clear();
        List<TableColumn<ReportLine, String>> columns = new ArrayList<>();
        columns.add(plain("place", 70, ReportLine::place));
        columns.add(plain("state", 80, line -> line.state().word()));
        columns.add(plain("said", 320, ReportLine::said));
        Set<String> headings = new LinkedHashSet<>();
        outcome.report().forEach(line -> headings.addAll(line.original().keySet()));
        for (String heading : headings) {
            TableColumn<ReportLine, String> column =
                    plain(heading, 130, line -> line.original().getOrDefault(heading, ""));
            column.setCellFactory(TextFieldTableCell.forTableColumn());
            column.setEditable(true);
            column.setOnEditCommit(e -> model.mend(e.getRowValue().place(), heading, e.getNewValue(), this::read));
            columns.add(column);
        }
        rows.getColumns().setAll(columns);
        rows.getItems()
                .setAll(outcome.report().stream()
                        .sorted((a, b) ->
                                Boolean.compare(b.state() == RowState.HELD_BACK, a.state() == RowState.HELD_BACK))
                        .toList());
    }

    private static TableColumn<ReportLine, String> plain(
            String heading, double width, java.util.function.Function<ReportLine, String> text) {
        TableColumn<ReportLine, String> column = new TableColumn<>(heading);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
        column.setPrefWidth(width);
        column.setEditable(false);
        column.setSortable(false);
        return column;
    }

    private void buttons() {
        boolean some = model.outcome().isPresent();
        int held = model.count(RowState.HELD_BACK);
        take.setDisable(!some || held > 0);
        leave.setVisible(some && held > 0);
        leave.setManaged(leave.isVisible());
    }

    private void take(TakeIn.Policy policy) {
        try {
            Taken result = model.take(policy);
            result.notices().forEach(say);
            result.questions()
                    .forEach(question ->
                            say.accept(new Notice(Level.WARN, question.key(), Place.NONE, question.text())));
            say.accept(Notice.of(
                    Level.NOTE,
                    WindowCode.TAKEN_IN,
                    Place.NONE,
                    result.added().size() + result.changed().size(),
                    model.name(),
                    model.count(RowState.HELD_BACK),
                    model.count(RowState.LEFT_OUT)));
            taken.run();
        } catch (Refusal e) {
            say.accept(e.notice());
        }
    }
}
