package farwatt.report;

/**
 * A request that cannot be met for a reason a person can mend; carries the one sentence to say. Thrown across rooms
 * only for requests as a whole (a file that is no plan, a call that makes no sense), never for mistakes in cells.
 */
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Notice notice;

    public Refusal(Notice notice) {
        super(notice.line());
        this.notice = notice;
    }

    /** A failing notice without a place in the plan. */
    public static Refusal of(Code code, Object... parts) {
        return new Refusal(Notice.of(Level.FAIL, code, Place.NONE, parts));
    }

    public Notice notice() {
        return notice;
    }
}
