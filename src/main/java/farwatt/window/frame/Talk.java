package farwatt.window.frame;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.window.mark.Mark;
import farwatt.window.work.Work;
import java.util.ArrayDeque;
import java.util.Deque;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The line at the foot: what there is to say, one after another, and how far long work is. */
final class Talk extends HBox {
    private final Deque<Notice> waiting = new ArrayDeque<>();
    private final HBox mark = new HBox();
    private final Label text = new Label();
    private final Button next = new Button("Seen");
    private final Label work = new Label();
    private final ProgressBar bar = new ProgressBar(0);
    private final Button cancel = new Button("Cancel");

    /** @param cancelling asks the running work to stop */
    Talk(Runnable cancelling) {
        getStyleClass().add("fw-say");
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        text.setWrapText(true);
        next.getStyleClass().add("fw-button");
        cancel.getStyleClass().add("fw-button");
        next.setOnAction(e -> seen());
        cancel.setOnAction(e -> cancelling.run());
        bar.setPrefWidth(120);
        getChildren().addAll(mark, text, next, work, bar, cancel);
        getChildren().forEach(node -> node.managedProperty().bind(node.visibleProperty()));
        show(Work.State.IDLE);
        seen();
    }

    /** Says something, once; what matters stays until it was seen, a note gives way to the next one. */
    void say(Notice notice) {
        if (waiting.contains(notice)) {
            return;
        }
        Notice shown = waiting.peekFirst();
        if (shown != null && shown.level() == Level.NOTE) {
            waiting.removeFirst();
        }
        waiting.addLast(notice);
        refresh();
    }

    /** How far the long work is. */
    void show(Work.State state) {
        boolean busy = state.isBusy();
        work.setVisible(busy);
        bar.setVisible(busy);
        cancel.setVisible(busy);
        work.setText(state.what() + (state.step().isEmpty() ? "" : ": " + state.step()));
        bar.setProgress(state.share() > 0 ? state.share() : ProgressBar.INDETERMINATE_PROGRESS);
        if (!busy) {
            bar.setProgress(0);
        }
        refresh();
    }

    private void seen() {
        waiting.pollFirst();
        refresh();
    }

    private void refresh() {
        Notice notice = waiting.peekFirst();
        boolean some = notice != null;
        mark.setVisible(some);
        next.setVisible(some);
        text.setText(notice == null ? "" : notice.line());
        if (notice != null) {
            mark.getChildren().setAll(Mark.of(notice.level()).node());
        }
        next.setText(waiting.size() > 1 ? "Seen, " + (waiting.size() - 1) + " more" : "Seen");
        setVisible(some || bar.isVisible());
        setManaged(isVisible());
    }

    /** What stands there now. */
    String shown() {
        return text.getText();
    }
}
