package farwatt.window.list;

import farwatt.intake.Intake;
import farwatt.intake.Mapping;
import farwatt.intake.Meaning;
import farwatt.intake.Outcome;
import farwatt.intake.RowState;
import farwatt.intake.TakeIn;
import farwatt.intake.Taken;
import farwatt.intake.Wishes;
import farwatt.report.Refusal;
import farwatt.window.desk.Desk;
import farwatt.window.work.Work;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** A list being taken in: where it is from, what was understood, what the person mended. */
public final class ListModel {
    private final Desk desk;
    private final Work work;
    private String name = "";
    private @Nullable Path file;
    private String pasted = "";
    private Wishes wishes = Wishes.NONE;
    private @Nullable Outcome outcome;

    public ListModel(Desk desk, Work work) {
        this.desk = desk;
        this.work = work;
    }

    /** Reads a file. */
    public void open(Path list, Consumer<Work.End<Outcome>> finish) {
        name = String.valueOf(list.getFileName());
        file = list;
        wishes = Wishes.NONE;
        outcome = null;
        read(finish);
    }

    /** Reads text from elsewhere. */
    public void paste(String text, Consumer<Work.End<Outcome>> finish) {
        name = "pasted text";
        file = null;
        pasted = text;
        wishes = Wishes.NONE;
        outcome = null;
        read(finish);
    }

    /** What it is called. */
    public String name() {
        return name;
    }

    /** What was understood; empty before anything was read. */
    public Optional<Outcome> outcome() {
        return Optional.ofNullable(outcome);
    }

    private void read(Consumer<Work.End<Outcome>> finish) {
        Path from = file;
        String text = pasted;
        Wishes asked = wishes;
        work.start(
                "Reading " + name,
                (progress, cancel) ->
                        from == null ? Intake.paste(text, asked, cancel) : Intake.read(from, asked, cancel),
                end -> {
                    if (end instanceof Work.End.Done<Outcome> done) {
                        outcome = done.result();
                    }
                    finish.accept(end);
                });
    }

    /** Gives a column another meaning and reads again. */
    public void mean(String heading, Meaning meaning, Consumer<Work.End<Outcome>> finish) {
        wishes = wishes.with(mapping().withColumn(heading, meaning));
        read(finish);
    }

    /** Answers a question and reads again. */
    public void answer(String key, String choice, Consumer<Work.End<Outcome>> finish) {
        wishes = wishes.with(mapping().withAnswer(key, choice));
        read(finish);
    }

    /** Puts another text into a cell of the list and reads again. */
    public void mend(String place, String heading, String text, Consumer<Work.End<Outcome>> finish) {
        wishes = wishes.mended(place, heading, text);
        read(finish);
    }

    /** Opens a locked file. */
    public void unlock(String password, Consumer<Work.End<Outcome>> finish) {
        wishes = wishes.withPassword(password);
        read(finish);
    }

    private Mapping mapping() {
        return wishes.mapping();
    }

    /** How many rows ended in a state. */
    public int count(RowState state) {
        return outcome == null ? 0 : outcome.count(state);
    }

    /**
     * Takes the list into the plan as one step.
     *
     * @param policy what becomes of rows held back
     */
    public Taken take(TakeIn.Policy policy) throws Refusal {
        if (outcome == null) {
            throw new IllegalStateException("nothing was read");
        }
        Taken taken = TakeIn.into(desk.shown(), outcome, policy, TakeIn.Known.UPDATE);
        if (taken.batch().isPresent()) {
            desk.apply(taken.batch().get());
        }
        return taken;
    }
}
