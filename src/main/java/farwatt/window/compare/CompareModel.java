package farwatt.window.compare;

import farwatt.engine.Corner;
import farwatt.plan.Plan;
import farwatt.plan.Scenario;
import farwatt.review.SideBySide;
import farwatt.window.desk.Desk;
import farwatt.window.work.Work;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Which scenarios are laid side by side, and by which measures. */
public final class CompareModel {
    private final Desk desk;
    private final Work work;
    private final Set<String> left = new LinkedHashSet<>();
    private List<String> reads = List.of();

    public CompareModel(Desk desk, Work work) {
        this.desk = desk;
        this.work = work;
    }

    /** All that can be compared, the plan without a scenario first, as "". */
    public List<String> scenarios() {
        List<String> all = new ArrayList<>(List.of(""));
        desk.base().scenarios().stream().map(Scenario::id).forEach(all::add);
        return all;
    }

    public boolean isChosen(String id) {
        return !left.contains(id);
    }

    /** Takes a scenario in, or out if it was in. */
    public void toggle(String id) {
        if (!left.remove(id)) {
            left.add(id);
        }
    }

    /** The measures, one expression a line; blank for the usual ones. */
    public void reads(String lines) {
        reads = lines.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    /** The measures as they are now. */
    public List<String> reads() {
        return reads.isEmpty() ? SideBySide.usual(desk.base()) : reads;
    }

    /** Works it out away from the window. */
    public void start(Consumer<Work.End<SideBySide>> finish) {
        Plan base = desk.base();
        Corner corner = desk.corner();
        List<String> ids = scenarios().stream().filter(this::isChosen).toList();
        List<String> names = reads();
        work.start(
                "Side by side",
                (progress, cancel) -> SideBySide.of(base, ids, names, Optional.of(corner), cancel),
                finish);
    }
}
