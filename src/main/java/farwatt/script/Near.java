package farwatt.script;

import farwatt.report.Messages;
import java.util.Collection;

/** A near name as the end of a sentence. */
final class Near {
    private Near() {}

    /** {@code " Did you mean gauge?"}, or "" if nothing is near. */
    static String hint(String typed, Collection<String> known) {
        return farwatt.language.Near.best(typed, known)
                .map(name -> " " + Messages.text(ScriptCode.NEAR, name))
                .orElse("");
    }
}
