package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.engine.PlanWording;
import farwatt.engine.ScenarioPlans;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.file.SafeSave;
import farwatt.file.Underneath;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.workbook.Back;
import farwatt.workbook.Origin;
import farwatt.workbook.WayBack;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Takes a hand-over workbook that people worked in back into its plan. */
final class HandoverBack {
    /** How much is taken. */
    enum Manner {
        /** Nothing: what would be is only said. */
        LOOK,
        /** All of it, or nothing when something must be left aside. */
        WHOLE,
        WHAT_FITS
    }

    private final Output output;
    private final Path workbook;
    private final Path target;
    private final Origin origin;

    HandoverBack(Output output, Path workbook, Path target, Origin origin) {
        this.output = output;
        this.workbook = workbook;
        this.target = target;
        this.origin = origin;
    }

    int take(Manner manner) throws IOException, Refusal {
        Opened opened = PlanReader.read(target);
        Plan base = opened.plan();
        Plan shown = origin.scenario().isEmpty()
                ? base
                : ScenarioPlans.of(base, origin.scenario()).plan();
        Calculation calculation = Calculation.of(shown);
        calculation.look(origin.corner());
        Back back = WayBack.read(workbook, base, calculation, new Cancel());
        say(back);
        boolean older = origin.isOlderThan(opened.fingerprint().hex());
        if (older) {
            output.say(Messages.text(CommandCode.PLAN_CHANGED));
        }
        boolean stops = manner == Manner.WHOLE && (older || !back.left().isEmpty());
        if (stops) {
            output.say(Messages.text(CommandCode.LEFT_ASIDE, back.left().size()));
            return Exit.WRONG;
        }
        if (manner == Manner.LOOK || back.batch().isEmpty()) {
            output.say(Messages.text(CommandCode.NOTHING_WRITTEN, target));
            return Exit.DONE;
        }
        Plan after = Edit.apply(base, back.batch().get()).plan();
        new SafeSave().save(after, target, PlanWording.canonicalFor(after), opened.fingerprint(), Underneath.REFUSE);
        output.say(Messages.text(
                CommandCode.TAKEN_BACK,
                target,
                back.edited().size(),
                back.added().size()));
        return Exit.DONE;
    }

    private void say(Back back) {
        TextTable changed = new TextTable(List.of("place", "of", "before", "after"));
        for (Back.Edited edited : back.edited()) {
            changed.row(List.of(edited.where(), edited.place().text(), edited.before(), edited.after()));
        }
        changed.lines().forEach(output::line);
        for (Place added : back.added()) {
            output.line("new: " + added.table() + " · " + added.row());
        }
        for (Place missing : back.missing()) {
            output.line("not in the workbook, stays: " + missing.table() + " · " + missing.row());
        }
        for (Back.Left left : back.left()) {
            output.line("left aside: " + left.where() + " \"" + left.typed() + "\": " + left.why());
        }
        for (Back.Formula formula : back.formulas()) {
            output.line("a formula of somebody's own: " + formula.where() + " " + formula.text());
        }
    }
}
