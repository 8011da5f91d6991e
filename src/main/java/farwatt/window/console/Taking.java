package farwatt.window.console;

import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.script.Changes;
import farwatt.script.Outcome;
import farwatt.window.desk.Desk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes what a script offers over into the open plan, each offer as one step. For the window's thread. */
final class Taking {
    private final Desk desk;

    Taking(Desk desk) {
        this.desk = desk;
    }

    /** Puts the scenarios that were kept into the plan; gives what there is to say. */
    List<Notice> scenarios(Answer answer) {
        List<Scenario> kept = answer.outcome().map(Outcome::kept).orElse(List.of());
        Plan plan = desk.base();
        for (Scenario scenario : kept) {
            if (!stands(plan, kept, scenario.on())) {
                return List.of(Notice.of(Level.FAIL, ConsoleCode.STANDS_ON, Place.NONE, scenario.id(), scenario.on()));
            }
        }
        List<Notice> notices = new ArrayList<>();
        for (Scenario scenario : kept) {
            ConsoleCode code = plan.scenario(scenario.id()).isPresent() ? ConsoleCode.REPLACES : ConsoleCode.TAKEN;
            notices.add(Notice.of(Level.NOTE, code, Place.NONE, scenario.id()));
        }
        desk.document().apply(Changes.kept(plan, kept));
        answer.keptTaken();
        return notices;
    }

    private static boolean stands(Plan plan, List<Scenario> kept, String on) {
        return on.isEmpty()
                || plan.scenario(on).isPresent()
                || kept.stream().anyMatch(other -> Rows.fold(other.id()).equals(Rows.fold(on)));
    }

    /** Makes the changes that were proposed; gives what there is to say. */
    List<Notice> changes(Answer answer) {
        Optional<Scenario> proposed = answer.outcome().flatMap(Outcome::proposed);
        if (proposed.isEmpty()) {
            return List.of();
        }
        List<Notice> notices = new ArrayList<>();
        Change.Batch batch = Changes.proposed(desk.base(), proposed.get(), answer.title(), notices);
        int made = batch.changes().size();
        if (made == 0) {
            notices.add(Notice.of(Level.FAIL, ConsoleCode.NOTHING_FITS, Place.NONE));
            return notices;
        }
        // the script worked on the plan itself, whatever is looked at now
        desk.document().apply(batch);
        answer.proposedTaken();
        notices.add(Notice.of(Level.NOTE, ConsoleCode.APPLIED, Place.NONE, made));
        return notices;
    }
}
