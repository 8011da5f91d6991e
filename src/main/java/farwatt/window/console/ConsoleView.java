package farwatt.window.console;

import farwatt.language.Completion;
import farwatt.picture.Palette;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.script.Outcome;
import farwatt.script.ResultPicture;
import farwatt.script.ResultTable;
import farwatt.script.Script;
import farwatt.script.ScriptError;
import farwatt.window.desk.Desk;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;
import org.jspecify.annotations.Nullable;

/**
 * The console: a script is written at the left, what came of it stands at the right with the newest on top. For the
 * window's thread.
 */
public final class ConsoleView extends StackPane {
    private static final double DIVIDER = 0.45;

    private final Desk desk;
    private final ConsoleModel model;
    private final Papers papers;
    private final Typing typing;
    private final ConsoleFiles files;
    private final Consumer<Notice> say;
    private final EditorView editor = new EditorView();
    private final OffersView offers;
    private final HelpLine help;
    private final WordList words;
    private final AnswersView answers;
    private final PaperBar bar;
    private final BorderPane right = new BorderPane();
    private final Doings doings = new Doings();
    private boolean following;
    /** The answer whose end was seen. */
    private @Nullable Answer done;

    /**
     * A console over the open plan.
     *
     * @param names completes expressions
     * @param say tells a person something at the foot of the window
     */
    public ConsoleView(
            Desk desk, ConsoleModel model, Papers papers, ConsoleFiles files, Names names, Consumer<Notice> say) {
        getStyleClass().add("fw-scripts");
        this.desk = desk;
        this.model = model;
        this.papers = papers;
        this.files = files;
        this.say = say;
        typing = new Typing(new Completing(desk::shown, names::at, model.history()::all), model.history());
        offers = new OffersView(this::taken);
        help = new HelpLine(this::put);
        words = new WordList(this::put, this::showAnswers);
        answers = new AnswersView(model, doings);
        bar = new PaperBar(files, doings, this::paperChanged);
        editor.area().setAccessibleText("Script; Enter runs what is whole");
        editor.area().setPromptText("plan.text('gate.reserve_share')");
        BorderPane left = new BorderPane(editor);
        left.setTop(bar);
        left.setBottom(help);
        left.setMinWidth(0);
        SplitPane split = new SplitPane(left, right);
        split.setDividerPositions(DIVIDER);
        getChildren().addAll(split, offers);
        showAnswers();
        new ConsoleKeys(editor, typing, doings).install();
        editor.area().textProperty().addListener(o -> edited());
        editor.area().caretPositionProperty().addListener(o -> moved());
        editor.area().focusedProperty().addListener((o, was, is) -> {
            if (!is) {
                typing.close();
                showOffers();
            }
        });
        model.watch(this::refresh);
        desk.watch(answers::refresh);
        refresh();
        moved();
    }

    /** Completes expressions of the plan shown. */
    @FunctionalInterface
    public interface Names {
        Completion at(String expression, int caret);
    }

    /** Tells when it lies on the bench, now and every time. */
    public void onLaid(Runnable laid) {
        sceneProperty().addListener((o, was, is) -> {
            if (is != null) {
                laid.run();
                enter();
            }
        });
    }

    /** Draws pictures in other colours. */
    public void show(Palette palette) {
        answers.show(palette);
    }

    /** Takes the cursor to the script. */
    public void enter() {
        Platform.runLater(() -> editor.area().requestFocus());
    }

    /** True for keys that mean the script and not the plan while the script is written. */
    public boolean takes(KeyEvent e) {
        return editor.area().isFocused() && ConsoleKeys.isOwn(e, doings);
    }

    private void edited() {
        papers.write(editor.area().getText());
        bar.show(papers.now());
        if (!following) {
            Platform.runLater(this::typed);
        }
    }

    /** Text and caret change one after the other; offers go by both. */
    private void typed() {
        int caret = editor.area().getCaretPosition();
        String text = editor.area().getText();
        if (!editor.area().isFocused() || caret > text.length()) {
            return;
        }
        typing.typed(text, caret);
        showOffers();
        moved();
    }

    private void moved() {
        int caret = Math.min(editor.area().getCaretPosition(), editor.area().getLength());
        help.show(Helping.at(editor.area().getText(), caret, desk.shown()), papers.now());
    }

    private void showOffers() {
        offers.show(typing.offers(), typing.chosen());
        editor.area()
                .setAccessibleHelp(
                        typing.chosen() < 0
                                ? help.text()
                                : typing.offers().get(typing.chosen()).word());
        requestLayout();
    }

    private void taken(int offer) {
        follow(() -> editor.edit(typing.accept(editor.area().getText(), offer)));
        showOffers();
    }

    /** Changes the text without new offers. */
    private void follow(Runnable change) {
        following = true;
        change.run();
        following = false;
    }

    /** Puts an example in the place of an empty script, else at the caret. */
    private void put(String example) {
        int caret = editor.area().getCaretPosition();
        String text = editor.area().getText();
        follow(() -> {
            if (text.isBlank()) {
                editor.put(new Typing.Put(example, example.length()));
            } else {
                editor.area().insertText(caret, example);
            }
        });
        showAnswers();
        enter();
    }

    private void paperChanged() {
        follow(() -> editor.put(new Typing.Put(papers.now().text(), 0)));
        typing.close();
        showOffers();
        bar.show(papers.now());
        moved();
        enter();
    }

    private void showAnswers() {
        Label title = new Label("Answers");
        title.getStyleClass().add("fw-side-title");
        Button all = button("Words", "Words of scripts and names of the plan (F1)", () -> doings.words());
        Button clear = button("Clear", "Take the answers away", model::clear);
        HBox gap = new HBox();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(4, title, gap, all, clear);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setStyle("-fx-padding: 0.1em 0.4em;");
        right.setTop(head);
        right.setCenter(answers);
    }

    static Button button(String text, String hint, Runnable action) {
        Button button = new Button(text);
        button.getStyleClass().add("fw-button");
        button.setTooltip(new Tooltip(hint));
        button.setAccessibleHelp(hint);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }

    private void refresh() {
        answers.refresh();
        bar.show(papers.now());
        bar.running(model.running().isPresent());
        Optional<Answer> newest = model.answers().stream().findFirst();
        newest.filter(answer -> !answer.equals(done) && !answer.isRunning()).ifPresent(this::ended);
    }

    /** What went well goes, so that the next line can be typed; what went wrong stays, with the mistake marked. */
    private void ended(Answer answer) {
        done = answer;
        boolean same = editor.area().getText().equals(answer.script().text());
        boolean well =
                answer.outcome().filter(o -> o.state() == Outcome.State.DONE).isPresent();
        if (same && well && papers.now().isLines()) {
            follow(() -> editor.put(new Typing.Put("", 0)));
        } else if (same && !well) {
            doings.toLine(answer);
        }
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        if (offers.isVisible()) {
            Rectangle caret = editor.caret();
            Point2D top = sceneToLocal(editor.localToScene(caret.getX(), caret.getY()));
            offers.place(top.getX(), top.getY(), top.getY() + caret.getHeight(), this);
        }
    }

    /** What keys and buttons start. */
    final class Doings implements ConsoleKeys.Doings, AnswerNode.Doings {
        @Override
        public void run() {
            if (model.running().isPresent()) {
                say.accept(Notice.of(Level.NOTE, ConsoleCode.RUNS_ALREADY, Place.NONE));
                return;
            }
            List<String> arguments =
                    new ArrayList<>(Arrays.asList(bar.arguments().strip().split("\\s+")));
            arguments.removeIf(String::isEmpty);
            model.run(papers.now().script(), papers.now().isLines() ? List.of() : arguments);
        }

        @Override
        public void cancel() {
            model.cancel();
        }

        @Override
        public void words() {
            String text = editor.area().getText();
            String begun = editor.area().isFocused()
                    ? Helping.at(text, editor.area().getCaretPosition(), desk.shown())
                            .map(Helping.Help::word)
                            .orElse("")
                    : "";
            right.setTop(null);
            right.setCenter(words);
            words.show(Helping.all(desk.shown()), begun);
        }

        @Override
        public void save() {
            files.save(() -> bar.show(papers.now()));
        }

        @Override
        public void offers() {
            Platform.runLater(ConsoleView.this::showOffers);
        }

        @Override
        public boolean isLines() {
            return papers.now().isLines();
        }

        @Override
        public void again(Answer answer) {
            if (answer.script().kind() == Script.Kind.LINE && !papers.now().isLines()) {
                papers.lines();
                paperChanged();
            }
            follow(() -> editor.put(new Typing.Put(
                    answer.script().text(), answer.script().text().length())));
            enter();
        }

        @Override
        public void takeScenarios(Answer answer) {
            model.takeScenarios(answer).forEach(say);
        }

        @Override
        public void takeChanges(Answer answer) {
            model.takeChanges(answer).forEach(say);
        }

        @Override
        public void toLine(Answer answer) {
            if (!editor.area().getText().equals(answer.script().text())) {
                again(answer);
            }
            answer.outcome()
                    .flatMap(Outcome::error)
                    .flatMap(error -> error.chain().stream()
                            .filter(spot -> spot.source().equals(answer.script().name()))
                            .findFirst())
                    .map(ScriptError.Spot::line)
                    .ifPresent(editor::markLine);
            enter();
        }

        @Override
        public void save(String suggested, ResultTable table) {
            files.save(suggested, table);
        }

        @Override
        public void save(ResultPicture picture) {
            files.save(picture, desk.base().name());
        }

        @Override
        public boolean isPlanChanged(Answer answer) {
            return model.isPlanChanged(answer);
        }

        @Override
        public String origin(Answer answer) {
            String plan = desk.base().name();
            return answer.scenario().isEmpty() ? plan : plan + " · " + answer.scenario();
        }
    }
}
