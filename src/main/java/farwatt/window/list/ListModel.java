package farwatt.window.list;

import farwatt.file.KeptMapping;
import farwatt.intake.Intake;
import farwatt.intake.Mapping;
import farwatt.intake.Meaning;
import farwatt.intake.OpenList;
import farwatt.intake.Outcome;
import farwatt.intake.RowState;
import farwatt.intake.TakeIn;
import farwatt.intake.Taken;
import farwatt.intake.Wishes;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import farwatt.window.desk.Desk;
import farwatt.window.work.Work;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** A list being taken in: where it is from, what was understood, what the person mended. For the window's thread. */
public final class ListModel {
    /**
     * A list as it was read.
     *
     * @param list kept open for mending
     * @param outcome what was understood
     * @param taken what taking it in would do to the plan, rows held back left out
     */
    public record Read(OpenList list, Outcome outcome, Taken taken) {}

    private final Desk desk;
    private final Work work;
    private String name = "";
    private @Nullable Path file;
    private String pasted = "";
    private Wishes wishes = Wishes.NONE;
    private TakeIn.Manner manner = TakeIn.Manner.USUAL;
    private @Nullable Read read;

    public ListModel(Desk desk, Work work) {
        this.desk = desk;
        this.work = work;
    }

    /** Reads a file. */
    public void open(Path list, Consumer<Work.End<Read>> finish) {
        begin(String.valueOf(list.getFileName()), list, "");
        read(finish);
    }

    /** Reads text from elsewhere. */
    public void paste(String text, Consumer<Work.End<Read>> finish) {
        begin("pasted text", null, text);
        read(finish);
    }

    private void begin(String called, @Nullable Path from, String text) {
        name = called;
        file = from;
        pasted = text;
        wishes = Wishes.NONE;
        manner = TakeIn.Manner.USUAL;
        read = null;
    }

    /** What it is called. */
    public String name() {
        return name;
    }

    /** What was read last; empty before anything was. */
    public Optional<Read> read() {
        return Optional.ofNullable(read);
    }

    private void read(Consumer<Work.End<Read>> finish) {
        Path from = file;
        String text = pasted;
        Wishes asked = wishes;
        start(cancel -> opened(from, text, asked, cancel), finish);
    }

    private static OpenList opened(@Nullable Path from, String text, Wishes wishes, Cancel cancel)
            throws IOException, Refusal {
        return from == null ? Intake.openPaste(text, wishes, cancel) : Intake.open(from, wishes, cancel);
    }

    /** Comes by an open list, away from the window. */
    private interface Source {
        OpenList list(Cancel cancel) throws IOException, Refusal;
    }

    private void start(Source source, Consumer<Work.End<Read>> finish) {
        Plan plan = desk.shown();
        TakeIn.Manner shown = manner;
        work.start(
                "Reading " + name,
                (progress, cancel) -> {
                    OpenList list = source.list(cancel);
                    return new Read(list, list.outcome(), TakeIn.into(plan, list.outcome(), shown));
                },
                end -> {
                    if (end instanceof Work.End.Done<Read> done) {
                        read = done.result();
                        wishes = done.result().list().wishes();
                    }
                    finish.accept(end);
                });
    }

    /** Gives a column another meaning and reads again. */
    public void mean(String heading, Meaning meaning, Consumer<Work.End<Read>> finish) {
        wishes = wishes.with(mapping().withColumn(heading, meaning));
        read(finish);
    }

    /** Answers a question, of the list or of the plan, and reads or compares again. */
    public void answer(String key, String choice, Consumer<Work.End<Read>> finish) {
        switch (key) {
            case "known" ->
                manner(
                        new TakeIn.Manner(manner.policy(), TakeIn.Known.valueOf(constant(choice)), manner.gone()),
                        finish);
            case "gone" ->
                manner(
                        new TakeIn.Manner(manner.policy(), manner.known(), TakeIn.Gone.valueOf(constant(choice))),
                        finish);
            default -> {
                wishes = wishes.with(mapping().withAnswer(key, choice));
                read(finish);
            }
        }
    }

    private static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private void manner(TakeIn.Manner other, Consumer<Work.End<Read>> finish) {
        manner = other;
        Read before = read;
        if (before != null) {
            start(cancel -> before.list(), finish);
        }
    }

    /** Puts another text into a cell of the list and reads its row again. */
    public void mend(String place, String heading, String text, Consumer<Work.End<Read>> finish) {
        Read before = read;
        if (before != null) {
            start(
                    cancel -> {
                        before.list().mend(place, heading, text);
                        return before.list();
                    },
                    finish);
        }
    }

    /** Opens a locked file. */
    public void unlock(String password, Consumer<Work.End<Read>> finish) {
        wishes = wishes.withPassword(password);
        read(finish);
    }

    private Mapping mapping() {
        return wishes.mapping();
    }

    /** What the plan keeps of how lists were read, by name. */
    public List<KeptMapping> kept() {
        return KeptMapping.of(desk.base());
    }

    /** Reads the list again by a kept mapping. */
    public void use(KeptMapping kept, Consumer<Work.End<Read>> finish) {
        wishes = wishes.with(new Mapping(kept.columns(), kept.answers()));
        read(finish);
    }

    /** How the list was read, to be kept. */
    public KeptMapping used(String called) {
        Mapping mapping = read == null ? mapping() : read.outcome().mappingUsed();
        return new KeptMapping(called, mapping.columns(), mapping.answers());
    }

    /** Keeps in the plan how the list was read, as one step. */
    public void keep(String called) throws Refusal {
        desk.apply(used(called).in(desk.base()));
    }

    /** How many rows ended in a state. */
    public int count(RowState state) {
        return read == null ? 0 : read.outcome().count(state);
    }

    /**
     * Takes the list into the plan as one step.
     *
     * @param policy what becomes of rows held back
     */
    public Taken take(TakeIn.Policy policy) throws Refusal {
        if (read == null) {
            throw new IllegalStateException("nothing was read");
        }
        TakeIn.Manner how = new TakeIn.Manner(policy, manner.known(), manner.gone());
        Taken taken = TakeIn.into(desk.shown(), read.outcome(), how);
        if (taken.batch().isPresent()) {
            desk.apply(taken.batch().get());
        }
        return taken;
    }
}
