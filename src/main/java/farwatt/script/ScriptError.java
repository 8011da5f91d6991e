package farwatt.script;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A mistake in a script.
 *
 * @param text what is wrong, in plain words
 * @param chain where, the innermost call first; only places in the script and its modules
 */
public record ScriptError(String text, List<Spot> chain) {
    public ScriptError {
        chain = List.copyOf(chain);
    }

    /**
     * A place in a script.
     *
     * @param source name of the script or module
     * @param line counted from 1
     * @param column counted from 1
     * @param function the function it lies in, "" for none
     */
    public record Spot(String source, int line, int column, String function) {
        /** As people read it: {@code reserve.js, line 3}. */
        public String text() {
            return source + ", line " + line + (function.isEmpty() ? "" : ", in " + function);
        }
    }

    /** Place and sentence, then who called whom, a line each. */
    public String lines() {
        if (chain.isEmpty()) {
            return text;
        }
        String callers = chain.stream()
                .skip(1)
                .map(spot -> "\n  called from " + spot.text())
                .collect(Collectors.joining());
        return chain.get(0).text() + ": " + text + callers;
    }
}
