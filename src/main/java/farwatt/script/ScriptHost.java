package farwatt.script;

import farwatt.plan.Plan;
import farwatt.quantity.Units;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Runs scripts in a process of their own. One process is kept warm, so that a run starts at once; a run that is
 * cancelled or reaches a limit takes its process with it, and the next run has a new one. Any thread, one run at a
 * time: a second one waits. Ends with the program, whatever a script does.
 */
public final class ScriptHost implements AutoCloseable {
    private final Limits limits;
    private final List<String> options;
    private @Nullable Child warm;

    public ScriptHost(Limits limits) {
        this(limits, List.of());
    }

    /** @param options further options for the Java of the process */
    public ScriptHost(Limits limits, List<String> options) {
        this.limits = limits;
        this.options = List.copyOf(options);
    }

    /**
     * Starts the process if there is none, so that the first run finds it warm; returns at once.
     *
     * @throws Refusal if there is no Java to start
     */
    public void warmUp() throws Refusal {
        child();
    }

    private synchronized Child child() throws Refusal {
        Child now = warm;
        if (now == null || !now.isAlive()) {
            now = Child.start(limits.megabytes(), options);
            warm = now;
        }
        return now;
    }

    /** Forgets a process that is of no more use and starts another in its place. */
    private synchronized void replace(Child used) {
        used.kill();
        try {
            warm = Child.start(limits.megabytes(), options);
        } catch (Refusal e) {
            // the next run says so
            warm = null;
        }
    }

    /**
     * Runs a script on a copy of a plan and returns when it ended, well or not; after a cancel within a moment.
     *
     * @param scenario the scenario it works on, "" for base
     * @param arguments what the script sees as {@code args}
     * @param listener told what the script says, on this thread
     */
    public Outcome run(
            Script script, Plan plan, String scenario, List<String> arguments, ScriptListener listener, Cancel cancel) {
        Order order = new Order(script, Changes.text(plan), scenario, arguments, limits.statements(), limits.printed());
        synchronized (limits) {
            try {
                Child child = child();
                Run run = new Run(child, listener, cancel, limits, new Units(plan.currency()));
                Outcome outcome = run.go(order);
                if (run.isSpent()) {
                    replace(child);
                }
                return outcome;
            } catch (Refusal e) {
                return Outcome.of(Outcome.State.BROKEN, e.notice().line());
            }
        }
    }

    @Override
    public synchronized void close() {
        Child now = warm;
        warm = null;
        if (now != null) {
            now.close();
        }
    }
}
