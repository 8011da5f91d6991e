package farwatt.window.studies;

import farwatt.picture.Palette;
import farwatt.quantity.Decimal;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import farwatt.window.desk.Desk;
import farwatt.window.work.Work;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;

/** Studies of the open plan, at the bench. For the window's thread. */
public final class StudiesView extends StackPane {
    private static final double FORM = 0.27;

    private final StudiesModel model;
    private final FormView form;
    private final ResultView result;
    private final Consumer<Notice> say;
    private StudyKind asked;

    /** Asks a person where a file is to go. */
    @FunctionalInterface
    public interface Saving {
        /** The place, empty if it was left unanswered. */
        Optional<Path> where(String title, List<String> endings);
    }

    /**
     * Studies of what lies on a desk.
     *
     * @param decimal the person's decimal sign
     * @param home runs tasks on the window's thread
     * @param work writes files
     */
    public StudiesView(Desk desk, Decimal decimal, Executor home, Work work, Saving saving, Consumer<Notice> say) {
        this.say = say;
        model = new StudiesModel(desk, decimal, StudiesView::beside, home);
        asked = model.kind();
        getStylesheets()
                .add(Objects.requireNonNull(StudiesView.class.getResource("/farwatt/window/studies.css"))
                        .toExternalForm());
        getStyleClass().add("fw-studies");
        form = new FormView(model, new Offers(this, new StudyWords(desk)));
        result = new ResultView(model, decimal, new TakeAway(work, say), saving, this::tryOut);
        SplitPane parts = new SplitPane(form, result);
        parts.setDividerPositions(FORM);
        SplitPane.setResizableWithParent(form, false);
        form.getStyleClass().add("fw-study-side");
        getChildren().add(0, parts);
        model.watch(this::refresh);
        desk.watch(this::planChanged);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER && e.isShortcutDown()) {
                model.run();
                e.consume();
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE && model.state().isBusy()) {
                model.cancel();
                e.consume();
            }
        });
    }

    /** A study has a thread of its own, so that neither the plan's values nor files wait for it. */
    private static void beside(Runnable task) {
        Thread thread = new Thread(task, "farwatt study");
        thread.setDaemon(true);
        thread.start();
    }

    /** What it shows. */
    public StudiesModel model() {
        return model;
    }

    /** Draws in other colours from now on. */
    public void show(Palette palette) {
        result.show(palette);
    }

    /** Puts the keyboard into the first field. */
    public void enter() {
        // parts that were never shown are not there yet for the keyboard
        if (getScene() != null) {
            getScene().getRoot().applyCss();
            getScene().getRoot().layout();
        }
        form.enter();
    }

    private void refresh() {
        if (asked != model.kind()) {
            asked = model.kind();
            form.build();
        }
        form.refresh();
        result.refresh();
    }

    private void planChanged() {
        form.refill();
        result.refresh();
    }

    private void tryOut(int row) {
        try {
            say.accept(model.tryOut(row));
        } catch (Refusal e) {
            say.accept(e.notice());
        }
    }
}
