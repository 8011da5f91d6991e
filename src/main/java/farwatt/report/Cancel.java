package farwatt.report;

import java.util.concurrent.CancellationException;

/** A request to stop that long work looks at between its steps. Safe for any thread. */
public final class Cancel {
    private volatile boolean asked;

    /** Asks the work to stop. */
    public void ask() {
        asked = true;
    }

    public boolean asked() {
        return asked;
    }

    /** Leaves the work if stopping was asked for. */
    public void check() {
        if (asked) {
            throw new CancellationException("stopped on request");
        }
    }
}
