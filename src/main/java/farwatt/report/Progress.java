package farwatt.report;

/** Where long work tells how far it is. May be called from any thread. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress SILENT = (share, what) -> {};

    /**
     * Tells how far the work is.
     *
     * @param share 0..1, how much is done
     * @param what what is being done, a few words
     */
    void at(double share, String what);

    /** The same for a part of the work that goes from one share of the whole to another. */
    default Progress part(double from, double to) {
        return (share, what) -> at(from + (to - from) * share, what);
    }
}
