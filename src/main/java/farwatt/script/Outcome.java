package farwatt.script;

import farwatt.plan.Scenario;
import java.util.List;
import java.util.Optional;

/**
 * What came of a run. Nothing in the open plan was changed: what the script kept is here to be taken over.
 *
 * @param state how it ended
 * @param said one sentence where it did not end well, "" else
 * @param value the last value, as people read it; "" for none
 * @param error the mistake in the script
 * @param kept scenarios that the script kept, by {@code keep(name)}; one of a name that the plan has replaces it
 * @param proposed changes for the plan itself, by {@code apply()}; see {@link Changes}
 */
public record Outcome(
        State state,
        String said,
        String value,
        Optional<ScriptError> error,
        List<Scenario> kept,
        Optional<Scenario> proposed) {
    public Outcome {
        kept = List.copyOf(kept);
    }

    /** How a run ended. */
    public enum State {
        DONE,
        /** A mistake in the script. */
        FAILED,
        /** One of the limits. */
        STOPPED,
        /** Someone asked for it. */
        CANCELLED,
        /** The process for scripts could not be started or ended by itself. */
        BROKEN
    }

    static Outcome of(State state, String said) {
        return new Outcome(state, said, "", Optional.empty(), List.of(), Optional.empty());
    }
}
