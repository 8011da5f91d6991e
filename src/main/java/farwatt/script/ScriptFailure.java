package farwatt.script;

import farwatt.report.Messages;
import farwatt.report.Refusal;

/** Something a script asked for that cannot be done; becomes an error at the script's own line. */
final class ScriptFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private ScriptFailure(String sentence) {
        super(sentence, null, false, false);
    }

    static ScriptFailure of(ScriptCode code, Object... parts) {
        return new ScriptFailure(Messages.text(code, parts));
    }

    static ScriptFailure said(String sentence) {
        return new ScriptFailure(sentence);
    }

    static ScriptFailure of(Refusal refusal) {
        return new ScriptFailure(refusal.notice().line());
    }

    String sentence() {
        return String.valueOf(getMessage());
    }
}
