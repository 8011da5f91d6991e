package farwatt.script;

import org.graalvm.polyglot.Value;

final class Studying {
    private Studying() {}

    static String study(WorkingPlan plan, String kind, Value options, Console console) {
        throw ScriptFailure.of(ScriptCode.NO_OPTION, kind, "", "", "");
    }
}
