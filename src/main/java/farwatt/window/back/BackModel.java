package farwatt.window.back;

import farwatt.engine.Calculation;
import farwatt.engine.ScenarioPlans;
import farwatt.plan.Plan;
import farwatt.report.Refusal;
import farwatt.window.desk.Desk;
import farwatt.window.open.OpenFile;
import farwatt.window.work.Work;
import farwatt.workbook.Back;
import farwatt.workbook.Origin;
import farwatt.workbook.WayBack;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What came back with a hand-over workbook, and the one step that takes it. For the window's thread. */
public final class BackModel {
    private final Desk desk;
    private final OpenFile file;
    private final Work work;
    private @Nullable Read read;

    /**
     * A workbook that was read.
     *
     * @param name of its file
     * @param of the plan it was compared with
     * @param back what it says
     * @param older true if the plan's file was saved since the workbook was written
     */
    public record Read(String name, Plan of, Back back, boolean older) {}

    /**
     * One thing that came back.
     *
     * @param what becomes of it
     * @param where in the workbook
     * @param of which cell or row of the plan
     * @param before text in the plan
     * @param after text in the workbook, or why it is left aside
     */
    public record Line(String what, String where, String of, String before, String after) {
        List<String> texts() {
            return List.of(what, where, of, before, after);
        }
    }

    public BackModel(Desk desk, OpenFile file, Work work) {
        this.desk = desk;
        this.file = file;
        this.work = work;
    }

    /** Reads a workbook; the answer comes later. */
    public void open(Path workbook, Consumer<Work.End<Read>> finish) {
        Plan base = desk.base();
        String fingerprint = file.fingerprint().hex();
        String name = String.valueOf(workbook.getFileName());
        work.start(
                "Reading " + name,
                (progress, cancel) -> {
                    Optional<Origin> origin = WayBack.origin(workbook);
                    String scenario = origin.map(Origin::scenario).orElse("");
                    Plan shown = scenario.isEmpty()
                            ? base
                            : ScenarioPlans.of(base, scenario).plan();
                    Calculation calculation = Calculation.of(shown);
                    origin.ifPresent(o -> calculation.look(o.corner()));
                    Back back = WayBack.read(workbook, base, calculation, cancel);
                    boolean older = origin.isPresent()
                            && !fingerprint.isEmpty()
                            && origin.get().isOlderThan(fingerprint);
                    return new Read(name, base, back, older);
                },
                end -> {
                    if (end instanceof Work.End.Done<Read> done) {
                        read = done.result();
                    }
                    finish.accept(end);
                });
    }

    /** Everything that came back, what is taken first. */
    public static List<Line> lines(Back back) {
        List<Line> lines = new ArrayList<>();
        back.edited()
                .forEach(e -> lines.add(new Line("changes", e.where(), e.place().text(), e.before(), e.after())));
        back.added().forEach(place -> lines.add(new Line("is new", "", place.text(), "", "")));
        back.left().forEach(left -> lines.add(new Line("is left aside", left.where(), "", left.typed(), left.why())));
        back.missing().forEach(place -> lines.add(new Line("stays", "", place.text(), "", "not in the workbook")));
        back.formulas().forEach(f -> lines.add(new Line("a formula of somebody's own", f.where(), "", "", f.text())));
        return lines;
    }

    /** True if there is something that can be taken into the plan as it is now. */
    public boolean canTake() {
        return read != null && read.back().batch().isPresent() && read.of().equals(desk.base());
    }

    /** Takes it into the plan as one step and looks at the plan without a scenario. */
    public void take() throws Refusal {
        if (read != null && canTake()) {
            desk.look("");
            desk.apply(read.back().batch().orElseThrow());
            read = null;
        }
    }
}
