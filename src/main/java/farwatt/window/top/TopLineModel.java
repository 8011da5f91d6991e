package farwatt.window.top;

import farwatt.engine.Corner;
import farwatt.plan.Scenario;
import farwatt.review.Review;
import farwatt.window.desk.Desk;
import farwatt.window.mark.Mark;
import java.util.List;
import java.util.Optional;

/** What the top line says. No scene types but the names of marks. */
public final class TopLineModel {
    private final Desk desk;

    public TopLineModel(Desk desk) {
        this.desk = desk;
    }

    /** The plan's name, and whether it has changes that are not saved. */
    public String title() {
        String name = desk.base().name();
        return name.isEmpty() ? "Plan without a name" : name;
    }

    public boolean isUnsaved() {
        return !desk.document().isSaved();
    }

    /** Scenario ids in their order. */
    public List<String> scenarios() {
        return desk.base().scenarios().stream().map(Scenario::id).toList();
    }

    /** What a scenario changes, for its hint. */
    public String hint(String id) {
        Optional<Scenario> scenario = desk.base().scenario(id);
        return scenario.map(s -> {
                    String on = s.on().isEmpty() ? "the plan as it is" : s.on();
                    int steps = s.steps().size();
                    return steps + (steps == 1 ? " change of " : " changes of ") + on;
                })
                .orElse("");
    }

    /** What a corner is called on its button. */
    public static String word(Corner corner) {
        return corner == Corner.HOTSTART ? "hot start" : corner.word();
    }

    /** How the plan stands. */
    public Mark mark() {
        if (!desk.isJudged()) {
            return Mark.BUSY;
        }
        return desk.review()
                .map(review -> review.verdict().holds() ? review.warnings() > 0 ? Mark.WARN : Mark.GOOD : Mark.FAIL)
                .orElse(Mark.BUSY);
    }

    /** The verdict's sentence. */
    public String verdict() {
        String text = desk.review().map(review -> review.verdict().text()).orElse("Being worked out.");
        String word = mark().word() + " ";
        return text.startsWith(word) ? text.substring(word.length()) : text;
    }

    /** How many findings there are, in words. */
    public String counts() {
        return desk.review().map(TopLineModel::counts).orElse("");
    }

    private static String counts(Review review) {
        return review.fails() + " failing, " + review.warnings() + " to mind";
    }

    public Optional<String> undo() {
        return desk.document().undoLabel();
    }

    public Optional<String> redo() {
        return desk.document().redoLabel();
    }
}
