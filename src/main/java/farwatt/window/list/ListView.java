package farwatt.window.list;

import farwatt.file.KeptMapping;
import farwatt.intake.Outcome;
import farwatt.intake.Question;
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
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What was understood of a list, to be mended and taken in. For the window's thread. */
public final class ListView extends BorderPane {
    private static final double SIDE = 330;

    private final ListModel model;
    private final ListAsking asking;
    private final Consumer<Notice> say;
    private final Consumer<Taken> done;
    private final Label counts = new Label("Open a list from the Plan menu, or copy one and take it in from there.");
    private final Label notes = new Label();
    private final ListSide side = new ListSide();
    private final RowsTable rows;
    private final AgainstTable against = new AgainstTable();
    private final ToggleButton rowsWord = new ToggleButton("Rows");
    private final ToggleButton againstWord = new ToggleButton("Against the plan");
    private final Button take = ListSide.button("Take in", () -> take(TakeIn.Policy.SKIP));
    private final Button keep = ListSide.button("", () -> take(TakeIn.Policy.KEEP));

    /** @param done told what a list that was taken in did */
    public ListView(Desk desk, Work work, ListAsking asking, Consumer<Notice> say, Consumer<Taken> done) {
        model = new ListModel(desk, work);
        this.asking = asking;
        this.say = say;
        this.done = done;
        rows = new RowsTable((place, heading, text) -> model.mend(place, heading, text, this::read));
        setTop(head());
        ScrollPane roll = new ScrollPane(side);
        roll.setFitToWidth(true);
        roll.setPrefWidth(SIDE);
        roll.setMinWidth(SIDE);
        setLeft(roll);
        setCenter(rows);
        buttons();
    }

    private VBox head() {
        counts.setWrapText(true);
        counts.setMinWidth(0);
        notes.setWrapText(true);
        notes.getStyleClass().add("fw-quiet");
        notes.managedProperty().bind(notes.textProperty().isNotEmpty());
        ToggleGroup group = new ToggleGroup();
        for (ToggleButton word : List.of(rowsWord, againstWord)) {
            word.getStyleClass().add("fw-corner");
            word.setToggleGroup(group);
            word.setMinWidth(Region.USE_PREF_SIZE);
        }
        rowsWord.setSelected(true);
        rowsWord.setOnAction(e -> show(rowsWord));
        againstWord.setOnAction(e -> show(againstWord));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox line = new HBox(8, rowsWord, againstWord, gap, keep, take);
        line.setAlignment(Pos.CENTER_LEFT);
        VBox head = new VBox(2, counts, notes, line);
        head.getStyleClass().add("fw-list-head");
        return head;
    }

    private void show(ToggleButton word) {
        word.setSelected(true);
        setCenter(word == rowsWord ? rows : against);
    }

    /** Reads a file. */
    public void open(Path list) {
        show(rowsWord);
        model.open(list, this::read);
    }

    /** Reads text from elsewhere. */
    public void paste(String text) {
        show(rowsWord);
        model.paste(text, this::read);
    }

    private void read(Work.End<ListModel.Read> end) {
        if (end instanceof Work.End.Done<ListModel.Read> read) {
            show(read.result().outcome(), read.result().taken());
        } else if (end instanceof Work.End.Not<ListModel.Read> not) {
            refused(not.notice());
        }
    }

    private void refused(Notice notice) {
        boolean locked = notice.code().equals("intake.locked") || notice.code().equals("intake.wrong_password");
        if (locked) {
            counts.setText(model.name());
            side.askPassword(notice.text(), word -> model.unlock(word, this::read));
        } else {
            say.accept(notice);
        }
    }

    private void show(Outcome outcome, Taken taken) {
        List<String> parts = new ArrayList<>();
        for (RowState state : RowState.values()) {
            parts.add(outcome.count(state) + " " + state.word());
        }
        counts.setText(model.name() + " – " + outcome.rows() + " rows: " + String.join(", ", parts)
                + (outcome.count(RowState.HELD_BACK) == 0
                        ? "."
                        : ". Rows held back stand first; a double click mends a cell."));
        List<String> said = new ArrayList<>();
        outcome.totals().stream().filter(check -> !check.agrees()).forEach(check -> said.add(check.said()));
        outcome.notices().forEach(notice -> said.add(notice.text()));
        taken.notices().forEach(notice -> said.add(notice.text()));
        notes.setText(String.join(" ", said));
        List<Question> questions = new ArrayList<>(outcome.questions());
        questions.addAll(taken.questions());
        side.ask(questions, (key, choice) -> model.answer(key, choice, this::read));
        side.columns(outcome.columns(), (heading, meaning) -> model.mean(heading, meaning, this::read));
        side.mappings(model.kept(), mapping -> model.use(mapping, this::read), deeds());
        rows.show(outcome);
        rowsWord.setText("Rows (" + outcome.rows() + ")");
        against.show(taken);
        int differ =
                (int) taken.differences().stream().map(d -> d.id()).distinct().count();
        againstWord.setText("Against the plan (" + taken.added().size() + " new, " + differ + " differ, "
                + taken.gone().size() + " not in the list)");
        buttons();
    }

    private List<Button> deeds() {
        return List.of(
                ListSide.button("Keep in the plan…", this::keepInPlan),
                ListSide.button("Keep as a file…", this::keepAsFile),
                ListSide.button("Use a file…", this::useFile));
    }

    private void keepInPlan() {
        asking.name(model.name())
                .ifPresent(name -> trying(() -> {
                    model.keep(name);
                    say.accept(Notice.of(Level.NOTE, WindowCode.MAPPING_KEPT, Place.NONE, name));
                    model.read().ifPresent(read -> show(read.outcome(), read.taken()));
                }));
    }

    private void keepAsFile() {
        asking.place(model.name() + ".mapping.json")
                .ifPresent(file -> trying(() -> {
                    model.used("").write(file);
                    say.accept(Notice.of(Level.NOTE, WindowCode.WRITTEN, Place.NONE, file));
                }));
    }

    private void useFile() {
        asking.mapping().ifPresent(file -> trying(() -> model.use(KeptMapping.read(file), this::read)));
    }

    /** Something that may be refused. */
    private interface Doing {
        void run() throws Refusal;
    }

    private void trying(Doing doing) {
        try {
            doing.run();
        } catch (Refusal e) {
            say.accept(e.notice());
        }
    }

    private void buttons() {
        Optional<ListModel.Read> read = model.read();
        int held = model.count(RowState.HELD_BACK);
        take.setDisable(read.isEmpty());
        take.setText(held == 0 ? "Take in" : "Take in without rows held back");
        keep.setText("Take in all, rows held back not in use");
        keep.setVisible(held > 0);
        keep.setManaged(keep.isVisible());
    }

    private void take(TakeIn.Policy policy) {
        trying(() -> {
            Taken result = model.take(policy);
            result.notices().forEach(say);
            say.accept(Notice.of(
                    Level.NOTE,
                    WindowCode.TAKEN_IN,
                    Place.NONE,
                    result.added().size() + result.changed().size(),
                    model.name(),
                    model.count(RowState.HELD_BACK),
                    model.count(RowState.LEFT_OUT)));
            done.accept(result);
        });
    }
}
