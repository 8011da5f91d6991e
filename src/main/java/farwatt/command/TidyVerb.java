package farwatt.command;

import farwatt.engine.PlanWording;
import farwatt.file.Fingerprint;
import farwatt.file.PlanWriter;
import farwatt.file.SafeSave;
import farwatt.file.Underneath;
import farwatt.plan.Plan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a plan file in canonical form. */
@Command(name = "tidy", description = "Writes the plan file in its canonical form; twice is the same as once.")
final class TidyVerb extends PlanVerb {
    @Option(names = "--show", description = "Shows the canonical form and leaves the file as it is.")
    private boolean show;

    @Override
    public Integer call() throws Exception {
        Plan plan = base();
        sayNotices();
        var wording = PlanWording.canonicalFor(plan);
        if (show) {
            output().raw().print(PlanWriter.text(plan, wording));
            return Exit.DONE;
        }
        new SafeSave().save(plan, file(), wording, new Fingerprint(fingerprint()), Underneath.REFUSE);
        return Exit.DONE;
    }
}
