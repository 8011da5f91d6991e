package farwatt.command;

import farwatt.engine.PlanWording;
import farwatt.file.Fingerprint;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.file.SafeSave;
import farwatt.file.Underneath;
import farwatt.intake.Outcome;
import farwatt.intake.RowState;
import farwatt.intake.TakeIn;
import farwatt.intake.Taken;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A list on its way into a plan file; the plan is begun anew where there is none. */
final class IntakeInto {
    private final Output output;
    private final Path target;
    private final Outcome outcome;
    private final TakeIn.Policy policy;
    private final Plan plan;
    private final Fingerprint fingerprint;
    private final boolean there;
    private final Taken taken;

    IntakeInto(Output output, Path target, Outcome outcome, TakeIn.Manner manner) throws Refusal {
        this.output = output;
        this.target = target;
        this.outcome = outcome;
        this.policy = manner.policy();
        there = Files.exists(target);
        Plan opened = Plan.EMPTY;
        Fingerprint found = Fingerprint.NONE;
        if (there) {
            Opened file = PlanReader.read(target);
            opened = file.plan();
            found = file.fingerprint();
        }
        plan = opened;
        fingerprint = found;
        // what stops is told apart from what the list says, which is shown all the same
        TakeIn.Policy shown = policy == TakeIn.Policy.STOP ? TakeIn.Policy.SKIP : policy;
        taken = TakeIn.into(plan, outcome, new TakeIn.Manner(shown, manner.known(), manner.gone()));
    }

    /** What taking the list in does, or would do. */
    Taken taken() {
        return taken;
    }

    /**
     * Takes it in and saves the plan.
     *
     * @param remember the name under which the plan keeps how the list was read, "" for not at all
     */
    int take(String remember) throws Refusal {
        if (!there) {
            output.say(Messages.text(CommandCode.NEW_PLAN, target));
        }
        taken.notices().forEach(notice -> output.say(notice.line()));
        int held = outcome.count(RowState.HELD_BACK);
        if (policy == TakeIn.Policy.STOP && held > 0) {
            output.say(Messages.text(CommandCode.HELD_BACK, held));
            return Exit.WRONG;
        }
        List<Change> changes = new ArrayList<>(taken.batch().stream().toList());
        if (!remember.isEmpty()) {
            changes.add(IntakeVerb.kept(remember, outcome.mappingUsed()).in(plan));
        }
        if (changes.isEmpty()) {
            output.say(Messages.text(CommandCode.NOTHING_WRITTEN, target));
            return Exit.DONE;
        }
        Plan after = Edit.apply(plan, new Change.Batch("", changes)).plan();
        new SafeSave().save(after, target, PlanWording.canonicalFor(after), fingerprint, Underneath.REFUSE);
        output.say(Messages.text(
                CommandCode.TAKEN_IN,
                target,
                taken.added().size(),
                taken.changed().size(),
                taken.same().size(),
                taken.gone().size()));
        return Exit.DONE;
    }
}
