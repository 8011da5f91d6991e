package farwatt.window.console;

import farwatt.plan.Plan;
import farwatt.script.Outcome;
import farwatt.script.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of one run so far. For the window's thread. */
public final class Answer {
    private final Script script;
    private final Plan plan;
    private final String scenario;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private Optional<Outcome> outcome = Optional.empty();
    private long left;
    private double share;
    private String step = "";
    private boolean keptTaken;
    private boolean proposedTaken;

    Answer(Script script, Plan plan, String scenario) {
        this.script = script;
        this.plan = plan;
        this.scenario = scenario;
    }

    /** What was run. */
    public Script script() {
        return script;
    }

    /** The plan as it was when the run began. */
    Plan plan() {
        return plan;
    }

    /** The scenario that was worked on, "" for none. */
    public String scenario() {
        return scenario;
    }

    /** One line that tells which run this was. */
    public String title() {
        if (script.kind() == Script.Kind.FILE) {
            return script.name();
        }
        List<String> lines = script.text().strip().lines().toList();
        return lines.isEmpty() ? "" : lines.get(0) + (lines.size() > 1 ? " …" : "");
    }

    /** What was said, in order. */
    public List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    /** What there is to know about the run besides. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    /** How it ended; empty while it runs. */
    public Optional<Outcome> outcome() {
        return outcome;
    }

    public boolean isRunning() {
        return outcome.isEmpty();
    }

    /** How much was said and is not shown. */
    public long left() {
        return left;
    }

    /** How far it is, 0..1; 0 where nobody knows. */
    public double share() {
        return share;
    }

    /** What it is at. */
    public String step() {
        return step;
    }

    /** True where scenarios are offered that are not in the plan yet. */
    public boolean offersScenarios() {
        return !keptTaken && outcome.filter(o -> !o.kept().isEmpty()).isPresent();
    }

    /** True where changes of the plan are offered that were not made yet. */
    public boolean offersChanges() {
        return !proposedTaken && outcome.flatMap(Outcome::proposed).isPresent();
    }

    /** How many changes are offered. */
    public int changes() {
        return outcome.flatMap(Outcome::proposed).map(p -> p.steps().size()).orElse(0);
    }

    void note(String text) {
        notes.add(text);
    }

    void take(Feed.Parcel parcel) {
        for (Piece piece : parcel.pieces()) {
            add(piece);
        }
        left = parcel.left();
        share = parcel.share();
        step = parcel.step();
    }

    /** Texts that follow each other are one text. */
    private void add(Piece piece) {
        int last = pieces.size() - 1;
        if (piece instanceof Piece.Said said && last >= 0 && pieces.get(last) instanceof Piece.Said before) {
            pieces.set(last, new Piece.Said(before.text() + "\n" + said.text()));
        } else {
            pieces.add(piece);
        }
    }

    void end(Outcome end) {
        outcome = Optional.of(end);
    }

    void keptTaken() {
        keptTaken = true;
    }

    void proposedTaken() {
        proposedTaken = true;
    }
}
