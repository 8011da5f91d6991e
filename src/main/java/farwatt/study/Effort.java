package farwatt.study;

import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Progress;
import java.util.function.LongSupplier;

/**
 * How a study may work: on how many threads (1 for the caller's alone), who is told how far it is, how it is stopped,
 * and a clock. Nothing of it changes a result.
 *
 * @param nanos a clock that runs on in nanoseconds, for the time left
 */
public record Effort(int threads, Progress progress, Cancel cancel, LongSupplier nanos) {
    public Effort {
        if (threads < 1) {
            throw new IllegalArgumentException(threads + " threads");
        }
    }

    /** On the caller's thread, telling nobody. */
    public static Effort quiet() {
        return new Effort(1, Progress.SILENT, new Cancel(), () -> 0);
    }

    /** On this many threads, telling nobody. */
    public static Effort of(int threads) {
        return new Effort(threads, Progress.SILENT, new Cancel(), () -> 0);
    }

    /** Tells how many of all are done, with the time left once some of it has gone by. */
    Meter meter(long all) {
        return new Meter(all);
    }

    /** Tells at most ten times a second. Confined to one thread. */
    final class Meter {
        private static final long PAUSE = 100_000_000L;
        private static final double SECOND = 1e9;

        private final long all;
        private final long begun = nanos.getAsLong();
        private long told = begun;

        private Meter(long all) {
            this.all = all;
        }

        void done(long some) {
            long now = nanos.getAsLong();
            if (some < all && now - told < PAUSE) {
                return;
            }
            told = now;
            double gone = (now - begun) / SECOND;
            long left = some == 0 ? 0 : Math.round(gone * (all - some) / some);
            String text = left > 0
                    ? Messages.text(StudyCode.PROGRESS_LEFT, some, all, left)
                    : Messages.text(StudyCode.PROGRESS, some, all);
            progress.at(all == 0 ? 1 : (double) some / all, text);
        }
    }
}
